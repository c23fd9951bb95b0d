/** How a WOFF file holds a font: its tables, each compressed by itself (W3C, WOFF File Format 1.0, sections 3 to 5). */
import { unzlibSync } from "fflate";
import { type FontTable, tagAt, viewOf, writeTables } from "./true-type.ts";

const WOFF_SIGNATURE = 0x774f4646;
const WOFF_HEADER = 44;
const WOFF_ENTRY = 20;

/**
 * The font as it was before it was packed; a file that is no WOFF as it is. Reading the packed file directly
 * would inflate a table for every glyph: it takes ten times as long.
 */
export function unpackWoff(file: Uint8Array): Uint8Array {
  const view = viewOf(file);
  if (view.getUint32(0) !== WOFF_SIGNATURE) return file;
  const flavour = view.getUint32(4);
  const tables = Array.from({ length: view.getUint16(12) }, (_, index) =>
    readTable(file, view, WOFF_HEADER + index * WOFF_ENTRY),
  );
  return writeTables(flavour, tables);
}

function readTable(file: Uint8Array, view: DataView, entry: number): FontTable {
  const start = view.getUint32(entry + 4);
  const packedLength = view.getUint32(entry + 8);
  const packed = file.subarray(start, start + packedLength);
  const isPacked = packedLength < view.getUint32(entry + 12);
  return {
    tag: tagAt(file, entry),
    checksum: view.getUint32(entry + 16),
    bytes: isPacked ? unzlibSync(packed) : packed,
  };
}
