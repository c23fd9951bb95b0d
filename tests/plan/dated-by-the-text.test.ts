/** Dated patterns against the rules' text: files written at random, read and planned, beside a planner written apart. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type CalendarFields, readCalendar } from "../../src/calendar/calendar.ts";
import { dayOf } from "../../src/calendar/day.ts";
import { namesOf } from "../../src/calendar/names.ts";
import { usableSteps } from "../../src/measure/grid-axis.ts";
import type { Notebook } from "../../src/notebook/notebook.ts";
import { planJson } from "../../src/plan/plan-json.ts";
import { layOutPattern } from "../../src/plan/plan-pattern.ts";
import type { When } from "../../src/plan/when.ts";
import { readRecipe } from "../../src/recipe/read/read-recipe.ts";
import type { Recipe } from "../../src/recipe/recipe.ts";
import { arbitraryDated } from "../oracle/arbitrary-dated.ts";
import { arbitraryNotebook } from "../oracle/arbitrary-notebook.ts";
import { datedByTheText } from "../oracle/dated-by-the-text.ts";
import { NAME_LISTS } from "../oracle/labels-by-the-text.ts";
import { notebookOf } from "../oracle/notebook-of.ts";
import {
  type Days,
  dayNumber,
  FIRST_NUMBER,
  LAST_NUMBER,
  plainDate,
  type SpanName,
  spanAround,
  type Weeks,
} from "../oracle/rata-die.ts";
import { fileOf, type WrittenPattern, type WrittenTrack } from "../oracle/written-pattern.ts";
import { checkRuns } from "../sweep/sweep-size.ts";

const SEED = 20_270_305;

/** Unicode CLDR 48, `weekData.json`, and ISO 8601 where no region is given. */
const CALENDARS: readonly (readonly [CalendarFields, Weeks])[] = [
  [{}, { first: 1, needed: 4 }],
  [{ region: "GB" }, { first: 1, needed: 4 }],
  [{ region: "US" }, { first: 7, needed: 1 }],
  [{ region: "PT" }, { first: 7, needed: 4 }],
  [{ region: "IS" }, { first: 7, needed: 4 }],
  [{ region: "EG" }, { first: 6, needed: 1 }],
  [{ region: "MV" }, { first: 5, needed: 1 }],
  [{ region: "001" }, { first: 1, needed: 1 }],
  [
    { region: "US", week: "wednesday", weekOne: 7 },
    { first: 3, needed: 7 },
  ],
  [
    { region: "DE", weekOne: 2 },
    { first: 1, needed: 2 },
  ],
];

interface Asked {
  readonly pattern: WrittenPattern;
  readonly notebook: Notebook;
  readonly days?: Days | undefined;
  readonly calendar: (typeof CALENDARS)[number];
  readonly language: "en" | "pl";
}

function whenOf({ days, calendar: [fields], language }: Asked): When {
  const calendar = readCalendar({ ...fields, language });
  const names = namesOf(language);
  if (!calendar.ok || !names) throw new Error("this calendar is all right");
  const span = days && {
    kind: days.kind,
    from: dayOf(plainDate(days.from)),
    to: dayOf(plainDate(days.to)),
  };
  return { rule: calendar.value, names, ...(span && { span }) };
}

function readOf(pattern: WrittenPattern): Recipe {
  const reading = readRecipe(fileOf(pattern));
  if (!reading.ok) throw new Error(JSON.stringify(reading.issues));
  return reading.value;
}

/** The engine's answer and the text's, as plain data; labels of what has no days yet are its own to choose. */
function bothPlans(asked: Asked, recipe = readOf(asked.pattern)) {
  const { pattern, notebook, days, calendar, language } = asked;
  const plan = layOutPattern(recipe, notebook, whenOf(asked));
  const { pattern: _, notebook: __, notes: ___, ...json } = JSON.parse(planJson(plan));
  const byText = datedByTheText(pattern, {
    steps: {
      across: usableSteps(notebook.axes.across),
      down: usableSteps(notebook.axes.down),
    },
    binding: notebook.binding,
    days,
    weeks: calendar[1],
    names: NAME_LISTS[language],
  });
  const shown = (given: unknown) => (days ? given : withoutLabels(given));
  return { engine: shown(plan.fits ? json : undefined), byText: shown(byText) };
}

function withoutLabels(given: unknown): unknown {
  return JSON.parse(JSON.stringify(given ?? null), (key, value) =>
    key === "label" ? undefined : value,
  );
}

const anyYear = fc.integer({ min: 1, max: 9999 });
/** Years of 53 weeks, leap years, and those whose 1 January is a day that weeks turn on. */
const oddYear = fc.constantFrom(
  1,
  2,
  1900,
  2000,
  2015,
  2020,
  2024,
  2026,
  2027,
  2028,
  2032,
  9998,
  9999,
);
const anyDay = fc.oneof(
  fc.integer({ min: FIRST_NUMBER, max: LAST_NUMBER }),
  fc
    .tuple(
      fc.oneof(anyYear, oddYear),
      fc.constantFrom([1, 1], [1, 7], [2, 28], [3, 1], [12, 25], [12, 31]),
    )
    .map(([year, [month = 1, day = 1]]) => dayNumber({ year, month, day })),
);

