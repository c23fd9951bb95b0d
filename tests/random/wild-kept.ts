/** What a device may have kept: of this form and of older ones, whole, spoilt, or of another program; and zip files, whole or not. */
import fc from "fast-check";
import { writeZip } from "../../src/view/kept/content-folder.ts";
import { KEPT_KINDS } from "../../src/view/kept/kept-file.ts";
import { type Choices, chosen, chosenFrom } from "./choices.ts";
import { edited } from "./edited-text.ts";

const NAMES = [
  ...[
    "book-notebook",
    "notebook",
    "strip",
    "setup",
    "pattern",
    "dates",
    "recipe",
    "drawing",
    "hand",
  ],
  ...["calendars", "ticks", "route", "count-habits", "printer", "screen"],
] as const;

/** What the form without a version had for all books of a web space. */
const NAMES_OF_FORM_1 = [
  "notebook",
  "fit",
  "desk",
  "drawing",
  "hand",
  "printer",
  "screen",
] as const;

const TEXTS = [
  ...[
    "",
    "a6",
    "no-such",
    "labels counts",
    "left",
    "1.01 1",
    "1.01 1 A4",
    "x y z",
    "9e99 -1",
    "4.0 1",
  ],
  ...["march/a5 42 44", "own/2027-03/43 1 x\n\n \n", "[]", "null", '[{"name":"a","text":1}]', "{"],
  ...[
    '[{"name":"a.ics","text":"BEGIN:VCALENDAR\\r\\nEND:VCALENDAR"}]',
    "[null]",
    "99999999999999 #v=1",
  ],
  ...[
    '{"home":"https://e/","pages":[]}',
    '{"home":"javascript:1","pages":[]}',
    "2 #v=1&across=seed-list",
  ],
  ...[
    "#v=1&paper=A6&pitch=5&dots=19,28&pattern=seed-list&across=seed-list",
    "1 ",
    "0 x",
    "-1 #v=1",
  ],
  ...["\u0000", "\ud800", "__proto__", "constructor"],
] as const;

export interface KeptSources {
  readonly addresses: fc.Arbitrary<string>;
  /** Of files of any kind. */
  readonly files: fc.Arbitrary<string>;
}

/** Items of a storage by their keys; `prefix` stands before those of the book. */
export function wildItems(
  prefix: string,
  { addresses, files }: KeptSources,
): fc.Arbitrary<Readonly<Record<string, string>>> {
  const parts = fc.record({
    addresses: fc.array(addresses, { minLength: 1, maxLength: 4 }),
    files: fc.array(files, { maxLength: 3 }),
  });
  return chosenFrom(parts, ({ addresses, files }, choices) => {
    const { one, below, isIn100 } = choices;
    const text = () => {
      const word = isIn100(40) ? one(TEXTS) : (addresses[below(addresses.length)] ?? "");
      const slipped = isIn100(20) ? edited(word, { choices, words: TEXTS }) : word;
      return isIn100(50) ? `${1 + below(3)} ${slipped}` : slipped;
    };
    const items = Array.from({ length: below(8) }, () => [`${prefix}${one(NAMES)}`, text()]);
    const old = isIn100(30)
      ? NAMES_OF_FORM_1.map((name) => [`spanbook.${name}`, text()]).slice(0, 1 + below(7))
      : [];
    const kept = files.map((file, index) => {
      const name = one(["mine", "week", `w-${index}`, "seed-list", "Ä", "a b", "..", "con"]);
      return [`${prefix}${one(KEPT_KINDS)}/${name}.md`, file];
    });
    const version = one(["4", "4", "4", "2", "3", "5", "x", ""]);
    const versions = isIn100(80) ? [[`${prefix}version`, version]] : [];
    return Object.fromEntries([...items, ...old, ...kept, ...versions]);
  });
}

/** A zip of some files, as it is or with bytes of it changed, cut off, or put together with others. */
export function wildZip(files: fc.Arbitrary<string>): fc.Arbitrary<Uint8Array> {
  const names = chosen(({ one, below }) => {
    const folder = one([
      "patterns",
      "notebooks",
      "strips",
      "setups",
      "Patterns",
      "x/patterns",
      "..",
    ]);
    return `${folder}/${one(["week", "mine", "a b", "ä", "con", `w${below(3)}`, `w${below(3)}`])}.${one(["md", "md", "txt"])}`;
  }, 6);
  const zipped = fc.array(fc.record({ path: names, text: files }), { maxLength: 5 }).map(writeZip);
  return chosenFrom(zipped, spoilt);
}

function spoilt(bytes: Uint8Array, { one, below, isIn100 }: Choices): Uint8Array {
  const act = one(["whole", "bytes", "directory", "cut", "twice", "none"]);
  if (act === "whole") return bytes;
  if (act === "none") return new Uint8Array(below(80)).fill(0x50);
  if (act === "cut") return bytes.slice(0, below(bytes.length + 1));
  if (act === "twice") return new Uint8Array([...bytes, ...bytes]);
  const copy = bytes.slice();
  const view = new DataView(copy.buffer);
  const heads = headsIn(view);
  for (let count = 1 + below(4); count > 0; count--) {
    const head = heads[below(heads.length)];
    if (act === "bytes" || head === undefined) copy[below(copy.length)] = below(256);
    else changeHead(view, head, { one, below, isIn100 });
  }
  return copy;
}

/** Where the entries of the directory begin (PKWARE's APPNOTE.TXT, 4.3.12). */
function headsIn(view: DataView): readonly number[] {
  const heads: number[] = [];
  for (let at = 0; at + 46 <= view.byteLength; at++)
    if (view.getUint32(at, true) === 0x02014b50) heads.push(at);
  return heads;
}

/** Flags, packing, sizes, place, kind of the file: what a stranger may have put there. */
function changeHead(view: DataView, at: number, { one, below }: Choices): void {
  const act = one(["locked", "packing", "size", "place", "link", "count", "rooted", "named"]);
  const lastOfName = at + 46 + view.getUint16(at + 28, true) - 4;
  if (act === "locked") view.setUint16(at + 8, 1, true);
  else if (act === "packing") view.setUint16(at + 10, one([0, 8, 9, 14]), true);
  else if (act === "size") view.setUint32(at + 24, one([0, 1, 100, 0xffffffff, 30_000_000]), true);
  else if (act === "place") view.setUint32(at + 42, below(view.byteLength + 40), true);
  else if (act === "rooted") view.setUint8(at + 46, 0x2f);
  else if (act === "named" && lastOfName < view.byteLength) view.setUint8(lastOfName, 0x31);
  else if (act === "count") view.setUint16(view.byteLength - 12, one([0, 1, 2_000, 0xffff]), true);
  else {
    view.setUint8(at + 5, 3);
    view.setUint32(at + 38, 0o120777 * 0x10000, true);
  }
}

/** A file by itself, mostly as it is written, else with bytes that are no text, or far too long. */
export function wildBytes(files: fc.Arbitrary<string>): fc.Arbitrary<Uint8Array> {
  return chosenFrom(files, (text, { one, below }) => {
    const act = one(["whole", "whole", "bytes", "long"]);
    const bytes = new TextEncoder().encode(act === "long" ? text.padEnd(270_000) : text);
    if (act === "bytes" && bytes.length > 0) bytes[below(bytes.length)] = 0xff;
    return bytes;
  });
}
