/** Which units a span is cut into, which of them are taken, and what each stands for, by the rules' text. */
import { OutsideYears } from "./labels-by-the-text.ts";
import {
  type Days,
  FIRST_NUMBER,
  LAST_NUMBER,
  type SpanName,
  spanAround,
  type Weeks,
} from "./rata-die.ts";
import type { UnitWord, WrittenSelection } from "./written-pattern.ts";

/** What an area stands for. */
export interface Around {
  readonly kind: SpanName;
  readonly days?: Days | undefined;
  /** The nearest area around, itself counted, that is a month, a quarter or a year. */
  readonly period?: Days | undefined;
  readonly weekday?: number;
}

export function asPeriod(days: Days): Days | undefined {
  return ["month", "quarter", "year"].includes(days.kind) ? days : undefined;
}

/** What each unit of a kind stands for, in order; fails where one needs a day outside the years 1 to 9999. */
export function aroundsOf(
  unit: UnitWord,
  selection: WrittenSelection,
  around: Around,
  weeks: Weeks,
): readonly Around[] {
  if (unit === "weekdays") {
    // Seven, from the calendar's first day on, going round.
    return chosen(7, selection).map((number) => ({
      ...around,
      weekday: ((weeks.first - 1 + number - 1) % 7) + 1,
    }));
  }
  const kind = KINDS[unit];
  const { days } = around;
  if (!days) return chosen(LARGEST[around.kind][unit] ?? 0, selection).map(() => ({ kind }));
  const all = allUnits(kind, days, weeks);
  return chosen(all.length, selection).map((number) => {
    const own = all[number - 1] ?? unitAfter(kind, all, number, weeks);
    if (own.from < FIRST_NUMBER || own.to > LAST_NUMBER) throw new OutsideYears(unit);
    return { kind, days: own, period: asPeriod(own) ?? around.period };
  });
}

const KINDS = { days: "day", weeks: "week", months: "month", quarters: "quarter" } as const;

/** The largest case at every level. */
const LARGEST: Readonly<Record<SpanName, Readonly<Partial<Record<UnitWord, number>>>>> = {
  day: {},
  week: { days: 7 },
  month: { days: 31, weeks: 6 },
  quarter: { days: 92, weeks: 14, months: 3 },
  year: { days: 366, weeks: 54, months: 12, quarters: 4 },
};

/** Each unit with a day in the span, one after another. */
function allUnits(kind: SpanName, { from, to }: Days, weeks: Weeks): readonly Days[] {
  const units: Days[] = [];
  for (let next = from; next <= to; ) {
    const unit = spanAround(kind, next, weeks);
    units.push(unit);
    next = unit.to + 1;
  }
  return units;
}

/** One of those that follow the last. */
function unitAfter(kind: SpanName, all: readonly Days[], number: number, weeks: Weeks): Days {
  let last = all.at(-1);
  if (!last) throw new Error("a span has units");
  for (let at = all.length; at < number; at++) last = spanAround(kind, last.to + 1, weeks);
  return last;
}

/** Which of so many, by their numbers from 1; numbers past the last are of those that follow. */
function chosen(
  count: number,
  { from = 1, to = -1, least = 0 }: WrittenSelection,
): readonly number[] {
  const begin = from > 0 ? from : Math.max(1, count + 1 + from);
  const end = to > 0 ? Math.min(count, to) : count + 1 + to;
  const numbers: number[] = [];
  for (let number = begin; number <= end; number++) numbers.push(number);
  while (numbers.length < least) numbers.push((numbers.at(-1) ?? begin - 1) + 1);
  return numbers;
}
