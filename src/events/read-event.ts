/** One event of a calendar file: its days, its time, its title, and when it comes again. */
import { type Day, day } from "../calendar/day.ts";
import type { CalendarFileIssue, CalendarFileNote } from "../issue/facts/calendar-file-issue.ts";
import type { Place } from "../issue/facts/place.ts";
import { type Component, linesNamed } from "./components.ts";
import { later, type Moment } from "./moment.ts";
import { durationOf, momentsOf, type Property, readProperty, textOf } from "./property.ts";
import { type Rule, readRule } from "./rule.ts";

export interface CalendarEvent {
  /** The same for all that belong to one row of events; "" where there is none. */
  readonly uid: string;
  /** "" where it has none. */
  readonly title: string;
  readonly at: Place;
  readonly start: Moment;
  /** How many days after its first its last one is. */
  readonly moreDays: number;
  readonly rule?: Rule;
  /** When else it is, and when it is not. */
  readonly also: readonly Moment[];
  readonly except: readonly Moment[];
  /** Which one of its row this event stands for. */
  readonly insteadOf?: Moment;
  readonly isCancelled: boolean;
}

export interface ReadEvent {
  readonly event?: CalendarEvent;
  readonly issues: readonly CalendarFileIssue[];
  readonly notes: readonly CalendarFileNote[];
}

/** Takes down what is wrong in a line; reading goes on. */
interface Reader {
  readonly component: Component;
  readonly title: string;
  readonly file: string;
  readonly issues: CalendarFileIssue[];
  readonly notes: CalendarFileNote[];
}

/** Without a start there is no event. */
export function readEvent(component: Component, file: string): ReadEvent {
  const reader: Reader = { component, title: titleOf(component), file, issues: [], notes: [] };
  const { issues, notes } = reader;
  const summary = one(reader, "SUMMARY");
  const start = one(reader, "DTSTART");
  const moment = start && momentIn(reader, start, "DTSTART");
  if (!moment) {
    const hasLine = linesNamed(component, "DTSTART").length > 0;
    if (!hasLine) issues.push({ ...where(reader), kind: "no-start", title: reader.title });
    return { issues, notes };
  }
  if (moment.zone === "UTC") notes.push({ ...where(reader, start?.line), kind: "in-utc" });
  const rule = ruleIn(reader, moment);
  const insteadOf = one(reader, "RECURRENCE-ID");
  const replaced = insteadOf && momentIn(reader, insteadOf, "RECURRENCE-ID");
  if (insteadOf?.hasAllAfter) {
    notes.push({ ...where(reader, insteadOf.line), kind: "and-all-after" });
  }
  const event: CalendarEvent = {
    uid: plainText(one(reader, "UID")),
    title: plainText(summary),
    at: where(reader, start?.line).at,
    start: moment,
    moreDays: lastDay(reader, moment) - moment.day,
    ...(rule && { rule }),
    also: all(reader, "RDATE"),
    except: all(reader, "EXDATE"),
    ...(replaced && { insteadOf: replaced }),
    isCancelled: plainText(one(reader, "STATUS")).toUpperCase() === "CANCELLED",
  };
  return { event, issues, notes };
}

function titleOf(component: Component): string {
  const [line] = linesNamed(component, "SUMMARY");
  return plainText(line && readProperty(line));
}

function plainText(property: Property | undefined): string {
  return property ? textOf(property) : "";
}

/** The line that may be there once, as RFC 5545 has it; a second one is passed over. */
function one(reader: Reader, name: string): Property | undefined {
  return linesIn(reader, name)[0];
}

function linesIn(reader: Reader, name: string): readonly Property[] {
  return linesNamed(reader.component, name).flatMap((line) => {
    const property = readProperty(line);
    if (!property) return bad(reader, name, line.line);
    if (!property.isUtf8) {
      reader.issues.push({ ...where(reader, line.line), kind: "not-utf8-line", name });
    }
    return property;
  });
}

function bad(reader: Reader, name: string, line: number): readonly never[] {
  reader.issues.push({ ...where(reader, line), kind: "bad-line", title: reader.title, name });
  return [];
}

function where({ component, file }: Reader, line = component.line) {
  return { about: "calendar-file", at: { file, line, column: 1, width: 1 } } as const;
}

function momentIn(reader: Reader, property: Property, name: string): Moment | undefined {
  const moment = momentsOf(property)?.[0];
  if (!moment) bad(reader, name, property.line);
  return moment;
}

function all(reader: Reader, name: string): readonly Moment[] {
  return linesIn(reader, name).flatMap(
    (property) => momentsOf(property) ?? bad(reader, name, property.line),
  );
}

function ruleIn(reader: Reader, start: Moment): Rule | undefined {
  const property = one(reader, "RRULE");
  if (!property) return undefined;
  const rule = readRule(property.values[0], start.zone);
  if (!("part" in rule)) return rule;
  const { part } = rule;
  reader.issues.push({
    ...where(reader, property.line),
    kind: "bad-rule",
    title: reader.title,
    part,
  });
  return undefined;
}

/** The end is exclusive (3.6.1): what ends at midnight, or with the next day, does not reach that day. */
function lastDay(reader: Reader, start: Moment): Day {
  const end = one(reader, "DTEND");
  if (end) {
    const moment = momentIn(reader, end, "DTEND");
    if (!moment) return start.day;
    const last = moment.second === undefined || moment.second === 0 ? moment.day - 1 : moment.day;
    const isEarlier =
      moment.day < start.day ||
      (moment.day === start.day && (moment.second ?? 0) < (start.second ?? 0));
    // A journey against the sun may end, by the clocks there, before it began.
    if (isEarlier && moment.zone === start.zone) {
      reader.issues.push({
        ...where(reader, end.line),
        kind: "ends-before-start",
        title: reader.title,
      });
    }
    return day(Math.max(start.day, last));
  }
  const duration = one(reader, "DURATION");
  const seconds = duration && durationOf(duration);
  if (!duration) return start.day;
  if (seconds === undefined || seconds < 0) {
    bad(reader, "DURATION", duration.line);
    return start.day;
  }
  const last = later(start.second === undefined ? { ...start, second: 0 } : start, seconds - 1);
  return day(Math.max(start.day, last.day));
}
