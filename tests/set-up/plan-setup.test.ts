import { describe, expect, it } from "vitest";
import { isoText, weekday } from "../../src/calendar/day.ts";
import { ENGLISH } from "../../src/calendar/english.ts";
import { readSpan } from "../../src/calendar/read-span.ts";
import type { Binding } from "../../src/notebook/notebook.ts";
import { planSetup } from "../../src/setup/plan-setup.ts";
import { setupJson } from "../../src/setup/setup-json.ts";
import type { WrittenEntry } from "../oracle/set-up-by-the-text.ts";
import { recipeBySlug, setupOf, twentyByThirty } from "./known-patterns.ts";

interface Given {
  readonly dates: string;
  readonly pages: readonly WrittenEntry[];
  readonly first?: number;
  readonly fill?: string;
  readonly binding?: Binding;
  readonly weekBegins?: number;
}

interface Json {
  readonly pages: readonly {
    readonly number: number;
    readonly pattern: string | null;
    readonly side?: string;
    readonly dates?: { readonly from: string; readonly to: string } | null;
    readonly plan?: number;
  }[];
  readonly plans: readonly {
    readonly pattern: string;
    readonly pages: readonly {
      readonly side: string;
      readonly boxes: readonly { readonly x: number }[];
    }[];
  }[];
  readonly contents: readonly unknown[];
  readonly uses: readonly unknown[];
  readonly left_out: readonly unknown[];
}

function planned({ dates, pages, first = 1, fill, binding = "left", weekBegins = 1 }: Given): Json {
  const span = readSpan(dates);
  if (!span.ok) throw new Error(dates);
  const range = { from: isoText(span.value.from), to: isoText(span.value.to) };
  const setup = planSetup({
    setup: setupOf({ dates: range, first, pages, ...(fill && { fill }) }),
    notebook: twentyByThirty(binding),
    when: { rule: { firstWeekday: weekday(weekBegins), weekOne: 4 }, names: ENGLISH },
    recipe: recipeBySlug,
  });
  return JSON.parse(setupJson(setup));
}

/** `42L note`, `43 -`, `44L a-week 2027-03-01`. */
function shown({ pages }: Json): readonly string[] {
  return pages.map(({ number, pattern, side = "", dates }) =>
    pattern === null
      ? `${number} -`
      : `${number}${side.charAt(0).toUpperCase()} ${pattern}${dates ? ` ${dates.from}` : ""}`,
  );
}

const WEEK_NOTES = { each: "week", pages: ["a-week", "note"] } as const;

