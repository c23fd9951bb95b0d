/** Recurrence rules against the examples of RFC 5545, and against a library that this project does not use itself. */
import fc from "fast-check";
import rrule from "rrule";
import { expect, it } from "vitest";
import { dayOf, digits, isoText } from "../../src/calendar/day.ts";
import { calendarOf, event, shownIn, years } from "./written.ts";

/** `1997-09: 2 4; 1997-10: 1` as dates. */
function dates(written: string): readonly string[] {
  return written.split(";").flatMap((month) => {
    const [name = "", days = ""] = month.trim().split(": ");
    return days.split(" ").map((day) => `${name}-${day.padStart(2, "0")}`);
  });
}

/** `2-30` as `2 3 … 30`. */
const run = (month: string, from: number, to: number) =>
  `${month}: ${Array.from({ length: to - from + 1 }, (_, index) => from + index).join(" ")}`;

/**
 * Every example of RFC 5545, 3.8.5.3, "Recurrence Rule", with its results: start, rule, dates. "seen": the dates are those of the
 * RFC's own text, as quoted by tests of other projects. Where a rule goes on for ever the RFC shows its first dates ("…"); days between
 * the runs that the RFC writes out ("September 2-11") are written out here.
 */
const EXAMPLES: readonly (readonly [about: string, start: string, rule: string, dates: string])[] =
  [
    ["daily for 10 occurrences (seen)", "1997-09-02", "FREQ=DAILY;COUNT=10", run("1997-09", 2, 11)],
    [
      "daily until December 24, 1997 (seen)",
      "1997-09-02",
      "FREQ=DAILY;UNTIL=19971224T000000Z",
      [
        run("1997-09", 2, 30),
        run("1997-10", 1, 31),
        run("1997-11", 1, 30),
        run("1997-12", 1, 23),
      ].join("; "),
    ],
    [
      "every other day, forever (from memory)",
      "1997-09-02",
      "FREQ=DAILY;INTERVAL=2",
      "1997-09: 2 4 6 8 10 12 14 16 18 20 22 24 26 28 30; 1997-10: 2 4 …",
    ],
    [
      "every 10 days, 5 occurrences (from memory)",
      "1997-09-02",
      "FREQ=DAILY;INTERVAL=10;COUNT=5",
      "1997-09: 2 12 22; 1997-10: 2 12",
    ],
    ...[
      "FREQ=YEARLY;UNTIL=20000131T140000Z;BYMONTH=1;BYDAY=SU,MO,TU,WE,TH,FR,SA",
      "FREQ=DAILY;UNTIL=20000131T140000Z;BYMONTH=1",
    ].map(
      (rule) =>
        [
          "every day in January, for 3 years (seen)",
          "1998-01-01",
          rule,
          [run("1998-01", 1, 31), run("1999-01", 1, 31), run("2000-01", 1, 31)].join("; "),
        ] as const,
    ),
    [
      "weekly for 10 occurrences (seen)",
      "1997-09-02",
      "FREQ=WEEKLY;COUNT=10",
      "1997-09: 2 9 16 23 30; 1997-10: 7 14 21 28; 1997-11: 4",
    ],
    [
      "weekly until December 24, 1997 (seen)",
      "1997-09-02",
      "FREQ=WEEKLY;UNTIL=19971224T000000Z",
      "1997-09: 2 9 16 23 30; 1997-10: 7 14 21 28; 1997-11: 4 11 18 25; 1997-12: 2 9 16 23",
    ],
    [
      "every other week, forever (seen)",
      "1997-09-02",
      "FREQ=WEEKLY;INTERVAL=2;WKST=SU",
      "1997-09: 2 16 30; 1997-10: 14 28; 1997-11: 11 25; 1997-12: 9 23; 1998-01: 6 20 …",
    ],
    ...[
      "FREQ=WEEKLY;UNTIL=19971007T000000Z;WKST=SU;BYDAY=TU,TH",
      "FREQ=WEEKLY;COUNT=10;WKST=SU;BYDAY=TU,TH",
    ].map(
      (rule) =>
        [
          "weekly on Tuesday and Thursday for five weeks (seen)",
          "1997-09-02",
          rule,
          "1997-09: 2 4 9 11 16 18 23 25 30; 1997-10: 2",
        ] as const,
    ),
    [
      "every other week on Monday, Wednesday and Friday (seen)",
      "1997-09-01",
      "FREQ=WEEKLY;INTERVAL=2;UNTIL=19971224T000000Z;WKST=SU;BYDAY=MO,WE,FR",
      "1997-09: 1 3 5 15 17 19 29; 1997-10: 1 3 13 15 17 27 29 31; 1997-11: 10 12 14 24 26 28; 1997-12: 8 10 12 22",
    ],
    [
      "every other week on Tuesday and Thursday, for 8 occurrences (seen)",
      "1997-09-02",
      "FREQ=WEEKLY;INTERVAL=2;COUNT=8;WKST=SU;BYDAY=TU,TH",
      "1997-09: 2 4 16 18 30; 1997-10: 2 14 16",
    ],
    [
      "monthly on the first Friday for 10 occurrences (seen)",
      "1997-09-05",
      "FREQ=MONTHLY;COUNT=10;BYDAY=1FR",
      "1997-09: 5; 1997-10: 3; 1997-11: 7; 1997-12: 5; 1998-01: 2; 1998-02: 6; 1998-03: 6; 1998-04: 3; 1998-05: 1; 1998-06: 5",
    ],
    [
      "monthly on the first Friday until December 24, 1997 (seen)",
      "1997-09-05",
      "FREQ=MONTHLY;UNTIL=19971224T000000Z;BYDAY=1FR",
      "1997-09: 5; 1997-10: 3; 1997-11: 7; 1997-12: 5",
    ],
    [
      "every other month on the first and last Sunday (seen)",
      "1997-09-07",
      "FREQ=MONTHLY;INTERVAL=2;COUNT=10;BYDAY=1SU,-1SU",
      "1997-09: 7 28; 1997-11: 2 30; 1998-01: 4 25; 1998-03: 1 29; 1998-05: 3 31",
    ],
    [
      "monthly on the second-to-last Monday for 6 months (seen)",
      "1997-09-22",
      "FREQ=MONTHLY;COUNT=6;BYDAY=-2MO",
      "1997-09: 22; 1997-10: 20; 1997-11: 17; 1997-12: 22; 1998-01: 19; 1998-02: 16",
    ],
    [
      "monthly on the third-to-the-last day, forever (seen)",
      "1997-09-28",
      "FREQ=MONTHLY;BYMONTHDAY=-3",
      "1997-09: 28; 1997-10: 29; 1997-11: 28; 1997-12: 29; 1998-01: 29; 1998-02: 26 …",
    ],
    [
      "monthly on the 2nd and 15th (seen)",
      "1997-09-02",
      "FREQ=MONTHLY;COUNT=10;BYMONTHDAY=2,15",
      "1997-09: 2 15; 1997-10: 2 15; 1997-11: 2 15; 1997-12: 2 15; 1998-01: 2 15",
    ],
    [
      "monthly on the first and last day (seen)",
      "1997-09-30",
      "FREQ=MONTHLY;COUNT=10;BYMONTHDAY=1,-1",
      "1997-09: 30; 1997-10: 1 31; 1997-11: 1 30; 1997-12: 1 31; 1998-01: 1 31; 1998-02: 1",
    ],
    [
      "every 18 months on the 10th thru 15th (seen)",
      "1997-09-10",
      "FREQ=MONTHLY;INTERVAL=18;COUNT=10;BYMONTHDAY=10,11,12,13,14,15",
      "1997-09: 10 11 12 13 14 15; 1999-03: 10 11 12 13",
    ],
    [
      "every Tuesday, every other month (seen)",
      "1997-09-02",
      "FREQ=MONTHLY;INTERVAL=2;BYDAY=TU",
      "1997-09: 2 9 16 23 30; 1997-11: 4 11 18 25; 1998-01: 6 13 20 27; 1998-03: 3 10 17 24 31 …",
    ],
    [
      "yearly in June and July for 10 occurrences (seen)",
      "1997-06-10",
      "FREQ=YEARLY;COUNT=10;BYMONTH=6,7",
      [1997, 1998, 1999, 2000, 2001].map((year) => `${year}-06: 10; ${year}-07: 10`).join("; "),
    ],
    [
      "every other year on January, February and March (seen)",
      "1997-03-10",
      "FREQ=YEARLY;INTERVAL=2;COUNT=10;BYMONTH=1,2,3",
      `1997-03: 10; ${[1999, 2001, 2003].map((year) => `${year}-01: 10; ${year}-02: 10; ${year}-03: 10`).join("; ")}`,
    ],
    [
      "every third year on the 1st, 100th and 200th day (seen)",
      "1997-01-01",
      "FREQ=YEARLY;INTERVAL=3;COUNT=10;BYYEARDAY=1,100,200",
      "1997-01: 1; 1997-04: 10; 1997-07: 19; 2000-01: 1; 2000-04: 9; 2000-07: 18; 2003-01: 1; 2003-04: 10; 2003-07: 19; 2006-01: 1",
    ],
    [
      "every 20th Monday of the year, forever (seen)",
      "1997-05-19",
      "FREQ=YEARLY;BYDAY=20MO",
      "1997-05: 19; 1998-05: 18; 1999-05: 17 …",
    ],
    [
      "Monday of week number 20, forever (seen)",
      "1997-05-12",
      "FREQ=YEARLY;BYWEEKNO=20;BYDAY=MO",
      "1997-05: 12; 1998-05: 11; 1999-05: 17 …",
    ],
    [
      "every Thursday in March, forever (seen)",
      "1997-03-13",
      "FREQ=YEARLY;BYMONTH=3;BYDAY=TH",
      "1997-03: 13 20 27; 1998-03: 5 12 19 26; 1999-03: 4 11 18 25 …",
    ],
    [
      "every Thursday, but only during June, July and August (seen)",
      "1997-06-05",
      "FREQ=YEARLY;BYDAY=TH;BYMONTH=6,7,8",
      "1997-06: 5 12 19 26; 1997-07: 3 10 17 24 31; 1997-08: 7 14 21 28; 1998-06: 4 11 18 25; 1998-07: 2 9 16 23 30; 1998-08: 6 13 20 27; 1999-06: 3 10 17 24; 1999-07: 1 8 15 22 29; 1999-08: 5 12 19 26 …",
    ],
    [
      "the first Saturday that follows the first Sunday (seen)",
      "1997-09-13",
      "FREQ=MONTHLY;BYDAY=SA;BYMONTHDAY=7,8,9,10,11,12,13",
      "1997-09: 13; 1997-10: 11; 1997-11: 8; 1997-12: 13; 1998-01: 10; 1998-02: 7; 1998-03: 7; 1998-04: 11; 1998-05: 9; 1998-06: 13 …",
    ],
    [
      "every 4 years, the first Tuesday after a Monday in November (seen)",
      "1996-11-05",
      "FREQ=YEARLY;INTERVAL=4;BYMONTH=11;BYDAY=TU;BYMONTHDAY=2,3,4,5,6,7,8",
      "1996-11: 5; 2000-11: 7; 2004-11: 2 …",
    ],
    [
      "the third instance into the month of Tuesday, Wednesday or Thursday (seen)",
      "1997-09-04",
      "FREQ=MONTHLY;COUNT=3;BYDAY=TU,WE,TH;BYSETPOS=3",
      "1997-09: 4; 1997-10: 7; 1997-11: 6",
    ],
    [
      "the second-to-last weekday of the month (seen)",
      "1997-09-29",
      "FREQ=MONTHLY;BYDAY=MO,TU,WE,TH,FR;BYSETPOS=-2",
      "1997-09: 29; 1997-10: 30; 1997-11: 27; 1997-12: 30; 1998-01: 29; 1998-02: 26; 1998-03: 30 …",
    ],
    [
      "weeks that begin on Monday (seen)",
      "1997-08-05",
      "FREQ=WEEKLY;INTERVAL=2;COUNT=4;BYDAY=TU,SU;WKST=MO",
      "1997-08: 5 10 19 24",
    ],
    [
      "weeks that begin on Sunday (seen)",
      "1997-08-05",
      "FREQ=WEEKLY;INTERVAL=2;COUNT=4;BYDAY=TU,SU;WKST=SU",
      "1997-08: 5 17 19 31",
    ],
    [
      "an invalid date is ignored (seen)",
      "2007-01-15",
      "FREQ=MONTHLY;BYMONTHDAY=15,30;COUNT=5",
      "2007-01: 15 30; 2007-02: 15; 2007-03: 15 30",
    ],
  ];

