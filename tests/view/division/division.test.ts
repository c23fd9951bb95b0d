/** A division that somebody asks for: its numbers against the arithmetic of equal parts, and its way through the address. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  partRows,
  sayDivision,
  sayDivisionLeftover,
  sayNoDivision,
} from "../../../src/issue/words/say-division.ts";
import { AXES } from "../../../src/measure/axis.ts";
import type { Notebook } from "../../../src/notebook/notebook.ts";
import { readNotebook } from "../../../src/notebook/read-notebook.ts";
import {
  readDivisionAddress,
  writeDivisionAddress,
} from "../../../src/view/address/division-address.ts";
import {
  type DivisionChoice,
  divisionJson,
  workOutDivision,
} from "../../../src/view/division/division.ts";
import { unnamed } from "../../../src/view/fields/name-notebook.ts";

function notebook(dots: string, more = ""): Notebook {
  const text = `---\ntitle: Mine\npaper: A5\npitch: 5\ndots: ${dots}\n${more}---\n`;
  const reading = readNotebook({ path: "notebooks/mine.md", text });
  if (!reading.ok) throw new Error(JSON.stringify(reading.issues));
  return reading.value;
}

const mine = notebook("[24, 35]", "firstDot: [5, 5]\n");
const asked = (parts: number, gap = 0, margin: DivisionChoice["margin"] = [0, 0]) =>
  ({ axis: "across", parts, gap, margin }) as const;

describe("24 dots counted from the edge", () => {
  it.each([
    [asked(2), "Halves: 12 · 12", "Of 24 steps, nothing left over."],
    [asked(3), "Thirds: 8 · 8 · 8", "Of 24 steps, nothing left over."],
    [asked(3, 1), "Thirds with a gap of 1: 7 · 7 · 7", "Of 24 steps, 1 left over at the end."],
    [asked(5, 1), "Fifths with a gap of 1: 4 · 4 · 4 · 4 · 4", "Of 24 steps, nothing left over."],
    [asked(12), "Twelfths: 12 × 2", "Of 24 steps, nothing left over."],
    [asked(2, 0, [1, 1]), "Halves: 11 · 11", "Of 24 steps, nothing left over."],
  ])("%j", (choice, words, leftover) => {
    const { answer } = workOutDivision(choice, mine);
    expect(answer && sayDivision(choice, answer)).toBe(words);
    expect(answer && sayDivisionLeftover(answer)).toBe(leftover);
  });

  it("gives the data that is written into the page", () => {
    expect(JSON.parse(divisionJson(workOutDivision(asked(3, 1), mine)))).toEqual({
      axis: "across",
      parts: 3,
      gap: 1,
      margin: [0, 0],
      sizes: [7, 7, 7],
      marks: [0, 7, 8, 15, 16, 23],
      leftover: 1,
    });
  });

  it("is counted by positions, dots and millimetres", () => {
    const { answer } = workOutDivision(asked(3, 1), mine);
    expect(answer && partRows(answer)).toEqual([
      { steps: "7", count: "0 – 7", dots: "edge – 7", mm: "0 – 35" },
      { steps: "7", count: "8 – 15", dots: "8 – 15", mm: "40 – 75" },
      { steps: "7", count: "16 – 23", dots: "16 – 23", mm: "80 – 115" },
    ]);
  });

  it("says how many steps are missing, and gives no data", () => {
    const worked = workOutDivision(asked(20, 1), mine);
    expect(worked.answer).toBeUndefined();
    expect(divisionJson(worked)).toBe("null");
    expect(sayNoDivision(asked(20, 1), { margin: 0, steps: 24 })).toBe(
      "There are 24 steps: 20 parts with a gap of 1 need at least 39.",
    );
  });
});

describe("dots counted from the first one", () => {
  it("are one further than the count", () => {
    const { answer } = workOutDivision(asked(2), notebook("[25, 35]", "count: dot-to-dot\n"));
    expect(answer && partRows(answer).map(({ dots }) => dots)).toEqual(["1 – 13", "13 – 25"]);
  });
});

const choices = fc.record({
  axis: fc.constantFrom(...AXES),
  parts: fc.integer({ min: 1, max: 40 }),
  gap: fc.integer({ min: 0, max: 9 }),
  margin: fc.tuple(fc.integer({ min: 0, max: 20 }), fc.integer({ min: 0, max: 20 })),
});

describe("any division", () => {
  it("is what equal parts come to, written apart", () => {
    fc.assert(
      fc.property(choices, (choice) => {
        const { axis, parts, gap, margin } = choice;
        const steps = axis === "across" ? 24 : 35;
        const free = steps - margin[0] - margin[1] - (parts - 1) * gap;
        const size = Math.floor(free / parts);
        const { answer } = workOutDivision(choice, mine);
        expect(answer?.sizes).toEqual(size < 1 ? undefined : Array(parts).fill(size));
        if (!answer) return;
        expect(answer.leftover).toBe(free - parts * size);
        const starts = Array.from({ length: parts }, (_, k) => margin[0] + k * (size + gap));
        const marks = [...new Set(starts.flatMap((start) => [start, start + size]))];
        expect(answer.marks).toEqual(marks);
      }),
      { seed: 20261130 },
    );
  });

  it("comes back from its address", () => {
    fc.assert(
      fc.property(choices, (division) => {
        const own = { notebook: unnamed(mine), division };
        expect(readDivisionAddress(writeDivisionAddress(own))).toEqual({ ok: true, value: own });
      }),
      { seed: 20261130 },
    );
  });
});

describe("an address that is not valid", () => {
  it.each([
    ["#v=1&axis=up", "axis"],
    ["#v=1&parts=0", "parts"],
    ["#v=1&gap=-1", "gap"],
    ["#v=1&margin=1,x", "margin"],
  ])("%s names %s", (hash, key) => {
    const reading = readDivisionAddress(hash);
    expect(reading.ok ? "" : reading.issue).toMatchObject({ kind: "bad-value", key });
  });
});
