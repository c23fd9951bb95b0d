/** Calendar files as tests write them, and their events as short texts. */
import { dayOf, isoText } from "../../src/calendar/day.ts";
import type { DayRange } from "../../src/calendar/span.ts";
import { type CalendarFile, readCalendarFile } from "../../src/events/calendar-file.ts";
import { type DatedEvent, eventsIn } from "../../src/events/events-in.ts";

/** The zone of Berlin since 1996, as calendar programs write it (RFC 5545, 3.6.5, has New York's; this one is from memory). */
export const BERLIN = [
  "BEGIN:VTIMEZONE",
  "TZID:Europe/Berlin",
  "BEGIN:DAYLIGHT",
  "DTSTART:19960331T020000",
  "RRULE:FREQ=YEARLY;BYMONTH=3;BYDAY=-1SU",
  "TZOFFSETFROM:+0100",
  "TZOFFSETTO:+0200",
  "END:DAYLIGHT",
  "BEGIN:STANDARD",
  "DTSTART:19961027T030000",
  "RRULE:FREQ=YEARLY;BYMONTH=10;BYDAY=-1SU",
  "TZOFFSETFROM:+0200",
  "TZOFFSETTO:+0100",
  "END:STANDARD",
  "END:VTIMEZONE",
];

/** The days of some years. */
export function years(from: number, to = from): DayRange {
  return {
    from: dayOf({ year: from, month: 1, day: 1 }),
    to: dayOf({ year: to, month: 12, day: 31 }),
  };
}

/** A file of these lines. */
export function calendarOf(lines: readonly string[], end = "\r\n"): CalendarFile {
  const all = ["BEGIN:VCALENDAR", "VERSION:2.0", "PRODID:-//Marrow Lane//EN", ...lines];
  return readText([...all, "END:VCALENDAR", ""].join(end));
}

export function readText(text: string): CalendarFile {
  return readCalendarFile({ path: "lane.ics", bytes: new TextEncoder().encode(text) });
}

/** The lines of an event. */
export function event(...lines: readonly string[]): readonly string[] {
  return ["BEGIN:VEVENT", ...lines, "END:VEVENT"];
}

/** `2027-03-05 09:30 Seed swap`, `2027-03-05/2027-03-07 Open days`. */
export function shown({ from, to, time, title }: DatedEvent): string {
  const days = from === to ? isoText(from) : `${isoText(from)}/${isoText(to)}`;
  return [days, time, title].filter((part) => part !== undefined && part !== "").join(" ");
}

/** All events of a file in some days. */
export function shownIn(file: CalendarFile, range: DayRange): readonly string[] {
  return eventsIn([file], range).events.map(shown);
}
