/** A calendar file (RFC 5545) as its events, with what is wrong in it and where. */
import type { CalendarFileIssue, CalendarFileNote } from "../issue/facts/calendar-file-issue.ts";
import { type Component, readComponents } from "./components.ts";
import { contentLines } from "./content-lines.ts";
import { type CalendarEvent, readEvent } from "./read-event.ts";
import { readZones, type Zones } from "./zone.ts";

/** The bytes of a file, and what it is called. */
export interface WrittenCalendar {
  readonly path: string;
  readonly bytes: Uint8Array;
}

export interface CalendarFile {
  readonly path: string;
  readonly events: readonly CalendarEvent[];
  readonly zones: Zones;
  /** What cannot be shown, or not as it is meant. */
  readonly issues: readonly CalendarFileIssue[];
  /** What is shown and worth a word. */
  readonly notes: readonly CalendarFileNote[];
}

/** More is not a keeper's calendar; and it must be read while somebody waits. */
export const CALENDAR_LIMITS = { kib: 1024, events: 2000 } as const;

/** Reads everything that can be read: an event that is wrong does not hide the others. */
export function readCalendarFile({ path, bytes }: WrittenCalendar): CalendarFile {
  const at = (line: number, width = 1) => ({ file: path, line, column: 1, width });
  const none = { path, events: [], zones: new Map(), notes: [] };
  const refused = (issue: CalendarFileIssue) => ({ ...none, issues: [issue] });
  const whole = { about: "calendar-file", at: at(1, 0) } as const;
  if (bytes.length > CALENDAR_LIMITS.kib * 1024) {
    return refused({ ...whole, kind: "too-large", limitKib: CALENDAR_LIMITS.kib });
  }
  const { roots, unclosed } = readComponents(contentLines(bytes));
  const calendars = roots.filter(({ name }) => name === "VCALENDAR");
  // Where one half is missing, what follows is told from it wrongly, too.
  const cutOff = unclosed.slice(0, 1).map((line): CalendarFileIssue => {
    return { about: "calendar-file", at: at(line), kind: "unclosed" };
  });
  if (calendars.length === 0) {
    return { ...none, issues: cutOff.length > 0 ? cutOff : [{ ...whole, kind: "no-calendar" }] };
  }
  const written = calendars.flatMap(({ parts }) => parts.filter(({ name }) => name === "VEVENT"));
  const issues = [...cutOff, ...tooMany(written, at)];
  const notes: CalendarFileNote[] = [];
  const events = written.slice(0, CALENDAR_LIMITS.events).flatMap((component) => {
    const read = readEvent(component, path);
    issues.push(...read.issues);
    notes.push(...read.notes);
    return read.event ?? [];
  });
  const zones = readZones(calendars);
  notes.push(...events.flatMap((event) => unknownZone(event, zones)));
  return { path, events, zones, issues, notes: firstOfKind(notes) };
}

function tooMany(
  written: readonly Component[],
  at: (line: number) => CalendarFileIssue["at"],
): readonly CalendarFileIssue[] {
  const first = written[CALENDAR_LIMITS.events];
  if (!first) return [];
  const { events: limit } = CALENDAR_LIMITS;
  return [{ about: "calendar-file", at: at(first.line), kind: "too-many-events", limit }];
}

/** Where a row ends is said in UTC (3.3.10), so its zone must be known to tell on which day. */
function unknownZone(
  { at, start, rule }: CalendarEvent,
  zones: Zones,
): readonly CalendarFileNote[] {
  const { zone = "UTC" } = start;
  if (rule?.until?.zone !== "UTC" || zone === "UTC" || zones.has(zone)) return [];
  return [{ about: "calendar-file", at, kind: "unknown-zone", zone }];
}

/** What is worth a word is worth it once for a file. */
function firstOfKind(notes: readonly CalendarFileNote[]): readonly CalendarFileNote[] {
  return notes.filter(({ kind }, index) => notes.findIndex((one) => one.kind === kind) === index);
}
