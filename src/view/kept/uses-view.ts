/** Looking back on the layouts that were used: the table, the chart, the words, and a strip of what is used most. */
import { ENGLISH } from "../../calendar/english.ts";
import { monthName } from "../../calendar/names.ts";
import type { UsesChart } from "../../draw/figure/uses-scene.ts";
import { sayChartLimits, sayLookedAt, sayMonths, sayUnused } from "../../issue/words/uses-words.ts";
import { STRIP_BOUNDS } from "../../recipe/strip-bounds.ts";
import { patternEntry } from "../../recipe/strip-recipe.ts";
import { type UsesByMonth, unusedLately, type YearMonth } from "../../setup/uses-by-month.ts";
import type { PackedLayout } from "../address/carried-layouts.ts";
import { writeStripAddress } from "../address/strip-address.ts";
import { NO_STRIP } from "../fields/strip-fields.ts";
import { dayTitle } from "../pattern/span-words.ts";

export interface UsesRow {
  readonly pattern: string;
  readonly title: string;
  /** `2`, and `2 (1 drawn)` where some are; "" for none. */
  readonly cells: readonly string[];
  readonly planned: number;
  readonly drawn: number;
}

export interface UsesView {
  readonly words: string;
  /** `Mar 2027`. */
  readonly months: readonly string[];
  readonly rows: readonly UsesRow[];
  readonly chart: UsesChart;
  /** What the chart leaves to the table; "" for nothing. */
  readonly chartWords: string;
  readonly unused: string;
  /** The address's part from # on that puts them on the strip, with how often each is used. */
  readonly stripHash: string;
}

/** More are no chart that one sees at a glance: the table has all. */
const MOST_ROWS = 10;
const MOST_MONTHS = 24;

/** Nothing where nothing is used. `own` are the layouts that the strip may have to carry. */
export function usesView(
  uses: UsesByMonth,
  setups: number,
  own: readonly PackedLayout[],
): UsesView | undefined {
  const { months, layouts, pages, end } = uses;
  const [first, last] = [months[0], months.at(-1)];
  if (!first || !last || end === undefined) return undefined;
  const unused = unusedLately(uses).map((one) => ({ title: one.title, last: dayTitle(one.last) }));
  return {
    words: sayLookedAt(setups, pages, sayMonths(named(first), named(last))),
    months: months.map(({ year, month }) => `${shortName(month)} ${year}`),
    rows: layouts.map(({ pattern, title, planned, drawn, byMonth }) => ({
      ...{ pattern, title, planned, drawn },
      cells: byMonth.map((one) =>
        one.planned === 0 ? "" : `${one.planned}${one.drawn === 0 ? "" : ` (${one.drawn} drawn)`}`,
      ),
    })),
    ...chartOf(uses),
    unused: sayUnused(unused, dayTitle(end)),
    stripHash: stripHash(uses, own),
  };
}

/** The last two years, and what was used most in them. */
function chartOf({ months, layouts }: UsesByMonth): Pick<UsesView, "chart" | "chartWords"> {
  const sumOf = (counts: readonly number[]) => counts.reduce((sum, count) => sum + count, 0);
  const shown = layouts
    .map(({ title, byMonth }) => {
      const last = byMonth.slice(-MOST_MONTHS);
      const planned = sumOf(last.map((one) => one.planned));
      return { title, byMonth: last, planned, drawn: sumOf(last.map((one) => one.drawn)) };
    })
    .filter(({ planned }) => planned > 0);
  const limits = {
    ...(months.length > MOST_MONTHS && { months: MOST_MONTHS }),
    ...(shown.length > MOST_ROWS && { layouts: MOST_ROWS }),
  };
  return {
    chartWords: sayChartLimits(limits),
    chart: {
      id: "uses",
      title: "Uses by month",
      months: months.slice(-MOST_MONTHS).map(({ year, month }) => ({
        name: shortName(month),
        letter: monthName(ENGLISH, month, { form: "narrow", inDate: false }),
        year,
      })),
      layouts: shown.toSorted((a, b) => b.planned - a.planned).slice(0, MOST_ROWS),
    },
  };
}

/** As many as a strip takes, the most used first. */
function stripHash({ layouts }: UsesByMonth, own: readonly PackedLayout[]): string {
  const entries = layouts.slice(0, STRIP_BOUNDS.patterns).map(({ pattern, planned }) => ({
    ...patternEntry(pattern),
    uses: Math.min(planned, STRIP_BOUNDS.uses.max),
  }));
  return writeStripAddress({ strip: { ...NO_STRIP, across: entries, down: entries }, own });
}

function named({ year, month }: YearMonth) {
  return { year, name: monthName(ENGLISH, month, { form: "wide", inDate: false }) };
}

function shortName(month: number): string {
  return monthName(ENGLISH, month, { form: "abbreviated", inDate: false });
}
