import { describe, expect, it } from "vitest";
import { fontRuns } from "../../src/print/pdf/font/font-runs.ts";
import { directedParts } from "../../src/print/pdf/font/text-direction.ts";
import { FONTS } from "./demo-book.ts";

const [LATIN, EXTENDED, GREEK, CYRILLIC] = [0, 1, 2, 4];

describe("the font of each part of a line", () => {
  it.each<[string, readonly (readonly [string, number | undefined])[]]>([
    ["Bed 4", [["Bed 4", LATIN]]],
    [
      "Грядка 4",
      [
        ["Грядка ", CYRILLIC],
        ["4", LATIN],
      ],
    ],
    ["Κήπος", [["Κήπος", GREEK]]],
    [
      "Jiří",
      [
        ["Ji", LATIN],
        ["ř", EXTENDED],
        ["í", LATIN],
      ],
    ],
    ["e\u0301t\u00e9", [["été", LATIN]]],
    [
      "peas 🌱 beans",
      [
        ["peas ", LATIN],
        ["🌱 ", undefined],
        ["beans", LATIN],
      ],
    ],
    ["  two\u00a0words\u0007 ", [["two words", LATIN]]],
    ["", []],
  ])("of %j", (line, expected) => {
    expect(fontRuns(line, "normal", FONTS).map(({ text, font }) => [text, font])).toEqual(expected);
  });

  it("is the same in both weights", () => {
    const line = "Bed Грядка Κήπος ✓";
    expect(fontRuns(line, "bold", FONTS)).toEqual(fontRuns(line, "normal", FONTS));
  });
});

/** The order is Chromium's own for text in an SVG, as it tells where each character lies. */
describe("the parts of a line from left to right", () => {
  it.each<[string, readonly string[]]>([
    ["Bed 4", ["Bed 4"]],
    ["ערוגה", ["<ערוגה"]],
    ["ערוגה ראשונה", ["<ערוגה ראשונה"]],
    ["bed ערוגה 12 ראשונה, peas", ["bed ", "<" + " ראשונה", "12", "<ערוגה ", ", peas"]],
    ["12 ערוגה", ["12 ", "<ערוגה"]],
    ["ערוגה peas ערוגה", ["<ערוגה", " peas ", "<ערוגה"]],
    ["ערוגה 4", ["4", "<ערוגה "]],
    ["ערוגה 🌱 ראשונה", ["<ערוגה 🌱 ראשונה"]],
    ["(ערוגה)", ["(", "<ערוגה", ")"]],
    ["", []],
  ])("of %j", (line, expected) => {
    const parts = directedParts(line);
    expect(parts.map(({ text, isRightToLeft }) => (isRightToLeft ? `<${text}` : text))).toEqual(
      expected,
    );
    const plain = parts
      .map(({ text }) => text)
      .toSorted()
      .join("");
    expect([...plain].toSorted()).toEqual([...line].toSorted());
  });

  it("show the other side of a bracket that is read from the right", () => {
    expect(directedParts("ערוגה (4)")).toEqual([
      { text: "(", isRightToLeft: true },
      { text: "4", isRightToLeft: false },
      { text: "ערוגה )", isRightToLeft: true },
    ]);
  });
});
