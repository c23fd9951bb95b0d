import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { weekday } from "../../src/calendar/day.ts";
import { ENGLISH } from "../../src/calendar/english.ts";
import { setupIssues } from "../../src/setup/check-setup.ts";
import { planSetup } from "../../src/setup/plan-setup.ts";
import { setupJson } from "../../src/setup/setup-json.ts";
import {
  setUpByTheText,
  type World,
  type WrittenEntry,
  type WrittenSetup,
} from "../oracle/set-up-by-the-text.ts";
import { checkRuns } from "../sweep/sweep-size.ts";
import { KNOWN, recipeBySlug, setupOf, twentyByThirty } from "./known-patterns.ts";

const SPANS = ["day", "week", "month", "quarter", "year"];
const BORDERS = fc.constantFrom("both", "first", "last");
const PATTERN_SLUGS = Object.keys(KNOWN);

function fittingIn(each: string | undefined): readonly string[] {
  const most = each ? SPANS.indexOf(each) : SPANS.length;
  return PATTERN_SLUGS.filter((slug) => SPANS.indexOf(KNOWN[slug]?.span ?? "day") <= most);
}

function entries(each: string | undefined, depth: number): fc.Arbitrary<readonly WrittenEntry[]> {
  const most = each ? SPANS.indexOf(each) + 1 : 4;
  const pattern = fc.constantFrom(...fittingIn(each)).chain((slug): fc.Arbitrary<WrittenEntry> => {
    if (KNOWN[slug]?.span) {
      return fc.oneof(
        fc.constant(slug),
        BORDERS.map((borders) => ({ pattern: slug, borders })),
      );
    }
    return fc.oneof(
      fc.constant(slug),
      fc.integer({ min: 1, max: 3 }).map((times) => ({ pattern: slug, times })),
    );
  });
  const block = (): fc.Arbitrary<WrittenEntry> =>
    fc
      .tuple(
        fc.constantFrom(...SPANS.slice(0, Math.min(most, 4))),
        fc.option(BORDERS, { nil: undefined }),
      )
      .chain(([inner, borders]) =>
        entries(inner, depth + 1).map((pages) => ({
          each: inner,
          ...(borders && { borders }),
          pages,
        })),
      );
  const one =
    depth < 3
      ? fc.oneof({ weight: 3, arbitrary: pattern }, { weight: 1, arbitrary: block() })
      : pattern;
  return fc.array(one, { minLength: 1, maxLength: depth === 0 ? 5 : 3 });
}

const DAY_MS = 86_400_000;
const iso = (number: number) => new Date(number * DAY_MS).toISOString().slice(0, 10);
const dayNumber = (text: string) => Date.parse(text) / DAY_MS;

/** Turns of years, week 53, the leap day, and the ends of quarters are begun near, and anything else. */
const BEGINNINGS = fc.oneof(
  fc
    .constantFrom(
      "2020-12-21",
      "2026-12-28",
      "2024-02-20",
      "2027-03-29",
      "2021-01-01",
      "2032-12-30",
      "2023-12-31",
    )
    .map(dayNumber),
  fc.integer({ min: dayNumber("2019-01-01"), max: dayNumber("2033-12-31") }),
);

const SETUPS: fc.Arbitrary<WrittenSetup> = fc
  .record({
    from: BEGINNINGS,
    days: fc.oneof(fc.integer({ min: 1, max: 9 }), fc.integer({ min: 1, max: 120 })),
    first: fc.integer({ min: 1, max: 60 }),
    pages: entries(undefined, 0),
    fill: fc.option(fc.constantFrom("note", "sided", "wide"), { nil: undefined }),
  })
  .map(({ from, days, fill, ...rest }) => ({
    ...rest,
    dates: { from: iso(from), to: iso(from + days - 1) },
    ...(fill && { fill }),
  }));

const WORLDS: fc.Arbitrary<World> = fc.record({
  weekBegins: fc.constantFrom(1, 7, 6),
  binding: fc.constantFrom("left", "right", "top", "none"),
  patterns: fc.constant(KNOWN),
});

/** What of `setup.json` the text decides; a plan by what makes it one. */
function built(written: WrittenSetup, { weekBegins, binding }: World) {
  const setup = setupOf(written);
  const rule = { firstWeekday: weekday(weekBegins), weekOne: 4 };
  const issues = setupIssues(setup, { recipe: recipeBySlug, rule });
  if (issues.length > 0) return { issues };
  const planned = planSetup({
    setup,
    notebook: twentyByThirty(binding),
    when: { rule, names: ENGLISH },
    recipe: recipeBySlug,
  });
  const { pages, plans, contents, uses, left_out } = JSON.parse(setupJson(planned));
  return {
    pages,
    plans: plans.map(planName),
    contents,
    uses,
    leftOut: left_out.map(({ why: _, ...line }: { why: string }) => line),
  };
}

interface PlanJson {
  readonly pattern: string;
  readonly dates: { readonly from: string } | null;
  readonly pages: readonly { readonly side: string }[];
}

function planName({ pattern, dates, pages }: PlanJson): string {
  const sides = pages.map(({ side }) => side).join();
  return `${pattern} ${dates?.from ?? ""} ${sides === "left,right" ? "both" : sides}`;
}

const RUNS = checkRuns(1_200);

describe("a set-up", () => {
  it("has the pages, plans, contents and uses that the rules' text gives it", () => {
    let tooMany = 0;
    fc.assert(
      fc.property(SETUPS, WORLDS, (written, world) => {
        const { wanted, ...expected } = setUpByTheText(written, world);
        const got = built(written, world);
        if (got.issues) {
          tooMany += 1;
          expect(got.issues).toMatchObject([{ kind: "too-many-pages" }]);
          // Each takes two pages at most, and leaves one free.
          expect(3 * wanted).toBeGreaterThan(1_000);
        } else expect(got).toEqual(expected);
      }),
      { seed: 20_270_301, numRuns: RUNS },
    );
    expect(tooMany).toBeLessThan(RUNS / 10);
  });
});
