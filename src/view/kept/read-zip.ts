/** Takes a zip file apart without trusting it: names, links and sizes are looked at first, and what comes out is counted. */
import { Inflate, strFromU8 } from "fflate";
import type { ZipFault } from "../../issue/facts/zip-fault.ts";

/** A file of a zip, by its name in it, with forward slashes. */
export interface ZippedFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

export type ZipReading =
  | { readonly ok: true; readonly files: readonly ZippedFile[]; readonly others: readonly string[] }
  | { readonly ok: false; readonly fault: ZipFault };

/** More is no folder of layouts. */
export const MOST_FILES = 1_000;
/** In MiB, packed as well as unpacked. */
export const MOST_MIB = 20;

/**
 * The files whose names are wanted; the names of all others. Every entry is judged by its name and kind, wanted or
 * not, before anything is unpacked.
 */
export function readZip(bytes: Uint8Array, isWanted: (name: string) => boolean): ZipReading {
  const failed = (fault: ZipFault) => ({ ok: false, fault }) as const;
  if (bytes.length > MOST_MIB * MIB)
    return failed({ kind: "too-large", limitMib: MOST_MIB, isPacked: true });
  const entries = entriesOf(bytes);
  if (!Array.isArray(entries)) return failed(entries);
  const fault = faultOf(entries);
  if (fault) return failed(fault);
  const files: ZippedFile[] = [];
  let room = MOST_MIB * MIB;
  for (const entry of entries.filter(({ name }) => isWanted(name))) {
    const unpacked = unpack(bytes, entry, room);
    if (!(unpacked instanceof Uint8Array)) return failed(unpacked);
    room -= unpacked.length;
    files.push({ name: entry.name, bytes: unpacked });
  }
  const others = entries.map(({ name }) => name).filter((name) => !isWanted(name));
  return { ok: true, files, others: others.filter((name) => !name.endsWith("/")) };
}

const MIB = 1024 * 1024;

/** An entry of the directory at a zip's end (PKWARE's APPNOTE.TXT 6.3.10, 4.3.12). */
interface Entry {
  readonly name: string;
  readonly packing: number;
  readonly packed: number;
  readonly size: number;
  /** Where the entry's own head begins. */
  readonly at: number;
  readonly isLocked: boolean;
  readonly isLink: boolean;
}

const END = { mark: 0x06054b50, length: 22, longestComment: 0xffff };
const ENTRY = { mark: 0x02014b50, length: 46 };
const HEAD = { mark: 0x04034b50, length: 30 };

function entriesOf(bytes: Uint8Array): Entry[] | ZipFault {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = endOf(view);
  if (end === undefined) return { kind: "no-zip" };
  const count = view.getUint16(end + 10, true);
  if (count > MOST_FILES) return { kind: "too-many-files", limit: MOST_FILES };
  const entries: Entry[] = [];
  let at = view.getUint32(end + 16, true);
  for (let index = 0; index < count; index++) {
    if (at + ENTRY.length > end || view.getUint32(at, true) !== ENTRY.mark)
      return { kind: "no-zip" };
    const lengths = [28, 30, 32].map((place) => view.getUint16(at + place, true));
    const [ofName = 0] = lengths;
    const next = at + ENTRY.length + lengths.reduce((sum, length) => sum + length, 0);
    if (next > end) return { kind: "no-zip" };
    entries.push(entryAt(view, at, bytes.subarray(at + ENTRY.length, at + ENTRY.length + ofName)));
    at = next;
  }
  return entries;
}

/** The last record of a zip, behind which only a comment may stand. */
function endOf(view: DataView): number | undefined {
  const last = view.byteLength - END.length;
  for (let at = last; at >= Math.max(0, last - END.longestComment); at--) {
    if (view.getUint32(at, true) === END.mark) return at;
  }
  return undefined;
}

function entryAt(view: DataView, at: number, name: Uint8Array): Entry {
  const flags = view.getUint16(at + 8, true);
  const isUnix = view.getUint8(at + 5) === 3;
  const mode = view.getUint32(at + 38, true) >>> 16;
  return {
    // Bit 11: the name is UTF-8.
    name: strFromU8(name, (flags & 0x800) === 0).replaceAll("\\", "/"),
    packing: view.getUint16(at + 10, true),
    packed: view.getUint32(at + 20, true),
    size: view.getUint32(at + 24, true),
    at: view.getUint32(at + 42, true),
    isLocked: (flags & 1) !== 0,
    // What Unix calls a symbolic link (S_IFLNK of POSIX's <sys/stat.h>), in the upper half of the attributes.
    isLink: isUnix && (mode & 0o170000) === 0o120000,
  };
}

function faultOf(entries: readonly Entry[]): ZipFault | undefined {
  const seen = new Set<string>();
  for (const { name, isLink, isLocked, packing } of entries) {
    if (/^(?:\/|[A-Za-z]:)/.test(name)) return { kind: "absolute-name", name };
    if (name.split("/").includes("..")) return { kind: "leaves-folder", name };
    if (isLink) return { kind: "symbolic-link", name };
    if (isLocked) return { kind: "locked", name };
    if (packing !== STORED && packing !== DEFLATED) return { kind: "unknown-packing", name };
    if (seen.has(name)) return { kind: "named-twice", name };
    seen.add(name);
  }
  const size = entries.reduce((sum, entry) => sum + entry.size, 0);
  return size > MOST_MIB * MIB
    ? { kind: "too-large", limitMib: MOST_MIB, isPacked: false }
    : undefined;
}

const STORED = 0;
const DEFLATED = 8;

/** The bytes of an entry, of which there may be no more than there is room for, whatever the directory says. */
function unpack(
  bytes: Uint8Array,
  { name, at, packed, packing, size }: Entry,
  room: number,
): Uint8Array | ZipFault {
  const spoilt = { kind: "spoilt", name } as const;
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (at + HEAD.length > bytes.length || view.getUint32(at, true) !== HEAD.mark) return spoilt;
  const start = at + HEAD.length + view.getUint16(at + 26, true) + view.getUint16(at + 28, true);
  if (start + packed > bytes.length) return spoilt;
  const data = bytes.subarray(start, start + packed);
  const unpacked = packing === STORED ? data : inflated(data, room);
  if (!unpacked) return spoilt;
  if (unpacked.length > room) return { kind: "too-large", limitMib: MOST_MIB, isPacked: false };
  return unpacked.length === size ? unpacked : spoilt;
}

/** Deflate makes at most 1,032 bytes of one: a slice is at most some 4 MiB. */
const SLICE = 4096;

/** What comes out, or the beginning of it where that is more than there is room for; nothing where it does not come apart. */
function inflated(data: Uint8Array, room: number): Uint8Array | undefined {
  const chunks: Uint8Array[] = [];
  let length = 0;
  const stream = new Inflate((chunk) => {
    chunks.push(chunk);
    length += chunk.length;
  });
  try {
    for (let at = 0; length <= room && (at === 0 || at < data.length); at += SLICE)
      stream.push(data.subarray(at, at + SLICE), at + SLICE >= data.length);
  } catch {
    return undefined;
  }
  const whole = new Uint8Array(length);
  let at = 0;
  for (const chunk of chunks) {
    whole.set(chunk, at);
    at += chunk.length;
  }
  return whole;
}
