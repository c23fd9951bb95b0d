/** Random choices of days and of a calendar, as an address can say them. */
import fc from "fast-check";
import { WEEKDAY_WORDS } from "../../src/calendar/calendar.ts";
import { day, dayOf } from "../../src/calendar/day.ts";
import type { DayRange } from "../../src/calendar/span.ts";
import type { DatesChoice } from "../../src/view/fields/span-fields.ts";

const FIRST = dayOf({ year: 1, month: 1, day: 1 });
const LAST = dayOf({ year: 9999, month: 12, day: 31 });

/** Whole months as often as odd runs of days; nothing of the calendar as often as all of it. */
export function anyDates(): fc.Arbitrary<DatesChoice> {
  const month = fc
    .record({ year: fc.integer({ min: 1, max: 9998 }), month: fc.integer({ min: 1, max: 12 }) })
    .map((of) => ({
      from: dayOf({ ...of, day: 1 }),
      to: day(dayOf({ year: of.year, month: of.month + 1, day: 1 }) - 1),
    }))
    .filter(({ from, to }) => from < to);
  const run = fc
    .tuple(fc.integer({ min: FIRST, max: LAST }), fc.integer({ min: 0, max: 800 }))
    .map(([from, length]) => ({ from: day(from), to: day(Math.min(from + length, LAST)) }));
  return fc.record(
    {
      picked: fc.oneof(month, run),
      calendar: fc.record(
        {
          region: fc.constantFrom("001", "GB", "US", "PT", "EG"),
          language: fc.constantFrom("de", "fr", "pt-BR", "ar", "en-GB"),
          week: fc.constantFrom(...WEEKDAY_WORDS),
          weekOne: fc.integer({ min: 1, max: 7 }),
        },
        { requiredKeys: [] },
      ),
    },
    { requiredKeys: ["calendar"] },
  );
}

/** Days of up to ten years, mostly of some weeks: what is longer takes long to work out. */
export function anyRange(): fc.Arbitrary<DayRange> {
  const length = fc.oneof(
    { weight: 4, arbitrary: fc.integer({ min: 0, max: 40 }) },
    { weight: 2, arbitrary: fc.integer({ min: 0, max: 400 }) },
    { weight: 1, arbitrary: fc.integer({ min: 0, max: 3_600 }) },
  );
  return fc
    .tuple(fc.integer({ min: FIRST, max: LAST - 3_600 }), length)
    .map(([from, days]) => ({ from: day(from), to: day(from + days) }));
}