/** A row of events at nine in New York, as in the RFC; each as a date, or a whole day. */
function datesOf(start: string, rule: string, isWholeDay: boolean): readonly string[] {
  const day = start.replaceAll("-", "");
  const written = isWholeDay
    ? [`DTSTART;VALUE=DATE:${day}`, `RRULE:${rule.replace(/(UNTIL=\d{8})T\d{6}Z/, "$1")}`]
    : [`DTSTART;TZID=America/New_York:${day}T090000`, `RRULE:${rule}`];
  const file = calendarOf(event("UID:1", ...written));
  expect(file.issues).toEqual([]);
  return shownIn(file, years(1996, 2008));
}

it.each(EXAMPLES)("RFC 5545, 3.8.5.3: %s", (_, start, rule, expected) => {
  const isForever = expected.endsWith("…");
  const wanted = dates(expected.replace(" …", ""));
  const found = datesOf(start, rule, false);
  expect(isForever ? found.slice(0, wanted.length) : found).toEqual(
    wanted.map((date) => `${date} 09:00`),
  );
});

it.each(EXAMPLES.filter(([, , rule]) => !/UNTIL/.test(rule)))(
  "whole days do as times do: %s",
  (_, start, rule, expected) => {
    const wanted = dates(expected.replace(" …", ""));
    expect(datesOf(start, rule, true).slice(0, wanted.length)).toEqual(wanted);
  },
);

