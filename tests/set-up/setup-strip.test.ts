/** The strip of a set-up, held against its own pages: uses are counted anew from `setup.json`. */
import { describe, expect, it } from "vitest";
import { UNDATED } from "../../src/plan/when.ts";
import { planSetup } from "../../src/setup/plan-setup.ts";
import { setupJson } from "../../src/setup/setup-json.ts";
import { setupStrip } from "../../src/setup/setup-strip.ts";
import { stripJson } from "../../src/strip/strip-json.ts";
import type { WrittenEntry } from "../oracle/set-up-by-the-text.ts";
import { recipeBySlug, setupOf, twentyByThirty } from "./known-patterns.ts";

const MIXED: readonly WrittenEntry[] = [
  "month-grows",
  "month-of-five",
  { each: "week", pages: ["a-week", "week-pair", { pattern: "sided" }] },
  "wide",
  { pattern: "note", times: 3 },
  "pair",
];

function planned(pages: readonly WrittenEntry[], lanes: number) {
  const dates = { from: "2027-04-01", to: "2027-06-30" };
  const notebook = twentyByThirty();
  const written = { ...setupOf({ dates, first: 1, pages }), lanes };
  const setup = planSetup({ setup: written, notebook, when: UNDATED, recipe: recipeBySlug });
  return { json: JSON.parse(setupJson(setup)), strip: stripJson(setupStrip(setup, notebook)) };
}

interface Split {
  readonly axis: string;
  readonly from: number;
  readonly before: number;
  readonly sizes: readonly number[];
  readonly gaps: readonly number[];
}

function marksOf({ from, before, sizes, gaps }: Split): string {
  const marks = new Set<number>();
  let at = from + before;
  for (const [index, size] of sizes.entries()) {
    marks.add(at).add(at + size);
    at += size + (gaps[index] ?? 0);
  }
  return [...marks].join();
}

/** How many pages have each set of marks along an axis; the two pages of a spread count once. */
function usesOf(json: ReturnType<typeof planned>["json"], axis: string): Record<string, number> {
  const uses: Record<string, number> = {};
  for (const { number, plan } of json.pages) {
    const { pages = [] } = json.plans[plan] ?? {};
    if (pages.length === 2 && number % 2 === 1) continue;
    const splits: Split[] = pages.flatMap((page: { splits: Split[] }) => page.splits);
    const sets = new Set(splits.filter((split) => split.axis === axis).map(marksOf));
    for (const marks of sets) uses[marks] = (uses[marks] ?? 0) + 1;
  }
  return uses;
}

describe("the strip of a set-up", () => {
  it("counts for each run the pages and spreads that have it", () => {
    const { json, strip } = planned(MIXED, 12);
    for (const { axis, lanes } of strip.sides) {
      const runs = lanes.flatMap((lane) => lane.runs);
      const shown = Object.fromEntries(runs.map(({ marks, uses }) => [marks.join(), uses]));
      expect(shown).toEqual(usesOf(json, axis));
    }
  });

  it("keeps what adds up to most uses where there is but one lane", () => {
    const { json, strip } = planned(MIXED, 1);
    const [, down] = strip.sides;
    const uses = usesOf(json, "down");
    // All of these lie over one another, so that one is kept: that which most pages have.
    expect(down?.lanes.map(({ runs }) => runs.map((run) => run.uses))).toEqual([
      [Math.max(...Object.values(uses))],
    ]);
    expect(down?.left_out.length).toBeGreaterThan(2);
  });

  it("says of what does not fit for which days, and of what fits nowhere why", () => {
    const { strip } = planned(MIXED, 12);
    const [across] = strip.sides;
    const said = across?.left_out.map(({ pattern, why }) => `${pattern}: ${why}`) ?? [];
    expect(said.filter((line) => line.startsWith("wide: "))).toHaveLength(1);
    expect(said.find((line) => line.startsWith("month-of-five: "))).toContain("2027-05");
  });
});
