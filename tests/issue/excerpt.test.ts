import { describe, expect, it, vi } from "vitest";
import { excerpt } from "../../src/issue/report/excerpt.ts";
import { cellsOf, harmless } from "../../src/issue/words/harmless-text.ts";

/** The excerpt of a line in which «…» marks what is meant. */
function marked(line: string): readonly string[] {
  const start = line.indexOf("«");
  const text = line.replace("«", "").replace("»", "");
  return excerpt(text, { column: start + 1, width: line.indexOf("»") - start - 1 });
}

describe("an excerpt", () => {
  it("puts carets below what is meant", () => {
    expect(marked("columns: {count: 4, gap: 1, «colum»: 3}")).toEqual([
      "columns: {count: 4, gap: 1, colum: 3}",
      "                            ^^^^^",
    ]);
  });

  it("leaves out the indentation", () => {
    expect(marked("      - {«step»: 3}")).toEqual(["- {step: 3}", "   ^^^^"]);
  });

  it("keeps the indentation where it is what is meant", () => {
    expect(marked("  «  » rows: 3")).toEqual(["   rows: 3", "^^"]);
  });

  it("shows a tab as one space", () => {
    expect(marked("rows:\t«3»")).toEqual(["rows: 3", "      ^"]);
  });

  it("counts a character that is twice as wide as two columns", () => {
    expect(marked("labels: [土曜日, «日曜日», Mon]")).toEqual([
      "labels: [土曜日, 日曜日, Mon]",
      "                 ^^^^^^",
    ]);
  });

  it("counts a mark over a letter as no column", () => {
    expect(marked("label: e\u0301te\u0301 «x»")).toEqual([
      "label: e\u0301te\u0301 x",
      "           ^",
    ]);
  });

  it("writes what would move the cursor as an escape", () => {
    expect(marked("label: \u001b[2J\u202e «x»")).toEqual([
      "label: \\u{1b}[2J\\u{202e} x",
      "                         ^",
    ]);
  });

  it("has one caret where nothing is left to mark", () => {
    expect(excerpt("rows:", { column: 6, width: 1 })).toEqual(["rows:", "     ^"]);
    expect(excerpt("", { column: 1, width: 1 })).toEqual(["", "^"]);
    expect(excerpt("rows", { column: 40, width: 9 })).toEqual(["rows", "    ^"]);
  });
});

describe("a long line", () => {
  const words = Array.from({ length: 60 }, (_, index) => `word${index}`);

  it.each([0, 1, 7, 30, 58, 59])("is clipped around word %i and stays below it", (index) => {
    const word = words[index] ?? "";
    const line = words.with(index, `«${word}»`).join(" ");
    const [text = "", carets = ""] = marked(line);
    expect(text.length).toBeLessThanOrEqual(98);
    const from = carets.indexOf("^");
    expect(text.slice(from, from + carets.trim().length)).toBe(word);
    expect(text.startsWith("…")).toBe(index > 6);
    expect(text.endsWith("…")).toBe(index < 50);
  });

  it("is clipped inside what is meant where that is longer than the excerpt", () => {
    const [text = "", carets = ""] = excerpt("x".repeat(5_000), { column: 101, width: 4_000 });
    expect(text).toBe(`…${"x".repeat(96)}…`);
    expect(carets).toBe(`${" ".repeat(33)}${"^".repeat(64)}`);
  });

  it("is clipped by columns where characters take none or two of them", () => {
    const heap = "\u{1f331}\u0301\u0302";
    const line = `${heap.repeat(400)}«x»${heap.repeat(400)}`;
    const [text = "", carets] = marked(line);
    expect(text.endsWith(`${heap.repeat(16)}x${heap.repeat(31)}…`)).toBe(true);
    expect(carets).toBe(`${" ".repeat(33)}^`);
  });

  it("costs no more to clip where it is twice as long", () => {
    const work = [100_000, 200_000].map((length) => {
      const test = vi.spyOn(RegExp.prototype, "test");
      excerpt("x".repeat(length), { column: length / 2, width: 1 });
      const calls = test.mock.calls.length;
      test.mockRestore();
      return calls;
    });
    expect(work[0]).toBeGreaterThan(0);
    expect(work[1]).toBe(work[0]);
  });
});

describe("harmless text", () => {
  it.each([
    ["plain, with ä and 26 × 38", "plain, with ä and 26 × 38"],
    ["a\u0000b\u0007c", "a\\u{0}b\\u{7}c"],
    ["a\r\nb", "a\\u{d}\\u{a}b"],
    ["\u2066abc\u2069", "\\u{2066}abc\\u{2069}"],
    ["\ud800", "\\u{d800}"],
    ["a\u0301\u0302\u0303", "a\u0301\u0302\\u{303}"],
    ["\ufeffa", "\\u{feff}a"],
  ])("%j is shown as %j", (text, shown) => {
    expect(harmless(text)).toBe(shown);
  });

  it("knows where each character begins", () => {
    expect(cellsOf("a😀b").map(({ from }) => from)).toEqual([0, 1, 3]);
  });
});
