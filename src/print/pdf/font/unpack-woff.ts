/** How a WOFF file holds a font: its tables, each compressed by itself (W3C, WOFF File Format 1.0, sections 3 to 5). */
import { unzlibSync } from "fflate";

const WOFF_SIGNATURE = 0x774f4646;
const WOFF_HEADER = 44;
const WOFF_ENTRY = 20;
const FONT_HEADER = 12;
const FONT_ENTRY = 16;

interface Table {
  readonly tag: number;
  readonly checksum: number;
  readonly bytes: Uint8Array;
}

/**
 * The font as it was before it was packed; a file that is no WOFF as it is. Reading the packed file directly
 * would inflate a table for every glyph: it takes ten times as long.
 */
export function unpackWoff(file: Uint8Array): Uint8Array {
  const view = new DataView(file.buffer, file.byteOffset, file.byteLength);
  if (view.getUint32(0) !== WOFF_SIGNATURE) return file;
  const flavour = view.getUint32(4);
  const tables = Array.from({ length: view.getUint16(12) }, (_, index) =>
    readTable(file, view, WOFF_HEADER + index * WOFF_ENTRY),
  );
  return writeFont(flavour, tables);
}

function readTable(file: Uint8Array, view: DataView, entry: number): Table {
  const start = view.getUint32(entry + 4);
  const packedLength = view.getUint32(entry + 8);
  const packed = file.subarray(start, start + packedLength);
  const isPacked = packedLength < view.getUint32(entry + 12);
  return {
    tag: view.getUint32(entry),
    checksum: view.getUint32(entry + 16),
    bytes: isPacked ? unzlibSync(packed) : packed,
  };
}

/** Directory and tables, each table at a multiple of four bytes. The search fields of the header stay 0: nothing reads them. */
function writeFont(flavour: number, tables: readonly Table[]): Uint8Array {
  const directory = FONT_HEADER + FONT_ENTRY * tables.length;
  const size = tables.reduce((sum, { bytes }) => sum + padded(bytes.length), directory);
  const font = new Uint8Array(size);
  const view = new DataView(font.buffer);
  view.setUint32(0, flavour);
  view.setUint16(4, tables.length);
  let start = directory;
  for (const [index, { tag, checksum, bytes }] of tables.entries()) {
    const entry = FONT_HEADER + index * FONT_ENTRY;
    view.setUint32(entry, tag);
    view.setUint32(entry + 4, checksum);
    view.setUint32(entry + 8, start);
    view.setUint32(entry + 12, bytes.length);
    font.set(bytes, start);
    start += padded(bytes.length);
  }
  return font;
}

function padded(length: number): number {
  return Math.ceil(length / 4) * 4;
}