describe("pages", () => {
  it.each<readonly [rule: string, given: Given, pages: readonly string[]]>([
    [
      "are numbered from the first free one",
      { dates: "2027-03", first: 42, pages: ["a-month", "note"] },
      ["42L a-month 2027-03-01", "43R note"],
    ],
    [
      "of a spread are an even one and the odd one after it",
      { dates: "2027-03", first: 42, pages: ["pair", "pair"] },
      ["42L pair", "43R pair", "44L pair", "45R pair"],
    ],
    [
      "stay free before a spread that would begin on an odd one",
      { dates: "2027", first: 1, pages: ["note", "pair", "note", "pair"] },
      ["1R note", "2L pair", "3R pair", "4L note", "5 -", "6L pair", "7R pair"],
    ],
    [
      "of a spread at an odd beginning leave the first one free",
      { dates: "2027", first: 7, pages: ["pair"] },
      ["7 -", "8L pair", "9R pair"],
    ],
    [
      "lie the other way round in a notebook bound at the right",
      { dates: "2027", first: 1, binding: "right", pages: ["note", "pair"] },
      ["1L note", "2R pair", "3L pair"],
    ],
    [
      "bound at the top lie as those bound at the left",
      { dates: "2027", first: 2, binding: "top", pages: ["pair", "note"] },
      ["2L pair", "3R pair", "4L note"],
    ],
    [
      "that stay free are filled",
      { dates: "2027", first: 3, fill: "note", pages: ["pair"] },
      ["3R note", "4L pair", "5R pair"],
    ],
    [
      "stay free where the filling does not fit",
      { dates: "2027", first: 3, fill: "wide", pages: ["pair", "note", "pair"] },
      ["3 -", "4L pair", "5R pair", "6L note", "7 -", "8L pair", "9R pair"],
    ],
    [
      "come for each span of a dated pattern with a day in the dates",
      { dates: "2027-03-31/2027-04-01", pages: ["a-month", "a-week"] },
      ["1R a-month 2027-03-01", "2L a-month 2027-04-01", "3R a-week 2027-03-29"],
    ],
    [
      "come unit by unit in a block",
      { dates: "2027-W09/2027-W10", pages: [WEEK_NOTES] },
      ["1R a-week 2027-03-01", "2L note", "3R a-week 2027-03-08", "4L note"],
    ],
    [
      "of a week between two months come with the first",
      {
        dates: "2027-03-29/2027-04-05",
        pages: [{ each: "month", pages: ["a-month", WEEK_NOTES] }],
      },
      [
        "1R a-month 2027-03-01",
        "2L a-week 2027-03-29",
        "3R note",
        "4L a-month 2027-04-01",
        "5R a-week 2027-04-05",
        "6L note",
      ],
    ],
    [
      "come again for another entry",
      { dates: "2027-W09", pages: ["a-week", "a-week", WEEK_NOTES] },
      ["1R a-week 2027-03-01", "2L a-week 2027-03-01", "3R a-week 2027-03-01", "4L note"],
    ],
    [
      "come so many times",
      { dates: "2027-W09", pages: [{ pattern: "note", times: 3 }] },
      ["1R note", "2L note", "3R note"],
    ],
    [
      "come so many times for each unit",
      {
        dates: "2027-W09/2027-W10",
        pages: [{ each: "week", pages: [{ pattern: "note", times: 2 }] }],
      },
      ["1R note", "2L note", "3R note", "4L note"],
    ],
    [
      "of weeks that begin in the dates",
      { dates: "2027-03", pages: [{ pattern: "a-week", borders: "first" }] },
      [
        "1R a-week 2027-03-01",
        "2L a-week 2027-03-08",
        "3R a-week 2027-03-15",
        "4L a-week 2027-03-22",
        "5R a-week 2027-03-29",
      ],
    ],
    [
      "of weeks that end in the dates",
      { dates: "2027-03", pages: [{ pattern: "a-week", borders: "last" }] },
      [
        "1R a-week 2027-03-01",
        "2L a-week 2027-03-08",
        "3R a-week 2027-03-15",
        "4L a-week 2027-03-22",
      ],
    ],
    [
      "of days in a unit are those in the dates, too",
      {
        dates: "2027-03-06/2027-03-09",
        pages: [{ each: "week", borders: "last", pages: ["a-day"] }],
      },
      ["1R a-day 2027-03-06", "2L a-day 2027-03-07"],
    ],
    [
      "of weeks begin with the calendar's first day, and those in the dates are ISO's",
      { dates: "2027-W09", weekBegins: 7, pages: ["a-week"] },
      ["1R a-week 2027-02-28", "2L a-week 2027-03-07"],
    ],
    [
      "of a week 53",
      { dates: "2026-W53", pages: ["a-week", "a-year"] },
      ["1R a-week 2026-12-28", "2L a-year 2026-01-01", "3R a-year 2027-01-01"],
    ],
    [
      "of a leap day",
      { dates: "2024-02-29", pages: ["a-day", "a-month"] },
      ["1R a-day 2024-02-29", "2L a-month 2024-02-01"],
    ],
    [
      "follow what is used for the span: May 2027 has six rows, and takes a spread",
      { dates: "2027-04/2027-06", pages: ["month-grows"] },
      [
        "1R month-grows 2027-04-01",
        "2L month-grows 2027-05-01",
        "3R month-grows 2027-05-01",
        "4L month-grows 2027-06-01",
      ],
    ],
    [
      "are none for what does not fit",
      { dates: "2027-04/2027-06", pages: ["month-of-five", "wide"] },
      ["1R month-of-five 2027-04-01", "2L month-of-five 2027-06-01"],
    ],
    [
      "may be one on which only one side fits",
      { dates: "2027", first: 1, pages: ["sided", "sided", "note", "sided"] },
      ["1R sided", "2L note", "3R sided"],
    ],
  ])("%s", (_, given, pages) => {
    expect(shown(planned(given))).toEqual(pages);
  });
});

