/** How often layouts are used, month by month: by hand, and against a count of single days and pages. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { isoText, weekday } from "../../src/calendar/day.ts";
import { ENGLISH } from "../../src/calendar/english.ts";
import { readSpan } from "../../src/calendar/read-span.ts";
import { planSetup } from "../../src/setup/plan-setup.ts";
import type { Setup } from "../../src/setup/setup.ts";
import { setupJson } from "../../src/setup/setup-json.ts";
import {
  type CountedSetup,
  monthsBefore,
  unusedLately,
  usesByMonth,
} from "../../src/setup/uses-by-month.ts";
import type { WrittenEntry } from "../oracle/set-up-by-the-text.ts";
import { recipeBySlug, setupOf, twentyByThirty } from "./known-patterns.ts";

const days = (text: string) => {
  const span = readSpan(text);
  if (!span.ok) throw new Error(text);
  return span.value;
};

function planned(dates: string, pages: readonly WrittenEntry[], first = 1): Setup {
  const { from, to } = days(dates);
  return planSetup({
    setup: setupOf({ dates: { from: isoText(from), to: isoText(to) }, first, pages }),
    notebook: twentyByThirty(),
    when: { rule: { firstWeekday: weekday(1), weekOne: 4 }, names: ENGLISH },
    recipe: recipeBySlug,
  });
}

const counted = (setup: Setup, ...drawn: readonly number[]): CountedSetup => ({
  setup,
  drawn: new Set(drawn),
});

/** `note 2/1`: planned, drawn. */
const shown = (all: readonly CountedSetup[]) => {
  const { months, layouts } = usesByMonth(all);
  return {
    months: months.map(({ year, month }) => `${year}-${month}`),
    rows: layouts.map(
      ({ pattern, byMonth }) =>
        `${pattern}: ${byMonth.map(({ planned: all, drawn }) => `${all}/${drawn}`).join(" ")}`,
    ),
  };
};

