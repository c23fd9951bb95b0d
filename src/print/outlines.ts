/** The outlines of a TrueType font as they lie in its file (OpenType specification: glyf, loca, hmtx, head, hhea). */
import { readTables, viewOf } from "./true-type.ts";

export interface Outlines {
  /** A table by its tag; empty where the font has none. */
  table(tag: string): Uint8Array;
  /** A glyph's outline; empty where it has none, such as a space. */
  outline(glyph: number): Uint8Array;
  /** Advance and bearing, two bytes each. */
  metrics(glyph: number): Uint8Array;
}

const EMPTY = new Uint8Array(0);
/** Where `head` says how `loca` counts, and `hhea` how many entries of `hmtx` are whole. */
const LOCA_FORMAT = 50;
const WHOLE_METRICS = 34;

/** Reads where everything lies. Throws where the file has no such outlines: the book's fonts have. */
export function openOutlines(font: Uint8Array): Outlines {
  const tables = readTables(font);
  const table = (tag: string) => tables.get(tag) ?? EMPTY;
  const glyf = tables.get("glyf");
  if (!glyf) throw new TypeError("the font has no TrueType outlines");
  const loca = viewOf(table("loca"));
  const isLong = viewOf(table("head")).getUint16(LOCA_FORMAT) === 1;
  const startOf = (glyph: number) =>
    isLong ? loca.getUint32(glyph * 4) : loca.getUint16(glyph * 2) * 2;
  const hmtx = table("hmtx");
  const whole = viewOf(table("hhea")).getUint16(WHOLE_METRICS);
  return {
    table,
    outline: (glyph) => glyf.subarray(startOf(glyph), startOf(glyph + 1)),
    metrics(glyph) {
      if (glyph < whole) return hmtx.subarray(glyph * 4, glyph * 4 + 4);
      // The last whole entry's advance holds for all that follow; they have but bearings.
      const bearing = whole * 4 + (glyph - whole) * 2;
      const advance = (whole - 1) * 4;
      return Uint8Array.of(
        ...hmtx.subarray(advance, advance + 2),
        ...hmtx.subarray(bearing, bearing + 2),
      );
    },
  };
}