const asked = fc
  .record({
    pattern: arbitraryDated(),
    notebook: arbitraryNotebook({ dots: [12, 70] }),
    day: fc.oneof(
      { weight: 6, arbitrary: anyDay },
      { weight: 1, arbitrary: fc.constant(undefined) },
    ),
    calendar: fc.constantFrom(...CALENDARS),
    language: fc.constantFrom("en" as const, "pl" as const),
  })
  .map(({ day, ...rest }) => ({
    ...rest,
    days: day === undefined ? undefined : spanAround(rest.pattern.dates, day, rest.calendar[1]),
  }))
  .filter(({ days }) => !days || (days.from >= FIRST_NUMBER && days.to <= LAST_NUMBER));

describe("a dated plan is what the rules' text says", () => {
  it("for random patterns, notebooks, calendars and days", () => {
    const fitting: Partial<Record<SpanName, number>> = {};
    const numRuns = checkRuns(400);
    fc.assert(
      fc.property(asked, (each) => {
        const { engine, byText } = bothPlans(each);
        const { dates } = each.pattern;
        if (byText) fitting[dates] = (fitting[dates] ?? 0) + 1;
        expect(engine).toEqual(byText);
      }),
      { seed: SEED, numRuns },
    );
    for (const kind of ["day", "week", "month", "quarter", "year"] as const)
      expect(fitting[kind], kind).toBeGreaterThan(numRuns / 14);
  }, 180_000);
});

const DAY = { label: "{day}" };
const WEEK_OF_DAYS: WrittenTrack = {
  repeat: "weeks",
  columns: { count: "days", each: DAY },
};
const HEADINGS: WrittenTrack = {
  steps: 1,
  columns: { count: "weekdays", each: { label: "{weekday}" } },
};

/** What people draw most, and what is odd about it. */
const PATTERNS: readonly (readonly [string, WrittenPattern])[] = [
  [
    "a month's grid with headings",
    {
      dates: "month",
      page: {
        rows: { tracks: [{ label: "{month} {year}", steps: 2 }, HEADINGS, WEEK_OF_DAYS] },
      },
    },
  ],
  [
    "a month's grid of six rows, without the days around, a number at each week",
    {
      dates: "month",
      outside: "blank",
      page: {
        rows: {
          tracks: [
            {
              repeat: "weeks",
              least: 6,
              columns: {
                tracks: [
                  { label: "{week}", steps: 2 },
                  { repeat: "days", label: "{day}" },
                ],
              },
            },
          ],
        },
      },
    },
  ],
  [
    "a month in three columns, and a sixth week apart",
    {
      dates: "month",
      spread: {
        left: {
          columns: {
            tracks: [
              { rows: { tracks: [{ repeat: "days", to: 15, label: "{weekday} {day}" }] } },
              { rows: { tracks: [{ repeat: "days", from: 16, least: 16, label: "{day}" }] } },
            ],
          },
        },
        right: { rows: { tracks: [{ repeat: "weeks", from: 6, label: "{week} {week year}" }] } },
      },
    },
  ],
  [
    "a week with its end apart",
    {
      dates: "week",
      page: {
        rows: {
          tracks: [
            { label: "{day} {month} to {last day} {last month} {last year}", steps: 2 },
            { repeat: "days", to: 5, label: "{weekday} {day} {month}" },
            { columns: { tracks: [{ repeat: "days", from: -2, label: "{week}/{week year}" }] } },
          ],
        },
      },
    },
  ],
  [
    "a year of twelve small months",
    {
      dates: "year",
      page: {
        rows: {
          count: "quarters",
          gap: { min: 0, max: 1 },
          each: {
            columns: {
              count: "months",
              gap: { min: 0, max: 1 },
              each: {
                label: "{month}",
                rows: { tracks: [{ label: "{month}", steps: 1 }, WEEK_OF_DAYS] },
              },
            },
          },
        },
      },
      otherwise: [{ page: { rows: { count: "months", each: { label: "{month}" } } } }],
    },
  ],
  [
    "a year of weeks, numbered",
    { dates: "year", page: { rows: { count: "weeks", each: { label: "{week} {week year}" } } } },
  ],
];

/** Year ends and leap Februaries: 2015 to 2034 has each of the fourteen years that there are. */
const YEARS = Array.from({ length: 20 }, (_, index) => 2015 + index);

describe.each(PATTERNS)("%s", (_, pattern) => {
  const { dates } = pattern;
  const months = dates === "year" ? [1] : [1, 2, 3, 5, 8, 12];

  it.each([
    ["ISO 8601", 0],
    ["from Sunday", 2],
    ["from Saturday", 5],
  ])("on all that is odd in twenty years, %s", (__, index) => {
    const calendar = CALENDARS[index];
    if (!calendar) throw new RangeError("there is no such calendar");
    const recipe = readOf(pattern);
    for (const year of YEARS) {
      for (const month of months) {
        const days = spanAround(dates, dayNumber({ year, month, day: 1 }), calendar[1]);
        const each = { pattern, notebook: notebookOf(40, 64), days, calendar };
        const { engine, byText } = bothPlans({ ...each, language: "en" }, recipe);
        expect(engine, `${year}-${month}`).toEqual(byText);
        expect(engine, `${year}-${month}`).toBeDefined();
      }
    }
  });
});