it("RFC 5545, 3.8.5.3: every Friday the 13th, without its start (seen)", () => {
  const file = calendarOf(
    event(
      "DTSTART;TZID=America/New_York:19970902T090000",
      "EXDATE;TZID=America/New_York:19970902T090000",
      "RRULE:FREQ=MONTHLY;BYDAY=FR;BYMONTHDAY=13",
    ),
  );
  expect(shownIn(file, years(1997, 2000))).toEqual(
    dates("1998-02: 13; 1998-03: 13; 1998-11: 13; 1999-08: 13; 2000-10: 13").map(
      (date) => `${date} 09:00`,
    ),
  );
});

/** From 9:00 to 16:40. */
const TWENTIES = Array.from({ length: 24 }, (_, index) => {
  return `${digits(9 + Math.floor(index / 3), 2)}:${digits((index % 3) * 20, 2)}`;
});

it.each([
  [
    // The RFC's UNTIL is right as New York's own clock shows it; an erratum makes it 21:00 UTC (from memory).
    "every 3 hours from 9:00 to 17:00 (seen)",
    "FREQ=HOURLY;INTERVAL=3;UNTIL=19970902T170000Z",
    ["09:00", "12:00", "15:00"],
  ],
  [
    "every 15 minutes for 6 occurrences (seen)",
    "FREQ=MINUTELY;INTERVAL=15;COUNT=6",
    ["09:00", "09:15", "09:30", "09:45", "10:00", "10:15"],
  ],
  [
    "every hour and a half for 4 occurrences (seen)",
    "FREQ=MINUTELY;INTERVAL=90;COUNT=4",
    ["09:00", "10:30", "12:00", "13:30"],
  ],
  [
    "every 20 minutes (seen)",
    "FREQ=DAILY;BYHOUR=9,10,11,12,13,14,15,16;BYMINUTE=0,20,40",
    TWENTIES,
  ],
  ["every 20 minutes (seen)", "FREQ=MINUTELY;INTERVAL=20;BYHOUR=9,10,11,12,13,14,15,16", TWENTIES],
])("RFC 5545, 3.8.5.3: %s", (_, rule, times) => {
  const file = calendarOf(event("DTSTART;TZID=America/New_York:19970902T090000", `RRULE:${rule}`));
  const day = dayOf({ year: 1997, month: 9, day: 2 });
  expect(shownIn(file, { from: day, to: day })).toEqual(times.map((time) => `1997-09-02 ${time}`));
});

