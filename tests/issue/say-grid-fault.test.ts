/** One fault of a grid in the words of a file and in those of a field. */
import { describe, expect, it } from "vitest";
import type { GridFault } from "../../src/issue/facts/grid-fault.ts";
import { sayGridFaultAtField, sayGridFaultInFile } from "../../src/issue/words/say-grid-fault.ts";

const dots = { kind: "dots-beyond-paper", dots: 40, pitchMm: 5, needsMm: 195 } as const;

describe("a grid's fault", () => {
  it.each<[GridFault, string, string, string]>([
    [
      { ...dots, axis: "across", hasMm: 148, isCentred: true, fitting: 30 },
      "40 dots across at 5 mm need 195 mm and the paper is 148 mm wide.",
      "At this pitch 30 dots across fit.",
      "40 dots at 5 mm need 195 mm; the sheet is 148 mm wide; 30 fit.",
    ],
    [
      { ...dots, axis: "down", hasMm: 4, isCentred: true, fitting: 1 },
      "40 dots down at 5 mm need 195 mm and the paper is 4 mm high.",
      "Make the pitch smaller or the paper larger.",
      "40 dots at 5 mm need 195 mm; the sheet is 4 mm high. Make the pitch smaller or the sheet larger.",
    ],
    [
      { ...dots, axis: "across", hasMm: 4, isCentred: false, fitting: 1 },
      "The dots across need 195 mm and the paper has 4 mm to the right of the first.",
      "Make the pitch smaller or the paper larger.",
      "These dots need 195 mm, and the sheet has 4 mm to the right of the first. Make the pitch smaller or the sheet larger.",
    ],
    [
      { kind: "first-dot-beyond-paper", axis: "across", firstMm: 150, paperMm: 148 },
      "The first dot across lies 150 mm in, and the paper is 148 mm wide.",
      "`firstDot` is measured from the left edge. Left out, the grid is centred.",
      "The first dot lies 150 mm in, and the sheet is 148 mm wide.",
    ],
    [
      { kind: "empty-edge-step", axis: "down", end: "last" },
      "The last dot down lies on the paper's edge, so the step between them has no size.",
      "Let counting end at the dot, with `count`, or move `firstDot`.",
      "The last dot down lies on the edge of the sheet, so the step between them has no size. Stop counting at the dot, or move the first dot.",
    ],
  ])("%j", (fault, sentence, hint, atField) => {
    expect(sayGridFaultInFile(fault)).toEqual({ sentence, hint });
    expect(sayGridFaultAtField(fault)).toBe(atField);
  });
});
