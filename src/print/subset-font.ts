/** A font of only the glyphs that a file shows, each in a place that does not depend on the others. */
import { componentsOf, placeComponents } from "./compound-glyph.ts";
import type { Outlines } from "./outlines.ts";
import { type FontTable, TRUE_TYPE, viewOf, writeTables } from "./true-type.ts";

/** As they are in the whole font; left out where it has none (ISO 32000-1, 9.9, names all that are needed). */
const COPIED = ["cvt ", "fpgm", "prep"];
const LOCA_FORMAT = 50;
const WHOLE_METRICS = 34;
const GLYPH_COUNT = 4;
/** Short offsets count in pairs of bytes. */
const SHORT_END = 2 * 0xffff;

/** A place for each glyph of a font. */
type Place = (glyph: number) => number;

/** The font's bytes; `codes` has the glyph for each place. What is part of a glyph is put where `placeOf` says. */
export function subsetFont(
  outlines: Outlines,
  codes: ReadonlyMap<number, number>,
  placeOf: Place,
): Uint8Array {
  const glyphs = withComponents(outlines, codes, placeOf);
  const count = Math.max(...glyphs.keys()) + 1;
  const drawn = Array.from({ length: count }, (_, place) => {
    const glyph = glyphs.get(place);
    return glyph === undefined ? undefined : placeComponents(outlines.outline(glyph), placeOf);
  });
  const { glyf, loca, isLong } = outlineTables(drawn);
  const hmtx = new Uint8Array(count * 4);
  for (const [place, glyph] of glyphs) hmtx.set(outlines.metrics(glyph), place * 4);
  const changed = (tag: string, at: number, value: number): FontTable => ({
    tag,
    bytes: withNumber(outlines.table(tag), at, value),
  });
  // A directory is in the order of its tags.
  const tables = [
    ...COPIED.map((tag) => ({ tag, bytes: outlines.table(tag) })).filter(hasBytes),
    { tag: "glyf", bytes: glyf },
    changed("head", LOCA_FORMAT, Number(isLong)),
    changed("hhea", WHOLE_METRICS, count),
    { tag: "hmtx", bytes: hmtx },
    { tag: "loca", bytes: loca },
    changed("maxp", GLYPH_COUNT, count),
  ];
  return writeTables(
    TRUE_TYPE,
    tables.sort((a, b) => (a.tag < b.tag ? -1 : 1)),
  );
}

/** The glyph of each place, with all that those of the codes are put together from. */
function withComponents(
  outlines: Outlines,
  codes: ReadonlyMap<number, number>,
  placeOf: Place,
): ReadonlyMap<number, number> {
  const glyphs = new Map(codes);
  // A map goes on to what is added while it is gone through.
  for (const glyph of glyphs.values())
    for (const part of componentsOf(outlines.outline(glyph))) glyphs.set(placeOf(part), part);
  return glyphs;
}

interface OutlineTables {
  readonly glyf: Uint8Array;
  readonly loca: Uint8Array;
  readonly isLong: boolean;
}

/** Outlines one after another, each at an even place, and where they lie. */
function outlineTables(drawn: readonly (Uint8Array | undefined)[]): OutlineTables {
  const size = drawn.reduce((sum, outline) => sum + even(outline), 0);
  const isLong = size > SHORT_END;
  const glyf = new Uint8Array(size);
  const loca = new Uint8Array((drawn.length + 1) * (isLong ? 4 : 2));
  const view = viewOf(loca);
  let end = 0;
  for (const [place, outline] of drawn.entries()) {
    if (outline) glyf.set(outline, end);
    end += even(outline);
    if (isLong) view.setUint32((place + 1) * 4, end);
    else view.setUint16((place + 1) * 2, end / 2);
  }
  return { glyf, loca, isLong };
}

function even(outline: Uint8Array | undefined): number {
  return outline ? outline.length + (outline.length % 2) : 0;
}

function withNumber(table: Uint8Array, at: number, value: number): Uint8Array {
  const copy = table.slice();
  viewOf(copy).setUint16(at, value);
  return copy;
}

function hasBytes({ bytes }: FontTable): boolean {
  return bytes.length > 0;
}
