/** How often layouts are used over several set-ups, by the month in which a use begins; what is drawn is counted apart from what is planned. */
import { civilDate, type Day, dayOf, daysInMonth } from "../calendar/day.ts";
import { beginsPlan, daysOfPage, type Setup } from "./setup.ts";

export interface CountedSetup {
  readonly setup: Setup;
  /** The numbers of the pages that are drawn. */
  readonly drawn: ReadonlySet<number>;
}

/** Planned and drawn; a use is drawn when all of its pages are. */
export interface UseCount {
  readonly planned: number;
  readonly drawn: number;
}

/** A month of a year, 1 to 12. */
export interface YearMonth {
  readonly year: number;
  readonly month: number;
}

export interface LayoutUses extends UseCount {
  readonly pattern: string;
  readonly title: string;
  /** One for each of the months. */
  readonly byMonth: readonly UseCount[];
  /** The last day of its last use. */
  readonly last: Day;
}

export interface UsesByMonth {
  /** From the first with a use to the last; only those with a use where that were more than `MOST_MONTHS`. */
  readonly months: readonly YearMonth[];
  /** The most used first; of equal ones the one whose uses last longer, then by slug. */
  readonly layouts: readonly LayoutUses[];
  readonly pages: UseCount;
  /** The last day of the last set-up; none where there is no set-up. */
  readonly end?: Day;
}

/** Three years: a table of more is no table any more. */
const MOST_MONTHS = 36;

/** Counts. A use without days of its own is of its block's days, else of the whole set-up's. */
export function usesByMonth(counted: readonly CountedSetup[]): UsesByMonth {
  const uses = counted.flatMap(usesIn);
  const months = monthsOf(uses);
  const end = latest(counted.map(({ setup }) => setup.recipe.dates.to));
  const patterns = [...new Set(uses.map(({ pattern }) => pattern))];
  const layouts = patterns.map((pattern): LayoutUses => {
    const own = uses.filter((use) => use.pattern === pattern);
    return {
      pattern,
      title: own.at(-1)?.title ?? pattern,
      ...countOf(own),
      byMonth: months.map((month) => countOf(own.filter((use) => monthOf(use.from) === month))),
      last: latest(own.map(({ to }) => to)) ?? dayOf({ year: 1, month: 1, day: 1 }),
    };
  });
  return {
    months: months.map((month) => ({ year: Math.floor(month / 12), month: (month % 12) + 1 })),
    layouts: layouts.toSorted(byUse),
    pages: {
      planned: sum(uses.map(({ pages }) => pages)),
      drawn: sum(uses.map(({ drawnPages }) => drawnPages)),
    },
    ...(end !== undefined && { end }),
  };
}

/** Those that were not used in the last three months before the end of the last set-up, the longest unused first. */
export function unusedLately({ layouts, end }: UsesByMonth): readonly LayoutUses[] {
  if (end === undefined) return [];
  const since = monthsBefore(end, 3);
  return layouts.filter(({ last }) => last <= since).toSorted((a, b) => a.last - b.last);
}

/** The same day so many months before; the last of the month where that has no such day. */
export function monthsBefore(of: Day, count: number): Day {
  const { year, month, day } = civilDate(of);
  const months = year * 12 + month - 1 - count;
  const [before, ofYear] = [Math.floor(months / 12), (months % 12) + 1];
  return dayOf({ year: before, month: ofYear, day: Math.min(day, daysInMonth(before, ofYear)) });
}

interface Use {
  readonly pattern: string;
  readonly title: string;
  readonly from: Day;
  readonly to: Day;
  readonly pages: number;
  readonly drawnPages: number;
}

/** Each page or spread; the second page of a spread follows its first. */
function usesIn({ setup, drawn }: CountedSetup): readonly Use[] {
  const { dates } = setup.recipe;
  return setup.pages.flatMap((page, index): readonly Use[] => {
    if (!page.drawn || !beginsPlan(page, setup)) return [];
    const { pattern, plan } = page.drawn;
    const { from, to } = daysOfPage(page) ?? dates;
    const count = setup.plans[plan]?.pages.length ?? 1;
    const own = setup.pages.slice(index, index + count);
    const drawnPages = own.filter(({ number }) => drawn.has(number)).length;
    const title = setup.titles.get(pattern) ?? pattern;
    return [{ pattern, title, from, to, pages: count, drawnPages }];
  });
}

function countOf(uses: readonly Use[]): UseCount {
  const drawn = uses.filter(({ pages, drawnPages }) => drawnPages === pages).length;
  return { planned: uses.length, drawn };
}

/** Months since January of year 0. */
function monthOf(day: Day): number {
  const { year, month } = civilDate(day);
  return year * 12 + month - 1;
}

function monthsOf(uses: readonly Use[]): readonly number[] {
  const used = [...new Set(uses.map(({ from }) => monthOf(from)))].toSorted((a, b) => a - b);
  const [first = 0, last = -1] = [used[0], used.at(-1)];
  return last - first < MOST_MONTHS
    ? Array.from({ length: last - first + 1 }, (_, index) => first + index)
    : used;
}

function latest(days: readonly Day[]): Day | undefined {
  return days.toSorted((a, b) => b - a)[0];
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((whole, number) => whole + number, 0);
}

function byUse(a: LayoutUses, b: LayoutUses): number {
  return b.planned - a.planned || b.last - a.last || (a.pattern < b.pattern ? -1 : 1);
}
