/** Calendar files that mean harm: none crashes or takes long, and whatever is wrong has a place and plain words. */
import fc from "fast-check";
import { expect, it } from "vitest";
import { dayOf } from "../../src/calendar/day.ts";
import { CALENDAR_LIMITS } from "../../src/events/calendar-file.ts";
import { eventsIn, RANGE_LIMITS } from "../../src/events/events-in.ts";
import { keptText } from "../../src/events/kept-text.ts";
import { sayCalendarFile } from "../../src/issue/words/say-calendar-file-issue.ts";
import { calendarOf, event, readText, years } from "./written.ts";

const MARCH = {
  from: dayOf({ year: 2027, month: 3, day: 1 }),
  to: dayOf({ year: 2027, month: 3, day: 31 }),
};

/** Reads and expands a file, and checks what holds of any. */
function survives(text: string): void {
  const file = readText(text);
  const kept = readText(keptText(new TextEncoder().encode(text)));
  const lines = text.split(/\r\n|\r|\n/).length;
  for (const range of [MARCH, years(2020, 2029), years(1, 1), years(9999)]) {
    const { events, issues } = eventsIn([file], range);
    expect(events.length).toBeLessThanOrEqual(RANGE_LIMITS.events);
    for (const { from, to, title, time } of events) {
      expect(from <= range.to && to >= range.from && from <= to).toBe(true);
      expect(title).not.toMatch(/\p{Cc}/u);
      expect(time ?? "00:00").toMatch(/^([01]\d|2[0-3]):[0-5]\d$/);
    }
    // What is kept on a device of a file gives the same events, where all of it could be read.
    if (file.issues.length + issues.length === 0)
      expect(eventsIn([kept], range).events).toEqual(events);
    for (const issue of [...file.issues, ...issues]) {
      expect(issue.at.line).toBeGreaterThan(0);
      expect(issue.at.line).toBeLessThanOrEqual(lines);
      const { sentence, hint } = sayCalendarFile(issue);
      expect(`${sentence} ${hint}`).toMatch(/^["“`A-Z].*\.$/u);
      expect(`${sentence} ${hint}`).not.toMatch(/undefined|NaN|object|\p{Cc}/u);
    }
  }
}

const NAMES = [
  "DTSTART",
  "DTEND",
  "DURATION",
  "RRULE",
  "RDATE",
  "EXDATE",
  "RECURRENCE-ID",
  "SUMMARY",
  "STATUS",
  "UID",
];
const VALUES = [
  "20270305",
  "20270305T093000",
  "20270305T093000Z",
  "99991231T235959",
  "00010101",
  "20270230",
  "-20270305",
  "",
  "P1D",
  "PT99999999999S",
  "P999999999W",
  "FREQ=SECONDLY",
  "FREQ=MINUTELY;COUNT=999999999",
  "FREQ=DAILY;INTERVAL=999999999",
  "FREQ=YEARLY;BYMONTH=2;BYMONTHDAY=30",
  "FREQ=SECONDLY;BYMONTH=2;BYMONTHDAY=30",
  "FREQ=MONTHLY;BYSETPOS=366,-366,0",
  "FREQ=YEARLY;BYWEEKNO=53;BYDAY=MO;BYSETPOS=-1",
  "FREQ=DAILY;UNTIL=99991231T235959Z",
  "FREQ=WEEKLY;BYDAY=99XX",
  "FREQ=HOURLY;BYHOUR=1,2,3,4,5;BYMINUTE=1;BYSECOND=60",
  "FREQ=;;;==;BYDAY",
  "<img src=x onerror=alert(1)>",
  "\u0000\u202e\u0007",
  "__proto__",
  "constructor",
  "20270305/P1D",
  "20270305,20270306,,,",
  ";:;:;:",
  '"',
  "CANCELLED",
];
const PARAMETERS = [
  "",
  ";VALUE=DATE",
  ";VALUE=PERIOD",
  ";TZID=Nowhere",
  ';TZID="a:b"',
  ";VALUE=__proto__",
  ";X",
  ";=",
  ";TZID=a,b;TZID=c",
];

const line = fc
  .tuple(
    fc.constantFrom(...NAMES),
    fc.constantFrom(...PARAMETERS),
    fc.oneof(fc.constantFrom(...VALUES), fc.string({ maxLength: 40 })),
  )
  .map(([name, parameters, value]) => `${name}${parameters}:${value}`);
const noise = fc.oneof(
  fc.constantFrom(
    "BEGIN:VEVENT",
    "END:VEVENT",
    "BEGIN:VALARM",
    "END:VCALENDAR",
    "BEGIN:VTIMEZONE",
    "TZID:Nowhere",
    "BEGIN:STANDARD",
    " folded",
    "\tfolded",
    "no colon",
    "",
  ),
  fc.string({ maxLength: 60, unit: "binary" }),
);

it("200 files of odd lines", () => {
  fc.assert(
    fc.property(
      fc.array(fc.oneof({ weight: 5, arbitrary: line }, { weight: 1, arbitrary: noise }), {
        maxLength: 60,
      }),
      fc.constantFrom("\r\n", "\n", "\r"),
      (lines, end) =>
        survives(
          [
            "BEGIN:VCALENDAR",
            "BEGIN:VEVENT",
            "DTSTART:20270301T090000",
            ...lines,
            "END:VEVENT",
            "END:VCALENDAR",
          ].join(end),
        ),
    ),
    { seed: 2027, numRuns: 200 },
  );
});

const repeated = (count: number, text: string) => text.repeat(count);

/** Files that are large, deep or endless. */
const BOMBS: readonly (readonly [about: string, text: () => string])[] = [
  [
    "a line of ten million letters",
    () => `BEGIN:VCALENDAR\nBEGIN:VEVENT\nSUMMARY:${repeated(10_000_000, "x")}`,
  ],
  [
    "a million folded lines",
    () =>
      `BEGIN:VCALENDAR\nBEGIN:VEVENT\nSUMMARY:${repeated(340_000, "\n x")}\nEND:VEVENT\nEND:VCALENDAR`,
  ],
  [
    "as many components in one another",
    () => `BEGIN:VCALENDAR\n${repeated(70_000, "BEGIN:VEVENT\n")}`,
  ],
  ["as many that end", () => `BEGIN:VCALENDAR\n${repeated(70_000, "END:VEVENT\n")}`],
  [
    "as many others, then ends",
    () => `${repeated(30_000, "BEGIN:A\n")}${repeated(30_000, "END:B\n")}`,
  ],
  [
    "all events that a file has room for",
    () => eventsOf(CALENDAR_LIMITS.events, "DTSTART:20270305T090000", "RRULE:FREQ=YEARLY;BYDAY=MO"),
  ],
  [
    "each of them every second",
    () =>
      eventsOf(
        CALENDAR_LIMITS.events,
        "DTSTART:20270305T090000",
        "RRULE:FREQ=SECONDLY;BYMONTH=2;BYMONTHDAY=30",
      ),
  ],
  [
    "each of them for ten thousand years",
    () => eventsOf(CALENDAR_LIMITS.events, "DTSTART:00010101", "RRULE:FREQ=DAILY;COUNT=999999999"),
  ],
  [
    "every time of the day",
    () =>
      eventsOf(
        500,
        "DTSTART:20270305T090000",
        `RRULE:FREQ=DAILY;BYHOUR=${list(24)};BYMINUTE=${list(60)};BYSECOND=${list(60)}`,
      ),
  ],
  [
    "every day by its number",
    () =>
      eventsOf(
        200,
        "DTSTART:20270305T090000",
        `RRULE:FREQ=YEARLY;BYYEARDAY=${list(366).slice(2)};BYSETPOS=${list(366).slice(2)}`,
      ),
  ],
  ["days taken out in a zone of many changes", () => zoneOf(400)],
  [
    "a long list of days taken out",
    () =>
      eventsOf(
        1,
        "DTSTART:20270305",
        `EXDATE:${repeated(1500, "20270305T090000,")}20270305T090000`,
      ),
  ],
  ["parameters without an end", () => eventsOf(1, `DTSTART;${repeated(4000, "X=")}:20270305`)],
];

function list(count: number): string {
  return Array.from({ length: count }, (_, index) => index).join(",");
}

function eventsOf(count: number, ...lines: readonly string[]): string {
  const one = ["BEGIN:VEVENT", ...lines, "END:VEVENT", ""].join("\n");
  return `BEGIN:VCALENDAR\n${repeated(count, one)}END:VCALENDAR\n`;
}

/** All days taken out in UTC, and each must be looked up in a zone with so many changes of its clocks. */
function zoneOf(changes: number): string {
  const change =
    "BEGIN:STANDARD\nDTSTART:19700101T000000\nRRULE:FREQ=DAILY\nTZOFFSETFROM:+0100\nTZOFFSETTO:+0200\nEND:STANDARD\n";
  const out = repeated(500, "EXDATE:20270305T090000Z\n");
  return `BEGIN:VCALENDAR\nBEGIN:VTIMEZONE\nTZID:X\n${repeated(changes, change)}END:VTIMEZONE\nBEGIN:VEVENT\nDTSTART;TZID=X:20270101T090000\nRRULE:FREQ=DAILY\n${out}END:VEVENT\nEND:VCALENDAR\n`;
}

it.each(BOMBS)("%s", (_, text) => {
  survives(text());
});

it("counts its work, not the time: of an endless row it looks at so many steps and no more", () => {
  const file = calendarOf(event("DTSTART:20270101", "RRULE:FREQ=SECONDLY;INTERVAL=1"));
  const { issues } = eventsIn([file], years(2027));
  expect(issues).toHaveLength(1);
  expect(issues.map(({ kind }) => kind)).toEqual(["too-long-to-count"]);
});