const { rrulestr } = rrule;

/** What the rrule package makes of it, as texts; it has no time zones either when asked in UTC. */
function byLibrary(start: string, rule: string, from: string, to: string): readonly string[] {
  const parsed = rrulestr(`DTSTART:${start}Z\nRRULE:${rule}`);
  return parsed
    .between(new Date(`${from}T00:00:00Z`), new Date(`${to}T23:59:59Z`), true)
    .map((date) => date.toISOString().slice(0, 16).replace("T", " "));
}

const numbers = (min: number, max: number, most: number) =>
  fc.uniqueArray(
    fc.integer({ min, max }).filter((one) => one !== 0 || min === 0),
    { minLength: 1, maxLength: most },
  );
const WEEKDAYS = ["MO", "TU", "WE", "TH", "FR", "SA", "SU"];
const weekdays = fc.uniqueArray(fc.constantFrom(...WEEKDAYS), { minLength: 1, maxLength: 4 });
const numbered = (most: number) =>
  fc.uniqueArray(
    fc
      .tuple(fc.integer({ min: -most, max: most }), fc.constantFrom(...WEEKDAYS))
      .map(([nth, weekday]) => (nth === 0 ? weekday : `${nth}${weekday}`)),
    { minLength: 1, maxLength: 3 },
  );

