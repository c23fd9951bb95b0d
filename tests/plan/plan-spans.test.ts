/** Many spans planned at once: alike ones share a plan, which is what each of them gets by itself. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dayOf, weekday } from "../../src/calendar/day.ts";
import { isBeyondYears, type Span, spansIn } from "../../src/calendar/span.ts";
import { ISO_WEEKS } from "../../src/calendar/week.ts";
import { layOutPattern } from "../../src/plan/plan-pattern.ts";
import { planSpans, type SpanPlan, spansByShape } from "../../src/plan/plan-spans.ts";
import { UNDATED } from "../../src/plan/when.ts";
import { readRecipe } from "../../src/recipe/read/read-recipe.ts";
import type { Recipe } from "../../src/recipe/recipe.ts";
import { arbitraryDated } from "../oracle/arbitrary-dated.ts";
import { notebookOf } from "../oracle/notebook-of.ts";
import { timesAs } from "../oracle/work-time.ts";
import { fileOf, type WrittenPattern } from "../oracle/written-pattern.ts";
import { checkRuns } from "../sweep/sweep-size.ts";

const SEED = 2_027;

function recipeOf(pattern: WrittenPattern): Recipe {
  const reading = readRecipe(fileOf(pattern));
  if (!reading.ok) throw new Error(JSON.stringify(reading.issues));
  return reading.value;
}

function spansOf({ dates }: Recipe, from: number, to = from): readonly Span[] {
  const range = {
    from: dayOf({ year: from, month: 1, day: 1 }),
    to: dayOf({ year: to, month: 12, day: 31 }),
  };
  const spans = dates ? spansIn(dates.span, range, ISO_WEEKS) : [];
  if (isBeyondYears(spans)) throw new RangeError("these years lie within the calendar");
  return spans;
}

/** A plan without what its days alone decide. */
function drawn(plan: SpanPlan["plan"]) {
  if (!plan.fits) return plan.misfit;
  return [
    plan.used,
    plan.pages.map(({ splits, boxes }) => [
      splits.map(({ dates: _, ...split }) => split),
      boxes.map(({ path, x, y, w, h, fill, every, label }) =>
        [path, x, y, w, h, fill, every, label !== ""].join(),
      ),
    ]),
  ];
}

describe("spans that come out alike", () => {
  const grid = recipeOf({
    dates: "month",
    page: {
      rows: { count: "weeks", each: { columns: { count: "days", each: { label: "{day}" } } } },
    },
  });

  it.each([
    ["a month's rows", grid, 3],
    [
      "rows, and which days are left away",
      { ...grid, dates: { span: "month", outside: "blank" } },
      28,
    ],
    ["days in a line", recipeOf({ dates: "month", page: { rows: { count: "days" } } }), 4],
    ["weeks", recipeOf({ dates: "week", page: { rows: { count: "days" } } }), 1],
  ] as const)("by %s, in 28 years", (_, recipe, shapes) => {
    expect(spansByShape(recipe, spansOf(recipe, 2001, 2028), UNDATED)).toHaveLength(shapes);
  });

  it("are found among all days of ten years by looking at few of them", () => {
    const each = { columns: { count: 2, each: { label: "{day} {month}" } } };
    const recipe = recipeOf({ dates: "day", page: { rows: { count: 30, each } } });
    const days = spansOf(recipe, 2027, 2036);
    expect(days).toHaveLength(3_653);
    const work = (spans: readonly Span[]) => () => spansByShape(recipe, spans, UNDATED);
    expect(timesAs(work(days), work(days.slice(0, 7)))).toBeLessThan(50);
  });

  it("are told apart at the end of the calendar, where the last days are of a week of the year 10000", () => {
    const recipe = recipeOf({ dates: "day", page: { label: "{week} of {week year}" } });
    const american = { ...UNDATED, rule: { firstWeekday: weekday(7), weekOne: 1 } };
    const days = spansOf(recipe, 9999).slice(-20);
    const groups = spansByShape(recipe, days, american);
    expect(groups.map((group) => group.length)).toEqual([14, 6]);
  });

  it("are planned as each of them is by itself, whatever the pattern", () => {
    let shared = 0;
    const numRuns = checkRuns(300);
    const years = fc.integer({ min: 1, max: 9998 });
    const steps = fc.integer({ min: 12, max: 70 });
    const patterns = arbitraryDated(3).filter(({ dates }) => dates !== "day" && dates !== "week");
    fc.assert(
      fc.property(patterns, years, steps, steps, (pattern, year, across, down) => {
        const recipe = recipeOf(pattern);
        const notebook = notebookOf(across, down);
        const spans = spansOf(recipe, year);
        const groups = planSpans(recipe, notebook, { spans, when: UNDATED });
        for (const group of groups) {
          for (const span of group.spans.slice(1)) {
            const own = layOutPattern(recipe, notebook, { ...UNDATED, span });
            expect(drawn(own)).toEqual(drawn(group.plan));
            shared++;
          }
        }
        const all = groups.flatMap((group) => group.spans).sort((a, b) => a.from - b.from);
        expect(all).toEqual(spans);
      }),
      { seed: SEED, numRuns },
    );
    expect(shared).toBeGreaterThan(numRuns);
  });
});
