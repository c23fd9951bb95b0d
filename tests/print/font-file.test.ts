import { deflateSync, inflateSync } from "node:zlib";
import { create, type Font } from "fontkit";
import { describe, expect, it } from "vitest";
import type { CodedGlyph } from "../../src/print/pdf/font/font-codes.ts";
import { rememberFontFiles } from "../../src/print/pdf/font/font-file.ts";
import { openFont } from "../../src/print/pdf/font/print-font.ts";
import { unpackWoff } from "../../src/print/pdf/font/unpack-woff.ts";
import { fontFile } from "./demo-book.ts";

const packed = fontFile("fira-sans-latin-400-normal.woff");
const whole = create(unpackWoff(packed));

const glyphsOf = (text: string): readonly CodedGlyph[] =>
  [...openFont(packed).set(text)].sort((a, b) => a.code - b.code);

describe("the font in a file", () => {
  it("is made and packed once for the same letters", () => {
    let count = 0;
    const make = rememberFontFiles(whole, (bytes) => {
      count += 1;
      return bytes;
    });
    expect(make(glyphsOf("Bed–"))).toBe(make(glyphsOf("Bed–")));
    // The font, which glyph a code shows, and what it stands for.
    expect(count).toBe(3);
    make(glyphsOf("Beds–"));
    expect(count).toBe(6);
  });

  it("is not that of other letters made before", () => {
    const make = rememberFontFiles(whole);
    const before = ["Be", "Bedfjo", "", "–"].map((text) => make(glyphsOf(text)));
    expect(make(glyphsOf("Bed"))).toEqual(rememberFontFiles(whole)(glyphsOf("Bed")));
    for (const other of before) expect(make(glyphsOf("Bed")).font).not.toEqual(other.font);
  });

  it("is told from that of the same glyph for other characters", () => {
    const [dash] = glyphsOf("–");
    if (!dash) throw new Error("no glyph");
    const make = rememberFontFiles(whole);
    const [one, other] = [make([dash]), make([{ ...dash, characters: "-" }])];
    expect(one.font).toEqual(other.font);
    expect(one.unicode).not.toEqual(other.unicode);
  });

  it("is the same packed", () => {
    const plain = rememberFontFiles(whole)(glyphsOf("Bed 4"));
    const made = rememberFontFiles(whole, (bytes) => deflateSync(bytes))(glyphsOf("Bed 4"));
    expect([plain.isPacked, made.isPacked]).toEqual([false, true]);
    expect(new Uint8Array(inflateSync(made.font))).toEqual(plain.font);
    expect(new Uint8Array(inflateSync(made.glyphs))).toEqual(plain.glyphs);
    expect(new Uint8Array(inflateSync(made.unicode))).toEqual(plain.unicode);
  });
});

/** The outline and the width of a glyph. */
function drawn(font: Font, glyph: number): readonly [string, number] {
  const { path, advanceWidth } = font.getGlyph(glyph);
  return [path.toSVG(), advanceWidth];
}

describe.each([
  ["latin-400", "Beet, 0 to 9 – “öïÅ” ½"],
  ["latin-700", "Beet, 0 to 9 – “öïÅ” ½"],
  ["latin-ext-400", "ĀčęłŐž"],
  ["cyrillic-400", "Грядка й ё"],
  ["greek-ext-700", "ἀᾷῷ"],
  ["vietnamese-400", "ẤỡỤ"],
])("a file of %s", (name, text) => {
  const file = fontFile(`fira-sans-${name}-normal.woff`);
  const font = create(unpackWoff(file));
  const glyphs = [...openFont(file).set(text)].sort((a, b) => a.code - b.code);
  const { font: subset, glyphs: places } = rememberFontFiles(font)(glyphs);
  const shown = create(subset);
  const placeOf = (code: number) => ((places[2 * code] ?? 0) << 8) + (places[2 * code + 1] ?? 0);

  it("draws each glyph at its code as the whole font does, put together or not", () => {
    for (const { code, glyph } of glyphs)
      expect(drawn(shown, placeOf(code))).toEqual(drawn(font, glyph));
  });

  it("has nothing at any other code", () => {
    const codes = new Set(glyphs.map(({ code }) => code));
    const others = Array.from({ length: places.length / 2 }, (_, code) => code);
    for (const code of others) if (!codes.has(code)) expect(placeOf(code)).toBe(0);
  });
});

describe("the codes of a word", () => {
  it("are its characters in Latin 1, and otherwise the font's own", () => {
    const codes = openFont(packed).set("Bé–");
    expect(codes.map(({ code, characters }) => [code, characters])).toEqual([
      [0x42, "B"],
      [0xe9, "é"],
      [0x100 + (codes[2]?.glyph ?? 0), "–"],
    ]);
  });

  it("do not depend on the words before", () => {
    const font = openFont(packed);
    for (const word of ["öï", "ﬁ", "office", "Ǽ"]) font.set(word);
    expect(font.set("office fjord")).toEqual(openFont(packed).set("office fjord"));
  });
});
