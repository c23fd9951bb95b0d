/** How a TrueType file holds its tables (OpenType specification, "Organization of an OpenType font"). */

export interface FontTable {
  /** Four letters. */
  readonly tag: string;
  readonly bytes: Uint8Array;
  /** 0 where left out: nothing that reads fonts out of a PDF looks at it. */
  readonly checksum?: number;
}

const HEADER = 12;
const ENTRY = 16;
/** Says that outlines are in `glyf`. */
export const TRUE_TYPE = 0x00010000;

/** A font file of these tables, each at a multiple of four bytes. */
export function writeTables(flavour: number, tables: readonly FontTable[]): Uint8Array {
  const directory = HEADER + ENTRY * tables.length;
  const size = tables.reduce((sum, { bytes }) => sum + padded(bytes.length), directory);
  const font = new Uint8Array(size);
  const view = new DataView(font.buffer);
  view.setUint32(0, flavour);
  writeSearchFields(view, tables.length);
  let start = directory;
  for (const [index, { tag, bytes, checksum = 0 }] of tables.entries()) {
    const entry = HEADER + index * ENTRY;
    for (let at = 0; at < 4; at += 1) font[entry + at] = tag.charCodeAt(at);
    view.setUint32(entry + 4, checksum);
    view.setUint32(entry + 8, start);
    view.setUint32(entry + 12, bytes.length);
    font.set(bytes, start);
    start += padded(bytes.length);
  }
  return font;
}

/** What a binary search of the directory begins with. */
function writeSearchFields(view: DataView, count: number): void {
  const power = 31 - Math.clz32(count);
  view.setUint16(4, count);
  view.setUint16(6, ENTRY << power);
  view.setUint16(8, power);
  view.setUint16(10, ENTRY * count - (ENTRY << power));
}

/** The tables of a font file by their tags. */
export function readTables(font: Uint8Array): ReadonlyMap<string, Uint8Array> {
  const view = viewOf(font);
  const entries = Array.from({ length: view.getUint16(4) }, (_, index) => HEADER + index * ENTRY);
  return new Map(
    entries.map((entry) => {
      const start = view.getUint32(entry + 8);
      const bytes = font.subarray(start, start + view.getUint32(entry + 12));
      return [tagAt(font, entry), bytes];
    }),
  );
}

/** The tag that is written there. */
export function tagAt(bytes: Uint8Array, start: number): string {
  return String.fromCharCode(...bytes.subarray(start, start + 4));
}

/** Bytes as numbers of more than one byte. */
export function viewOf({ buffer, byteOffset, byteLength }: Uint8Array): DataView<ArrayBufferLike> {
  return new DataView(buffer, byteOffset, byteLength);
}

function padded(length: number): number {
  return Math.ceil(length / 4) * 4;
}
