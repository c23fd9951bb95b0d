import { create, type Font } from "fontkit";
import { describe, expect, it } from "vitest";
import { type Outlines, openOutlines } from "../../src/print/outlines.ts";
import { subsetFont } from "../../src/print/subset-font.ts";
import { unpackWoff } from "../../src/print/unpack-woff.ts";
import { fontFile } from "./demo-book.ts";

/** fontkit, which is not ours, reads the outline and the width of a glyph. */
function drawn(font: Font, glyph: number): readonly [string, number] {
  const { path, advanceWidth } = font.getGlyph(glyph);
  return [path.toSVG(), advanceWidth];
}

const FREE = 0x100;
const placeOf = (glyph: number) => FREE + glyph;

const glyphOf = (font: Font, character: string) =>
  font.glyphForCodePoint(character.codePointAt(0) ?? 0).id;

const FILES = [
  "latin-400",
  "latin-700",
  "latin-ext-400",
  "cyrillic-400",
  "greek-ext-700",
  "vietnamese-400",
];

describe.each(FILES)("a subset of %s", (name) => {
  const file = unpackWoff(fontFile(`fira-sans-${name}-normal.woff`));
  const whole = create(file);
  const outlines: Outlines = openOutlines(file);
  const glyphs = Array.from({ length: 60 }, (_, index) => 2 * index + 1);

  it("draws each glyph at its code as the whole font does, put together or not", () => {
    const codes = new Map(glyphs.map((glyph, index) => [index + 32, glyph]));
    const subset = create(subsetFont(outlines, codes.set(0, 0), placeOf));
    for (const [code, glyph] of codes) expect(drawn(subset, code)).toEqual(drawn(whole, glyph));
  });

  it("does not depend on the order in which they are met", () => {
    const codes = glyphs.map((glyph) => [glyph, glyph] as const);
    const one = subsetFont(outlines, new Map(codes), placeOf);
    expect(subsetFont(outlines, new Map(codes.toReversed()), placeOf)).toEqual(one);
  });

  it("has nothing of the glyphs that are not shown", () => {
    const few = subsetFont(outlines, new Map([[65, glyphOf(whole, "0")]]), placeOf);
    expect(few.length).toBeLessThan(1500);
    expect(drawn(create(few), 64)).toEqual(["", 0]);
  });
});

describe("a glyph that is put together", () => {
  const file = unpackWoff(fontFile("fira-sans-latin-400-normal.woff"));
  const whole = create(file);

  it("brings its parts along", () => {
    const codes = new Map([[0xf6, glyphOf(whole, "ö")]]);
    const subset = create(subsetFont(openOutlines(file), codes, placeOf));
    expect(drawn(subset, 0xf6)).toEqual(drawn(whole, glyphOf(whole, "ö")));
    expect(drawn(subset, placeOf(glyphOf(whole, "o")))).toEqual(drawn(whole, glyphOf(whole, "o")));
  });
});
