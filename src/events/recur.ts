/** The moments of a recurrence rule in a range (RFC 5545, 3.3.10), period by period. No library does it, since none can be stopped: of a rule that never comes true they look at every second up to the year 9999. */
import { type Day, day } from "../calendar/day.ts";
import { countIn, type DayRange, isBeyondYears, spansFrom, spansIn } from "../calendar/span.ts";
import { DAY, dayAt } from "./moment.ts";
import type { Frequency, Rule } from "./rule.ts";
import { allowsDay, withStart } from "./rule-days.ts";

/** How much work is left: each day and each moment that is looked at is a step. Below 0 it was too much. */
export interface Steps {
  left: number;
}

/** A rule and where to look. Moments are seconds since 1970-01-01, as written. */
export interface Recurrence {
  readonly rule: Rule;
  readonly start: number;
  /** A start without a time of day has no use for the rule's hours. */
  readonly isWholeDay: boolean;
  /** The last moment that may come. */
  readonly until: number;
  readonly from: number;
  readonly to: number;
}

const LONG = { YEARLY: "year", MONTHLY: "month", WEEKLY: "week", DAILY: "day" } as const;
const SHORT: Readonly<Partial<Record<Frequency, number>>> = {
  HOURLY: 3600,
  MINUTELY: 60,
  SECONDLY: 1,
};

/** The moments up to `to`, in their order, from `from` or a little before; the start is always the first (3.8.5.3). */
export function* recur(asked: Recurrence, steps: Steps): Generator<number, void> {
  const { start, until, to } = asked;
  const rule = withStart(asked.rule, dayAt(start));
  let left = rule.count ?? Infinity;
  if (start > until || start > to || left-- <= 0) return;
  yield start;
  for (const set of setsOf({ ...asked, rule }, steps)) {
    for (const at of atPositions(set, rule.positions)) {
      if (at <= start) continue;
      if (at > until || at > to || left-- <= 0) return;
      yield at;
    }
    steps.left -= set.length;
    if (steps.left < 0) return;
  }
}

function setsOf(asked: Recurrence, steps: Steps): Generator<readonly number[], void> {
  const unit = SHORT[asked.rule.frequency];
  return unit === undefined ? longSets(asked, steps) : shortSets(asked, unit, steps);
}

/** What each day, week, month or year has. */
function* longSets(asked: Recurrence, steps: Steps): Generator<readonly number[], void> {
  const { rule, start, from, to } = asked;
  const { frequency, interval, count, firstWeekday } = rule;
  if (!isLong(frequency)) return;
  const kind = LONG[frequency];
  const weekRule = { firstWeekday, weekOne: 4 };
  const range = { from: dayAt(start), to: dayAt(Math.max(start, from)) };
  const times = timesOf(asked, steps);
  // Without a number of times to count, the years before `from` need not be gone through.
  const before = count === undefined ? countIn(kind, range, weekRule) - 1 : 0;
  for (let index = Math.floor(before / interval); steps.left >= 0; index++) {
    const spans = spansFrom(kind, { range, first: index * interval, count: 1 }, weekRule);
    const span = isBeyondYears(spans) ? undefined : spans[0];
    if (!span || span.from * DAY > to) return;
    const days = allowedDays(rule, span, steps);
    yield days.flatMap((of) => times.map((time) => of * DAY + time));
  }
}

function isLong(frequency: Frequency): frequency is keyof typeof LONG {
  return frequency in LONG;
}

/** Of a year with months named, only these are looked at. */
function allowedDays(rule: Rule, span: DayRange, steps: Steps): readonly Day[] {
  const { frequency, months, firstWeekday } = rule;
  const found: Day[] = [];
  const isByMonth = frequency === "YEARLY" && months.length > 0;
  const inMonths = isByMonth ? spansIn("month", span, { firstWeekday, weekOne: 4 }) : [span];
  const ranges = isBeyondYears(inMonths) ? [] : inMonths;
  for (const [index, { from, to }] of ranges.entries()) {
    if (isByMonth && !months.includes(index + 1)) continue;
    for (let of = from; of <= to; of = day(of + 1)) if (allowsDay(rule, of)) found.push(of);
    steps.left -= to - from + 1;
  }
  steps.left -= 1;
  return found;
}

/** The times of a day, in seconds: the rule's, or the start's own. */
function timesOf({ rule, start, isWholeDay }: Recurrence, steps: Steps): readonly number[] {
  if (isWholeDay) return [0];
  const clock = start - dayAt(start) * DAY;
  const or = (list: readonly number[], own: number) => (list.length > 0 ? list : [own]);
  const hours = or(rule.hours, Math.floor(clock / 3600));
  const minutes = or(rule.minutes, Math.floor(clock / 60) % 60);
  const seconds = or(rule.seconds, clock % 60);
  steps.left -= hours.length * minutes.length * seconds.length;
  if (steps.left < 0) return [];
  return ascending(hours.flatMap((hour) => withinHour(hour * 3600, minutes, seconds)));
}

function withinHour(
  hour: number,
  minutes: readonly number[],
  seconds: readonly number[],
): readonly number[] {
  return minutes.flatMap((minute) => seconds.map((second) => hour + minute * 60 + second));
}

/** What each hour, minute or second has; the days in between are passed over. */
function* shortSets(
  { rule, start, from, to }: Recurrence,
  unit: number,
  steps: Steps,
): Generator<readonly number[], void> {
  const stride = unit * rule.interval;
  const first = Math.floor(start / unit) * unit;
  const clock = start - first;
  const or = (list: readonly number[], own: number) => (list.length > 0 ? list : [own]);
  const minutes = unit === 3600 ? or(rule.minutes, Math.floor(clock / 60)) : [0];
  const seconds = unit >= 60 ? or(rule.seconds, clock % 60) : [0];
  const offsets = ascending(withinHour(0, minutes, seconds));
  const passed = rule.count === undefined ? Math.floor(Math.max(0, from - first) / stride) : 0;
  for (let at = first + passed * stride; at <= to && steps.left >= 0; ) {
    steps.left -= 1;
    const of = dayAt(at);
    if (!allowsDay(rule, of)) {
      at += Math.ceil(((of + 1) * DAY - at) / stride) * stride;
      continue;
    }
    const period = at;
    if (allowsClock(rule, at - of * DAY, unit)) yield offsets.map((offset) => period + offset);
    at += stride;
  }
}

function allowsClock({ hours, minutes, seconds }: Rule, clock: number, unit: number): boolean {
  const has = (list: readonly number[], value: number) => list.length === 0 || list.includes(value);
  if (!has(hours, Math.floor(clock / 3600))) return false;
  if (unit < 3600 && !has(minutes, Math.floor(clock / 60) % 60)) return false;
  return unit > 1 || has(seconds, clock % 60);
}

/** The moments of a period that stand at the rule's positions; all where it names none. */
function atPositions(set: readonly number[], positions: readonly number[]): readonly number[] {
  if (positions.length === 0) return set;
  const found = positions.flatMap((at) => set[at > 0 ? at - 1 : set.length + at] ?? []);
  return ascending(found);
}

function ascending(numbers: readonly number[]): readonly number[] {
  return [...new Set(numbers)].sort((a, b) => a - b);
}