describe("uses by month", () => {
  it("are of the day on which a use begins: a week of two months is the first one's", () => {
    const setup = planned("2027-03", ["a-month", "a-week"]);
    // The weeks from 1, 8, 15, 22 and 29 March.
    expect(shown([counted(setup)])).toEqual({
      months: ["2027-3"],
      rows: ["a-week: 5/0", "a-month: 1/0"],
    });
    expect(shown([counted(planned("2027-04", ["a-week"]))])).toEqual({
      months: ["2027-3", "2027-4"],
      rows: ["a-week: 1/0 4/0"],
    });
  });

  it("without days are of their block's days, else of the whole set-up's", () => {
    const setup = planned("2026-12/2027-02", ["note", { each: "month", pages: ["pair"] }]);
    expect(shown([counted(setup)])).toEqual({
      months: ["2026-12", "2027-1", "2027-2"],
      rows: ["pair: 1/0 1/0 1/0", "note: 1/0 0/0 0/0"],
    });
  });

  it("are drawn when all of their pages are: of a spread both", () => {
    // The note is page 1, the spreads are 2–3 and 4–5.
    const setup = planned("2027-05", ["note", "pair", "pair"]);
    const all = [counted(setup, 1, 2, 4, 5)];
    expect(shown(all).rows).toEqual(["pair: 2/1", "note: 1/1"]);
    expect(usesByMonth(all).pages).toEqual({ planned: 5, drawn: 4 });
  });

  it("add up over set-ups, whatever order they come in, with the months between them", () => {
    const [march, june] = [planned("2027-03", ["note"]), planned("2027-06", ["note", "a-month"])];
    const expected = {
      months: ["2027-3", "2027-4", "2027-5", "2027-6"],
      rows: ["note: 1/1 0/0 0/0 1/0", "a-month: 0/0 0/0 0/0 1/0"],
    };
    expect(shown([counted(march, 1), counted(june)])).toEqual(expected);
    expect(shown([counted(june), counted(march, 1)])).toEqual(expected);
  });

  it("far apart leave out the months without any", () => {
    const all = [planned("1999-05", ["note"]), planned("2027-05", ["note"])].map((one) =>
      counted(one),
    );
    expect(shown(all).months).toEqual(["1999-5", "2027-5"]);
  });

  it("of nothing are none", () => {
    expect(usesByMonth([])).toEqual({ months: [], layouts: [], pages: { planned: 0, drawn: 0 } });
    expect(unusedLately(usesByMonth([]))).toEqual([]);
  });

  it("are as many as the set-ups themselves count", () => {
    const entry = fc.constantFrom<WrittenEntry>(
      ...["note", "pair", "a-day", "a-week", "week-pair", "a-month", "month-grows", "wide"],
      { each: "week", pages: ["note", "a-day"] },
      { pattern: "pair", times: 3 },
    );
    const dates = fc.constantFrom("2027-02", "2026-12-28/2027-01-10", "2028-W09", "2024-02-29");
    const setup = fc
      .tuple(dates, fc.array(entry, { minLength: 1, maxLength: 4 }), fc.integer({ min: 1, max: 9 }))
      .map(([text, pages, first]) => planned(text, pages, first));
    fc.assert(
      fc.property(fc.array(setup, { minLength: 1, maxLength: 3 }), fc.integer(), (all, seed) => {
        const ticked = all.map((one) =>
          counted(
            one,
            ...one.pages.map(({ number }) => number).filter((number) => (number * 7 + seed) % 3),
          ),
        );
        const { layouts, months, pages } = usesByMonth(ticked);
        const written = all.map((one) => JSON.parse(setupJson(one)));
        const usesOf = (pattern: string) =>
          written
            .flatMap(({ uses }) => uses)
            .filter((use) => use.pattern === pattern)
            .reduce((whole, { times }) => whole + times, 0);
        for (const layout of layouts) {
          expect(layout.planned).toBe(usesOf(layout.pattern));
          expect(layout.byMonth).toHaveLength(months.length);
          const whole = layout.byMonth.reduce((sum, one) => sum + one.planned, 0);
          expect(whole).toBe(layout.planned);
          const drawn = layout.byMonth.reduce((sum, one) => sum + one.drawn, 0);
          expect(drawn).toBe(layout.drawn);
          expect(drawn).toBeLessThanOrEqual(layout.planned);
        }
        const inAll = written.flatMap((one) => one.pages).filter(({ pattern }) => pattern !== null);
        expect(pages.planned).toBe(inAll.length);
        const isTicked = ticked.flatMap(({ setup: { pages: own }, drawn }) =>
          own.filter((page) => page.drawn && drawn.has(page.number)),
        );
        expect(pages.drawn).toBe(isTicked.length);
      }),
      { seed: 70_061, numRuns: 60 },
    );
  });
});

describe("layouts not used lately", () => {
  it("are those whose last use ended three months before the last set-up's end, or earlier", () => {
    const all = [
      planned("2026-11", ["note"]),
      planned("2027-01", ["a-month"]),
      planned("2027-02", ["a-week"]),
      planned("2027-04", ["pair"]),
    ];
    // Three months before 30 April is 30 January: the month of January was in use until the 31st.
    const unused = unusedLately(usesByMonth(all.map((one) => counted(one))));
    expect(unused.map(({ pattern }) => pattern)).toEqual(["note"]);
  });

  it.each([
    ["2027-04-30", 3, "2027-01-30"],
    ["2027-05-31", 3, "2027-02-28"],
    ["2028-05-31", 3, "2028-02-29"],
    ["2027-01-15", 3, "2026-10-15"],
    ["2027-03-01", 12, "2026-03-01"],
  ])("%s less %i months is %s", (text, count, expected) => {
    expect(isoText(monthsBefore(days(text).from, count))).toBe(expected);
  });
});
