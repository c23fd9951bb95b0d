import { describe, expect, it } from "vitest";
import type { LeftOut } from "../../src/issue/facts/strip-note.ts";
import { sayLeftOut, sayStripNote } from "../../src/issue/words/say-strip-note.ts";

const noLane = { kind: "no-lane", pattern: "week", axis: "across", from: 1, to: 26 } as const;

const SAID: readonly (readonly [LeftOut, string])[] = [
  [
    { kind: "no-split", pattern: "seeds", axis: "across" },
    "It has no columns, so there is nothing to mark across.",
  ],
  [
    { kind: "no-split", pattern: "seeds", axis: "down" },
    "It has no rows, so there is nothing to mark down.",
  ],
  [
    { ...noLane, side: "single", path: "columns", lanes: 4 },
    "The columns, from 1 to 26, find no room: all 4 lanes are taken there.",
  ],
  [
    { ...noLane, side: "left", path: "rows.1.columns", lanes: 1 },
    "The columns of row 2 on the left page, from 1 to 26, find no room: the one lane is taken there.",
  ],
  [
    {
      kind: "misfit",
      pattern: "rota",
      misfit: {
        kind: "split-too-short",
        side: "single",
        path: "columns",
        axis: "across",
        needs: 31,
        has: 26,
      },
    },
    "It does not fit this notebook. The columns need 31 steps and have 26: 5 too few.",
  ],
];

describe("what a strip leaves out", () => {
  it.each(SAID)("%o is said", (fact, sentence) => {
    expect(sayLeftOut(fact)).toBe(sentence);
  });
});

describe("a strip that is too narrow", () => {
  it("says how wide it is drawn and what to do", () => {
    expect(sayStripNote({ kind: "too-narrow", width: 20, needs: 24.1, lanes: [8, 1] })).toBe(
      "A width of 20 mm has no room for 8 and 1 lanes with their key, so the strip is 24.1 mm wide. Ask for fewer lanes, or fold the strip.",
    );
  });
});
