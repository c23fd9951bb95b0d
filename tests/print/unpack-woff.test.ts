import { create } from "fontkit";
import { describe, expect, it } from "vitest";
import { FONT_FILES } from "../../src/print/pdf/font/print-fonts.ts";
import { unpackWoff } from "../../src/print/pdf/font/unpack-woff.ts";
import { fontFile } from "./demo-book.ts";

// Fonts are opened, on machines that may be busy.

const ALL = [...FONT_FILES.normal, ...FONT_FILES.bold];

describe("a packed font", () => {
  it("is there for every script of the book, in both weights", () => {
    expect(ALL).toHaveLength(14);
  });

  it.each(ALL)("%s has the glyphs that fontkit reads from the packed file", (name) => {
    const file = fontFile(name);
    const [unpacked, packed] = [create(unpackWoff(file)), create(file)];
    expect(unpacked.postscriptName).toBe(packed.postscriptName);
    for (let codePoint = 0x20; codePoint < 0x530; codePoint += 7) {
      const has = packed.hasGlyphForCodePoint(codePoint);
      expect(unpacked.hasGlyphForCodePoint(codePoint)).toBe(has);
      const width = packed.glyphForCodePoint(codePoint).advanceWidth;
      if (has) expect(unpacked.glyphForCodePoint(codePoint).advanceWidth).toBe(width);
    }
  });

  it("is left alone when it is not packed", () => {
    const font = unpackWoff(fontFile(ALL[0] ?? ""));
    expect(unpackWoff(font)).toBe(font);
  });

  it("is read from the middle of other bytes", () => {
    const file = fontFile(ALL[0] ?? "");
    const padded = new Uint8Array(file.length + 3);
    padded.set(file, 3);
    expect(unpackWoff(padded.subarray(3))).toEqual(unpackWoff(file));
  });
});
