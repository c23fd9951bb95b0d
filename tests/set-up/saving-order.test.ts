import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { UNDATED } from "../../src/plan/when.ts";
import { planSetup } from "../../src/setup/plan-setup.ts";
import { savingOrder } from "../../src/setup/saving-order.ts";
import type { WrittenEntry } from "../oracle/set-up-by-the-text.ts";
import { recipeBySlug, setupOf, twentyByThirty } from "./known-patterns.ts";

function planned(pages: readonly WrittenEntry[], first: number) {
  const dates = { from: "2027-03-01", to: "2027-03-14" };
  return planSetup({
    setup: setupOf({ dates, first, pages }),
    notebook: twentyByThirty(),
    when: UNDATED,
    recipe: recipeBySlug,
  });
}

function freeIn(pages: readonly WrittenEntry[], first: number): number {
  return planned(pages, first).pages.filter(({ drawn }) => !drawn).length;
}

/** A block of two weeks: spread, note, spread, note. One page stays free inside. */
const WEEKS: WrittenEntry = { each: "week", pages: ["week-pair", "note"] };

describe("the order that saves free pages", () => {
  it.each<
    readonly [
      pages: readonly WrittenEntry[],
      first: number,
      order: readonly number[] | undefined,
      free: number,
    ]
  >([
    [["note", "pair", "note"], 2, [0, 2, 1], 0],
    [["pair", "note"], 1, [1, 0], 0],
    [["pair", "note"], 2, undefined, 0],
    [["note", "pair"], 2, [1, 0], 0],
    [["pair", "pair"], 1, undefined, 1],
    [["note", WEEKS, "note"], 2, [0, 2, 1], 1],
    [["wide", "pair", "note"], 1, [0, 2, 1], 0],
  ])("of %j from %i", (pages, first, order, free) => {
    const saving = savingOrder(planned(pages, first));
    expect(saving?.entries).toEqual(order);
    if (saving) expect(saving.free).toBe(free);
  });

  it("is as good as the best of all orders, and is told only where it is better", () => {
    const entry = fc.constantFrom<WrittenEntry>(
      "note",
      "pair",
      WEEKS,
      { pattern: "note", times: 2 },
      {
        each: "week",
        pages: ["note", "week-pair"],
      },
    );
    fc.assert(
      fc.property(
        fc.array(entry, { minLength: 1, maxLength: 5 }),
        fc.integer({ min: 1, max: 2 }),
        (pages, first) => {
          const best = Math.min(...permutations(pages).map((order) => freeIn(order, first)));
          const saving = savingOrder(planned(pages, first));
          expect(saving?.free ?? freeIn(pages, first)).toBe(best);
          if (!saving) return;
          expect(best).toBeLessThan(freeIn(pages, first));
          const ordered = saving.entries.flatMap((index) => pages[index] ?? []);
          expect(freeIn(ordered, first)).toBe(best);
        },
      ),
      { seed: 77, numRuns: 25 },
    );
  });
});

function permutations<T>(all: readonly T[]): readonly (readonly T[])[] {
  if (all.length < 2) return [all];
  return all.flatMap((one, index) =>
    permutations(all.filter((_, other) => other !== index)).map((rest) => [one, ...rest]),
  );
}
