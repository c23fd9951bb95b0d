/** The set-up after a set-up: the next days of the same kind, by the platform's own dates. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readSpan } from "../../src/calendar/read-span.ts";
import { spanText } from "../../src/calendar/write-span.ts";
import { daysBeside, nextSetup } from "../../src/setup/next-setup.ts";
import { blankSetup } from "../../src/view/fields/setup-fields.ts";

const days = (text: string) => {
  const reading = readSpan(text);
  if (!reading.ok) throw new Error(`${text} is no span`);
  return reading.value;
};

describe("the days that follow", () => {
  it.each([
    ["2027-03", "2027-04"],
    ["2027-12", "2028-01"],
    ["2028-01", "2028-02"],
    ["2027", "2028"],
    ["2027-01/2027-03", "2027-04/2027-06"],
    ["2026-12/2027-02", "2027-03/2027-05"],
    ["2026-W53", "2027-W01"],
    ["2028-02-28", "2028-02-29"],
    ["2027-03-05/2027-03-09", "2027-03-10/2027-03-14"],
  ])("%s are %s, and the other way round", (now, next) => {
    const [one, two] = [days(now), days(next)];
    expect(spanText(daysBeside(one, 1) ?? one)).toBe(next);
    expect(spanText(daysBeside(two, -1) ?? two)).toBe(now);
  });

  it.each([
    ["9999", 1],
    ["9999-12", 1],
    ["0001-01-01", -1],
  ])("of %s are none at an end of the calendar", (text, by) => {
    expect(daysBeside(days(text), by)).toBeUndefined();
  });

  it("begin the day after, whatever they are", () => {
    const month = fc.tuple(fc.integer({ min: 1, max: 9000 }), fc.integer({ min: 1, max: 12 }));
    fc.assert(
      fc.property(month, fc.integer({ min: 1, max: 40 }), ([year, first], count) => {
        const iso = (at: Date) => at.toISOString().slice(0, 10);
        const at = (months: number, day: number) => {
          const date = new Date(Date.UTC(2000, 0, 1));
          date.setUTCFullYear(year, first - 1 + months, day);
          return iso(date);
        };
        const range = days(`${at(0, 1)}/${at(count, 0)}`);
        expect(daysBeside(range, 1)).toEqual({
          from: days(at(count, 1)).from,
          to: days(at(2 * count, 0)).to,
        });
      }),
      { seed: 31_007, numRuns: 300 },
    );
  });
});

describe("the set-up that follows", () => {
  const recipe = { ...blankSetup(days("2027-03")), title: "March", slug: "march", first: 43 };
  it("begins on the next free page, without the old name", () => {
    expect(nextSetup(recipe, 3)).toEqual({
      ...recipe,
      ...{ title: "", slug: "", first: 46, dates: { ...days("2027-04") } },
    });
  });

  it.each([
    ["the calendar", { ...recipe, dates: days("9999-12") }],
    ["the numbers of pages", { ...recipe, first: 9999 }],
  ])("is none where %s ends", (_, last) => {
    expect(nextSetup(last, 1)).toBeUndefined();
  });
});