/** Parts that each frequency may have; the library takes a week by its number for all its days, so its weekday is always said. */
const PARTS: Readonly<Record<string, fc.Arbitrary<Readonly<Record<string, unknown>>>>> = {
  YEARLY: fc.oneof(
    fc.record({ BYMONTH: numbers(1, 12, 3), BYDAY: numbered(4) }),
    fc.record({ BYDAY: numbered(53) }),
    fc.record({ BYWEEKNO: numbers(-53, 53, 3), BYDAY: weekdays }),
    fc.record({ BYYEARDAY: numbers(-366, 366, 4) }),
    fc.record({ BYMONTHDAY: numbers(-31, 31, 3) }),
    fc.record({ BYMONTH: numbers(1, 12, 3) }),
    fc.constant({}),
  ),
  MONTHLY: fc.oneof(
    fc.record({ BYDAY: numbered(5) }),
    fc.record({ BYMONTHDAY: numbers(-31, 31, 4), BYDAY: weekdays }),
    fc.record({ BYMONTHDAY: numbers(-31, 31, 4), BYMONTH: numbers(1, 12, 6) }),
    fc.constant({}),
  ),
  WEEKLY: fc.oneof(
    fc.record({ BYDAY: weekdays }),
    fc.record({ BYDAY: weekdays, BYMONTH: numbers(1, 12, 6) }),
    fc.constant({}),
  ),
  DAILY: fc.oneof(
    fc.record({ BYDAY: weekdays, BYHOUR: numbers(0, 23, 3) }),
    fc.record({ BYMONTHDAY: numbers(-31, 31, 4) }),
    fc.record({ BYMONTH: numbers(1, 12, 3), BYMINUTE: numbers(0, 59, 2) }),
    fc.constant({}),
  ),
  // The library does not come back from a rule that never comes true, so no hours are asked for that it may never meet.
  HOURLY: fc.record({ BYMINUTE: numbers(0, 59, 2), BYDAY: weekdays }),
};

const rules = fc.constantFrom(...Object.keys(PARTS)).chain((frequency) =>
  fc.record({
    frequency: fc.constant(frequency),
    interval: fc.integer({ min: 1, max: 5 }),
    weekStart: fc.constantFrom(...WEEKDAYS),
    parts: PARTS[frequency] ?? fc.constant({}),
    // The library takes the first of a period that has not so many, counted from the end.
    position: fc.option(fc.constantFrom(-1, 1, 2, 3)),
    start: fc.integer({ min: 10_000, max: 21_000 }),
    later: fc.integer({ min: 0, max: 900 }),
  }),
);

it("rules give what the rrule package gives, wherever the days that are asked for begin", () => {
  fc.assert(
    fc.property(rules, ({ frequency, interval, weekStart, parts, position, start, later }) => {
      const isShort = frequency === "HOURLY";
      const written = Object.entries(parts).map(([name, list]) => `${name}=${String(list)}`);
      // Of the first week the library counts positions from the start on, not from the week's first day as 3.3.10 has it.
      const isListed = "BYDAY" in parts && (frequency === "YEARLY" || frequency === "MONTHLY");
      const rule = [
        `FREQ=${frequency}`,
        `INTERVAL=${interval}`,
        `WKST=${weekStart}`,
        ...written,
        ...(position !== null && isListed ? [`BYSETPOS=${position}`] : []),
      ].join(";");
      const first = isoText(dayOf({ year: 1970, month: 1, day: 1 + start }));
      const from = dayOf({ year: 1970, month: 1, day: 1 + start + (isShort ? later % 30 : later) });
      const range = {
        from,
        to: dayOf({ year: 1970, month: 1, day: 1 + from + (isShort ? 20 : 1100) }),
      };
      const file = calendarOf(
        event(`DTSTART:${first.replaceAll("-", "")}T093000`, `RRULE:${rule}`),
      );
      expect(file.issues).toEqual([]);
      const wanted = byLibrary(
        `${first.replaceAll("-", "")}T093000`,
        rule,
        isoText(range.from),
        isoText(range.to),
      );
      // A start that its rule does not have counts all the same (3.8.5.3), but not for the library.
      const own = `${first} 09:30`;
      const found = shownIn(file, range).filter((one) => one !== own || wanted.includes(own));
      // It gives hours in the order of the rule.
      expect(found).toEqual([...wanted].sort().slice(0, 2000));
    }),
    { seed: 5545, numRuns: 150 },
  );
});
