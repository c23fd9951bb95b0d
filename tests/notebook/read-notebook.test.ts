import { describe, expect, it } from "vitest";
import { fromMm } from "../../src/measure/length.ts";
import type { Notebook } from "../../src/notebook/notebook.ts";
import { readNotebook } from "../../src/notebook/read-notebook.ts";

function notebookOf(keys: string): Notebook {
  const reading = readNotebook({
    path: "notebooks/a5.md",
    text: `---\ntitle: A5\n${keys}\n---\nMine.`,
  });
  if (!reading.ok) throw new Error(JSON.stringify(reading.issues));
  return reading.value;
}

const PLAIN = "paper: A5\npitch: 5\ndots: [26, 38]";

describe("a notebook", () => {
  it("needs no more than its paper, its pitch and its dots", () => {
    expect(notebookOf(PLAIN)).toEqual({
      slug: "a5",
      title: "A5",
      paperName: "A5",
      axes: {
        across: {
          dots: 26,
          pitch: 5_000_000,
          firstDot: 11_500_000,
          paper: 148_000_000,
          count: "edge-to-dot",
        },
        down: {
          dots: 38,
          pitch: 5_000_000,
          firstDot: 12_500_000,
          paper: 210_000_000,
          count: "edge-to-dot",
        },
      },
      ruling: "dots",
      binding: "left",
      middle: "lower",
      body: "Mine.",
    });
  });

  it("may say everything, and for each axis", () => {
    const keys = `paper: [170, 250]
pitch: {across: 5, down: 7.5}
dots: [33, 31]
firstDot: [5, 15.000001]
count: {across: edge-to-dot, down: dot-to-dot}
ruling: lines
binding: top
middle: both`;
    expect(notebookOf(keys)).toMatchObject({
      axes: {
        across: { pitch: 5_000_000, paper: 170_000_000, firstDot: 5_000_000, count: "edge-to-dot" },
        down: { pitch: 7_500_000, paper: 250_000_000, firstDot: 15_000_001, count: "dot-to-dot" },
      },
      ruling: "lines",
      binding: "top",
      middle: "both",
    });
    expect(notebookOf(keys)).not.toHaveProperty("paperName");
  });

  it("keeps lengths exact to a millionth of a millimetre", () => {
    const { axes } = notebookOf(
      "paper: letter\npitch: 6.35\ndots: [33, 43]\nfirstDot: [0.1, 0.000001]",
    );
    expect(axes.across.pitch).toBe(6_350_000);
    expect(axes.across.paper).toBe(215_900_000);
    expect(axes.across.firstDot).toBe(100_000);
    expect(axes.down.firstDot).toBe(1);
  });

  it("lets dots reach the edge of the paper, and no further", () => {
    const reach = (paper: string) =>
      readNotebook({
        path: "notebooks/a.md",
        text: `---\ntitle: A\npaper: ${paper}\npitch: 5\ndots: [27, 39]\ncount: dot-to-dot\nfirstDot: [0, 0]\n---`,
      }).ok;
    expect(reach("[130, 190]")).toBe(true);
    expect(reach("[129.999999, 190]")).toBe(false);
    expect(reach("[130, 189.999999]")).toBe(false);
  });

  it.each([
    [2, true],
    [400, true],
    [1, false],
    [401, false],
  ])("of %i dots a side is read: %s", (dots, isRead) => {
    const text = `---\ntitle: A\npaper: [2000, 2000]\npitch: 1\ndots: [${dots}, ${dots}]\n---`;
    expect(readNotebook({ path: "notebooks/a.md", text }).ok).toBe(isRead);
  });

  it.each([
    ["0.1", 100_000],
    ["1.1", 1_100_000],
    ["8.123456", 8_123_456],
    ["100", 100_000_000],
  ])("%s mm are whole nanometres", (written, nanometres) => {
    expect(fromMm(Number(written))).toBe(nanometres);
  });
});
