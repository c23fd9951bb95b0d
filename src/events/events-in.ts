/** What calendar files have in a run of days: each event once for each time that it comes. */
import { type Day, day } from "../calendar/day.ts";
import { type DayRange, overlaps } from "../calendar/span.ts";
import type { CalendarFileIssue } from "../issue/facts/calendar-file-issue.ts";
import type { CalendarFile } from "./calendar-file.ts";
import { DAY, dayAt, type Moment, secondsOf, timeText } from "./moment.ts";
import type { CalendarEvent } from "./read-event.ts";
import { recur, type Steps } from "./recur.ts";
import { onClock, type Zones } from "./zone.ts";

/** An event as it is shown. */
export interface DatedEvent extends DayRange {
  /** "" where it has none. */
  readonly title: string;
  /** `09:30`, of its first day; none where it is a whole day or more. */
  readonly time?: string;
}

export interface EventsIn {
  /** By their first days, whole days before times. */
  readonly events: readonly DatedEvent[];
  readonly issues: readonly CalendarFileIssue[];
}

/** How many events some days can have, and how much is looked at to find them, for all files together. */
export const RANGE_LIMITS = { events: 2000, steps: 200_000 } as const;

/** The first limit that is met ends the search, and is told at the event that met it. */
export function eventsIn(files: readonly CalendarFile[], range: DayRange): EventsIn {
  const found: DatedEvent[] = [];
  const steps: Steps = { left: RANGE_LIMITS.steps };
  for (const { events, zones } of files) {
    const moved = movedBy(events);
    for (const event of events) {
      const { at, title } = event;
      const row = { event, moved: moved.get(event.uid) ?? [], zones, range };
      for (const start of event.isCancelled ? [] : startsOf(row, steps)) {
        if (found.length === RANGE_LIMITS.events) {
          const { events: limit } = RANGE_LIMITS;
          const issue = { about: "calendar-file", at, kind: "too-many-times", title } as const;
          return { events: inOrder(found), issues: [{ ...issue, limit }] };
        }
        found.push(shownAt(event, start));
      }
      if (steps.left >= 0) continue;
      const issue = { about: "calendar-file", at, kind: "too-long-to-count", title } as const;
      return { events: inOrder(found), issues: [issue] };
    }
  }
  return { events: inOrder(found), issues: [] };
}

/** By what rows are called: the events that stand for one of a row. */
function movedBy(events: readonly CalendarEvent[]): ReadonlyMap<string, readonly CalendarEvent[]> {
  const moved = new Map<string, CalendarEvent[]>();
  for (const event of events) {
    if (event.uid === "" || !event.insteadOf) continue;
    const row = moved.get(event.uid) ?? [];
    row.push(event);
    moved.set(event.uid, row);
  }
  return moved;
}

interface Row {
  readonly event: CalendarEvent;
  readonly moved: readonly CalendarEvent[];
  readonly zones: Zones;
  readonly range: DayRange;
}

/** When an event begins, in seconds as written, each time once: those of its times that have a day in the range. */
function* startsOf(row: Row, steps: Steps): Generator<number, void> {
  const { event, range } = row;
  const { start, moreDays } = event;
  const isExcepted = exceptionsOf(row, steps);
  const seen = new Set<number>();
  for (const at of candidates(row, steps)) {
    const first = dayAt(at);
    const key = start.second === undefined ? first * DAY : at;
    if (seen.has(key) || isExcepted(key)) continue;
    if (!overlaps({ from: first, to: day(first + moreDays) }, range)) continue;
    seen.add(key);
    yield key;
  }
}

function* candidates({ event, zones, range }: Row, steps: Steps): Generator<number, void> {
  const { start, moreDays, rule, also, insteadOf } = event;
  steps.left -= 1 + also.length;
  if (insteadOf || !rule) yield secondsOf(start);
  if (insteadOf) return;
  for (const one of also) yield secondsOf(onClock(one, start.zone, zones, steps));
  if (!rule) return;
  const until = rule.until && onClock(rule.until, start.zone, zones, steps);
  const asked = {
    rule,
    start: secondsOf(start),
    isWholeDay: start.second === undefined,
    until: until ? lastSecond(until) : Infinity,
    from: (range.from - moreDays) * DAY,
    to: (range.to + 1) * DAY - 1,
  };
  yield* recur(asked, steps);
}

function lastSecond(of: Moment): number {
  return of.second === undefined ? (of.day + 1) * DAY - 1 : secondsOf(of);
}

/** Tells of a beginning whether it is taken out of the row, or another event stands for it. A date takes its whole day out. */
function exceptionsOf({ event, moved, zones }: Row, steps: Steps): (at: number) => boolean {
  const { start, except, insteadOf } = event;
  const replaced = insteadOf ? [] : moved.flatMap((one) => one.insteadOf ?? []);
  const days = new Set<Day>();
  const seconds = new Set<number>();
  steps.left -= except.length + replaced.length;
  for (const one of [...except, ...replaced]) {
    const moment = onClock(one, start.zone, zones, steps);
    if (moment.second === undefined || start.second === undefined) days.add(moment.day);
    else seconds.add(secondsOf(moment));
  }
  return (at) => seconds.has(at) || days.has(dayAt(at));
}

function shownAt({ title, start, moreDays }: CalendarEvent, at: number): DatedEvent {
  const from = dayAt(at);
  const time = timeText({
    day: from,
    ...(start.second !== undefined && { second: at - from * DAY }),
  });
  return { title, from, to: day(from + moreDays), ...(time !== undefined && { time }) };
}

/** Of equal ones the order of the files is kept. */
function inOrder(events: readonly DatedEvent[]): readonly DatedEvent[] {
  const time = ({ time = "" }: DatedEvent) => time;
  return [...events].sort(
    (a, b) => a.from - b.from || (time(a) === time(b) ? 0 : time(a) < time(b) ? -1 : 1),
  );
}
