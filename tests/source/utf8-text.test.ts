import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { utf8Text } from "../../src/source/front-matter/utf8-text.ts";

const bytesOf = (text: string) => [...new TextEncoder().encode(text)];

describe("bytes", () => {
  it("are the text that was encoded, whatever it is", () => {
    fc.assert(
      fc.property(fc.string({ unit: "grapheme" }), (text) => {
        expect(utf8Text(new TextEncoder().encode(text))).toEqual({ ok: true, text });
      }),
      { seed: 1_203 },
    );
  });

  // Latin-1 writes ä as E4 and é as E9; UTF-16 begins with FF FE; E2 80 is the beginning of a quotation mark.
  it.each<[string, readonly number[], number, number]>([
    ["one that is none at all", [0xff], 1, 1],
    ["Latin-1", [...bytesOf("---\ntitle: K"), 0xe4, ...bytesOf("se\n---\n")], 2, 9],
    ["Latin-1 behind good letters", [...bytesOf("a\nGemüse und Ro"), 0xe9, 0x20], 2, 14],
    ["UTF-16", [0xff, 0xfe, 0x2d, 0x00], 1, 1],
    ["a character that the end cuts off", [...bytesOf("a\r\nb\rc"), 0xe2, 0x80], 3, 2],
    ["a character that the next one cuts off", [...bytesOf("a\n"), 0xe2, 0x80, 0x41], 2, 1],
    ["a longer way than needed", [...bytesOf("\n\n"), 0xc0, 0x80], 3, 1],
  ])("are refused at the first that is no UTF-8: %s", (_, bytes, line, column) => {
    expect(utf8Text(Uint8Array.from(bytes))).toEqual({ ok: false, line, column });
  });
});
