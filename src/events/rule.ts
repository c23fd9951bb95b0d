/** A recurrence rule as RFC 5545 (3.3.10) has it, read from what ical.js makes of its text. */
import type { Weekday } from "../calendar/day.ts";
import { type Moment, readMoment } from "./moment.ts";

export const FREQUENCIES = [
  "YEARLY",
  "MONTHLY",
  "WEEKLY",
  "DAILY",
  "HOURLY",
  "MINUTELY",
  "SECONDLY",
] as const;
export type Frequency = (typeof FREQUENCIES)[number];

/** Lists are empty where the rule has no such part; negative numbers count from the end. */
export interface Rule {
  readonly frequency: Frequency;
  /** From 1. */
  readonly interval: number;
  readonly count?: number;
  readonly until?: Moment;
  /** That weeks begin with. */
  readonly firstWeekday: Weekday;
  readonly months: readonly number[];
  readonly weeks: readonly number[];
  readonly yearDays: readonly number[];
  readonly monthDays: readonly number[];
  readonly weekdays: readonly RuleWeekday[];
  readonly hours: readonly number[];
  readonly minutes: readonly number[];
  readonly seconds: readonly number[];
  /** Which of a period's moments are kept, from 1. */
  readonly positions: readonly number[];
}

export interface RuleWeekday {
  readonly weekday: Weekday;
  /** The first, the last and so on of its month or year; 0 for each. */
  readonly nth: number;
}

/** The name of the part that is wrong. */
export interface RuleFault {
  readonly part: string;
}

const WEEKDAYS: readonly string[] = ["MO", "TU", "WE", "TH", "FR", "SA", "SU"];

/** Parts with numbers, the least and the most of each; 0 is none of them where they may be negative (3.3.10). */
const NUMBERS = {
  bymonth: [1, 12],
  byweekno: [-53, 53],
  byyearday: [-366, 366],
  bymonthday: [-31, 31],
  byhour: [0, 23],
  byminute: [0, 59],
  bysecond: [0, 60],
  bysetpos: [-366, 366],
} as const;

/** Parts that have no meaning with some frequencies (3.3.10: "MUST NOT"). */
const MISPLACED: Readonly<Record<string, readonly Frequency[]>> = {
  byweekno: ["MONTHLY", "WEEKLY", "DAILY", "HOURLY", "MINUTELY", "SECONDLY"],
  byyearday: ["MONTHLY", "WEEKLY", "DAILY"],
  bymonthday: ["WEEKLY"],
};

const LARGEST = 1_000_000_000;

/** From jCal's object of a rule (RFC 7265, 3.6.10); `zone` is the start's. */
export function readRule(written: unknown, zone: string | undefined): Rule | RuleFault {
  const parts = partsOf(written);
  const frequency = FREQUENCIES.find((one) => one === parts.get("freq"));
  if (!frequency) return { part: "FREQ" };
  const numbers = (key: keyof typeof NUMBERS) => listOf(parts.get(key)).map(Number);
  const weekdays = listOf(parts.get("byday")).flatMap((one) => readWeekday(one) ?? []);
  const firstWeekday = readWeekStart(parts.get("wkst"));
  const until = parts.has("until") ? readMoment(parts.get("until"), zone) : undefined;
  const wrong = wrongPart(parts, frequency, weekdays);
  if (wrong !== undefined) return { part: wrong.toUpperCase() };
  if (parts.has("until") && !until) return { part: "UNTIL" };
  if (!firstWeekday) return { part: "WKST" };
  return {
    frequency,
    interval: Number(parts.get("interval") ?? 1),
    ...(parts.has("count") && { count: Number(parts.get("count")) }),
    ...(until && { until }),
    firstWeekday,
    months: numbers("bymonth"),
    weeks: numbers("byweekno"),
    yearDays: numbers("byyearday"),
    monthDays: numbers("bymonthday"),
    weekdays,
    hours: numbers("byhour"),
    minutes: numbers("byminute"),
    // A leap second is the second before it.
    seconds: numbers("bysecond").map((second) => Math.min(second, 59)),
    positions: numbers("bysetpos"),
  };
}

function partsOf(written: unknown): ReadonlyMap<string, unknown> {
  return new Map(typeof written === "object" && written !== null ? Object.entries(written) : []);
}

function listOf(value: unknown): readonly unknown[] {
  if (value === undefined) return [];
  return Array.isArray(value) ? value : [value];
}

function wrongPart(
  parts: ReadonlyMap<string, unknown>,
  frequency: Frequency,
  weekdays: readonly RuleWeekday[],
): string | undefined {
  const outside = Object.entries(NUMBERS).find(([key, [least, most]]) =>
    listOf(parts.get(key)).some((one) => !isWithin(one, least, most)),
  );
  if (outside) return outside[0];
  const counted = ["interval", "count"].find(
    (key) => parts.has(key) && !isWithin(parts.get(key), 1, LARGEST),
  );
  if (counted) return counted;
  const misplaced = Object.entries(MISPLACED).find(
    ([key, frequencies]) => parts.has(key) && frequencies.includes(frequency),
  );
  if (misplaced) return misplaced[0];
  const days = listOf(parts.get("byday"));
  const isNumbered = weekdays.some(({ nth }) => nth !== 0);
  const mayBeNumbered =
    frequency === "MONTHLY" || (frequency === "YEARLY" && !parts.has("byweekno"));
  if (days.length !== weekdays.length || (isNumbered && !mayBeNumbered)) return "byday";
  return undefined;
}

function isWithin(value: unknown, least: number, most: number): boolean {
  if (typeof value !== "number" || !Number.isInteger(value)) return false;
  return value >= least && value <= most && (value !== 0 || least === 0);
}

function readWeekday(written: unknown): RuleWeekday | undefined {
  const found = typeof written === "string" ? /^([+-]?\d{1,2})?([A-Z]{2})$/.exec(written) : null;
  const weekday = asWeekday(WEEKDAYS.indexOf(found?.[2] ?? "") + 1);
  const nth = Number(found?.[1] ?? 0);
  if (!weekday || Math.abs(nth) > 53 || (found?.[1] !== undefined && nth === 0)) return undefined;
  return { weekday, nth };
}

/** ical.js numbers weekdays from Sunday, 1; without one it is Monday (3.3.10). */
function readWeekStart(written: unknown): Weekday | undefined {
  if (written === undefined) return 1;
  return typeof written === "number" ? asWeekday(written === 1 ? 7 : written - 1) : undefined;
}

function asWeekday(number: number): Weekday | undefined {
  return ([1, 2, 3, 4, 5, 6, 7] as const).find((one) => one === number);
}
