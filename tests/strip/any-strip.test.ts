import { describe, expect, it } from "vitest";
import { runLabels } from "../../src/strip/run-labels.ts";
import type { Strip } from "../../src/strip/strip.ts";
import { stripJson } from "../../src/strip/strip-json.ts";
import { sampleStrips } from "./arbitrary-strip.ts";

const STRIPS = sampleStrips(300, 38);

describe("the strips tried", () => {
  it("have misfits, refused runs and many lanes among them", () => {
    const sides = STRIPS.flatMap(({ strip }) => strip.sides);
    const kinds = new Set(sides.flatMap(({ leftOut }) => leftOut.map(({ kind }) => kind)));
    expect(kinds).toEqual(new Set(["misfit", "no-split", "no-lane"]));
    expect(Math.max(...sides.map(({ lanes }) => lanes.length))).toBeGreaterThan(5);
  });
});

describe("on any strip", () => {
  it("every split of every pattern is in a lane or left out", () => {
    for (const { strip, plans } of STRIPS) {
      for (const side of strip.sides) {
        for (const plan of plans.values()) {
          const refused = side.leftOut.filter(({ pattern }) => pattern === plan.pattern);
          if (!plan.fits) {
            expect(refused.map(({ kind }) => kind)).toEqual(["misfit"]);
            continue;
          }
          const carried = marksOf(strip, side.axis, plan.pattern);
          const asked = plan.pages.flatMap(({ splits }) =>
            splits.filter(({ axis }) => axis === side.axis).map(splitMarks),
          );
          if (asked.length === 0) expect(refused.map(({ kind }) => kind)).toEqual(["no-split"]);
          else expect(new Set(asked).size).toBe(carried.size + refused.length);
          for (const marks of carried) expect(asked).toContain(marks);
        }
      }
    }
  });

  it("no two runs of a lane overlap, no run leaves the page, and lanes keep to their limit", () => {
    for (const { strip, lanes } of STRIPS) {
      for (const side of strip.sides) {
        expect(side.lanes.length).toBeLessThanOrEqual(lanes);
        for (const { runs } of side.lanes) {
          for (const [index, run] of runs.entries()) {
            expect(run.from).toBeGreaterThanOrEqual(runs[index - 1]?.to ?? 0);
            expect(run.to).toBeLessThanOrEqual(side.steps);
            for (const mark of run.marks) {
              expect(mark).toBeGreaterThanOrEqual(run.from);
              expect(mark).toBeLessThanOrEqual(run.to);
            }
          }
        }
      }
    }
  });

  it("there are as many lanes as runs lie over one another, so one run fills each somewhere", () => {
    for (const { strip } of STRIPS) {
      for (const side of strip.sides) {
        const runs = side.lanes.flatMap((lane) => lane.runs);
        const depths = Array.from(
          { length: side.steps },
          (_, step) => runs.filter(({ from, to }) => from <= step && step < to).length,
        );
        expect(side.lanes.length).toBe(Math.max(0, ...depths));
      }
    }
  });

  it("marks differ from run to run, and so do labels", () => {
    for (const { strip } of STRIPS) {
      for (const side of strip.sides) {
        const runs = side.lanes.flatMap((lane) => lane.runs);
        expect(new Set(runs.map(({ marks }) => marks.join(" "))).size).toBe(runs.length);
        expect(new Set(runLabels(side, strip.patterns).values()).size).toBe(runs.length);
      }
    }
  });

  it("a pattern has one colour on both sides", () => {
    for (const { strip } of STRIPS) {
      const runs = stripJson(strip).sides.flatMap(({ lanes }) =>
        lanes.flatMap((lane) => lane.runs),
      );
      const colours = new Map<string, Set<number>>();
      for (const { patterns, colour } of runs) {
        const [first = ""] = patterns;
        colours.set(first, new Set([...(colours.get(first) ?? []), colour]));
      }
      for (const set of colours.values()) expect(set.size).toBe(1);
    }
  });
});

/** The marks of a split, added up apart from the strip. */
function splitMarks(split: {
  readonly from: number;
  readonly before: number;
  readonly sizes: readonly number[];
  readonly gaps: readonly number[];
}): string {
  let at = split.from + split.before;
  const marks: number[] = [];
  for (const [index, size] of split.sizes.entries()) {
    marks.push(at, at + size);
    at += size + (split.gaps[index] ?? 0);
  }
  return marks.filter((mark, index) => mark !== marks[index - 1]).join(" ");
}

function marksOf(strip: Strip, axis: string, pattern: string): ReadonlySet<string> {
  const side = strip.sides.find((one) => one.axis === axis);
  const runs = side?.lanes.flatMap((lane) => lane.runs) ?? [];
  const own = runs.filter(({ sources }) => sources.some((one) => one.pattern === pattern));
  return new Set(own.map(({ marks }) => marks.join(" ")));
}