describe("what else a set-up puts out", () => {
  it("has plans once for each pattern, days and side, in the order of the first page", () => {
    const { pages, plans } = planned({
      dates: "2027-W09",
      pages: [{ pattern: "note", times: 3 }, "pair", "a-week", "pair"],
    });
    expect(pages.map(({ plan }) => plan)).toEqual([0, 1, 0, 2, 2, 3, undefined, 2, 2]);
    expect(
      plans.map(({ pattern, pages }) => `${pattern} ${pages.map(({ side }) => side)}`),
    ).toEqual(["note right", "note left", "pair left,right", "a-week left"]);
  });

  it.each<readonly [Binding, corners: readonly string[]]>([
    ["left", ["1 right 1,0", "2 left 0,0"]],
    ["none", ["1 right 1,0", "2 left 0,0"]],
    ["right", ["1 left 0,0", "2 right 1,0"]],
    ["top", ["1 right 0,1", "2 left 0,1"]],
  ])("plans a page for its side, with inner at the fold: bound at the %s", (binding, corners) => {
    const leaf = { label: "", margin: { steps: { inner: 1 } }, fill: "blank", every: 1 } as const;
    const margined = { ...recipeBySlug("note"), attempts: [{ kind: "page", page: leaf } as const] };
    const dates = { from: "2027-01-01", to: "2027-01-01" };
    const { pages, plans } = planSetup({
      setup: setupOf({ dates, first: 1, pages: [{ pattern: "note", times: 2 }] }),
      notebook: twentyByThirty(binding),
      when: { rule: { firstWeekday: 1, weekOne: 4 }, names: ENGLISH },
      recipe: () => margined,
    });
    const shown = pages.map(({ number, side, drawn }) => {
      const box = plans[drawn?.plan ?? -1]?.pages[0]?.boxes[0];
      return `${number} ${side} ${box?.x},${box?.y}`;
    });
    expect(shown).toEqual(corners);
  });

  it("joins runs of one pattern over entries, and ends them at a free page", () => {
    const { contents } = planned({
      dates: "2027-03-01/2027-03-08",
      first: 2,
      pages: [
        "note",
        { pattern: "note", times: 2 },
        "a-week",
        { pattern: "a-week", borders: "first" },
        "note",
        "pair",
        "pair",
      ],
    });
    expect(contents).toEqual([
      { title: "Of note", dates: null, from: 2, to: 4 },
      { title: "Of a-week", dates: { from: "2027-03-01", to: "2027-03-14" }, from: 5, to: 8 },
      { title: "Of note", dates: null, from: 9, to: 9 },
      { title: "Of pair", dates: null, from: 10, to: 13 },
    ]);
  });

  it("counts a filled page in uses and contents, and a spread once", () => {
    const { uses, contents } = planned({
      dates: "2027",
      first: 1,
      fill: "note",
      pages: ["pair", "note", "pair"],
    });
    expect(uses).toEqual([
      { pattern: "note", times: 3 },
      { pattern: "pair", times: 2 },
    ]);
    expect(contents).toEqual([
      { title: "Of note", dates: null, from: 1, to: 1 },
      { title: "Of pair", dates: null, from: 2, to: 3 },
      { title: "Of note", dates: null, from: 4, to: 5 },
      { title: "Of pair", dates: null, from: 6, to: 7 },
    ]);
  });

  it("leaves a line for each span that does not fit, and one for what has no days", () => {
    const { left_out } = planned({
      dates: "2027-04/2027-08",
      first: 1,
      fill: "wide",
      pages: ["month-of-five", "wide", "wide", "pair"],
    });
    expect(left_out).toEqual([
      {
        pattern: "month-of-five",
        dates: { from: "2027-05-01", to: "2027-05-31" },
        why: expect.stringContaining("need 36 steps and have 30: 6 too few."),
      },
      {
        pattern: "month-of-five",
        dates: { from: "2027-08-01", to: "2027-08-31" },
        why: expect.stringContaining("36"),
      },
      { pattern: "wide", why: expect.stringContaining("50") },
    ]);
  });
});
