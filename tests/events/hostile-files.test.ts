/** Calendar files that mean harm: none crashes or takes long, and whatever is wrong has a place and plain words. */
import { expect, it } from "vitest";
import { CALENDAR_LIMITS } from "../../src/events/calendar-file.ts";
import { eventsIn } from "../../src/events/events-in.ts";
import { UNSEEN } from "../fuzz/run-kind.ts";
import { tryCalendar } from "../fuzz/try-calendar.ts";
import { calendarOf, event, years } from "./written.ts";

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
  tryCalendar(text(), UNSEEN);
});

it("counts its work, not the time: of an endless row it looks at so many steps and no more", () => {
  const file = calendarOf(event("DTSTART:20270101", "RRULE:FREQ=SECONDLY;INTERVAL=1"));
  const { issues } = eventsIn([file], years(2027));
  expect(issues).toHaveLength(1);
  expect(issues.map(({ kind }) => kind)).toEqual(["too-long-to-count"]);
});
