/** What is said when somebody looks back on the layouts that they used. */
import { sayCount, sayList } from "./say-count.ts";

interface Count {
  readonly planned: number;
  readonly drawn: number;
}

/** `3 set-ups, March to June 2027: 45 pages planned, 12 of them drawn.` */
export function sayLookedAt(setups: number, pages: Count, months: string): string {
  const over = months === "" ? "" : `, ${months}`;
  const drawn = pages.drawn === 0 ? "none of them ticked as drawn" : `${pages.drawn} of them drawn`;
  return `${sayCount(setups, "set-up")}${over}: ${sayCount(pages.planned, "page")} planned, ${drawn}.`;
}

/** `March to June 2027`, `December 2026 to February 2027`, `March 2027`. */
export function sayMonths(
  first: { readonly name: string; readonly year: number },
  last: { readonly name: string; readonly year: number },
): string {
  const end = `${last.name} ${last.year}`;
  if (first.name === last.name && first.year === last.year) return end;
  return `${first.name}${first.year === last.year ? "" : ` ${first.year}`} to ${end}`;
}

/** `Seed list: 5 uses, 2 drawn`. */
export function sayLayoutUses(title: string, { planned, drawn }: Count): string {
  return `${title}: ${sayCount(planned, "use")}, ${drawn} drawn`;
}

/** Each layout with its uses, for those who do not see the chart. */
export function sayUsesChart(layouts: readonly ({ readonly title: string } & Count)[]): string {
  return `${layouts.map((layout) => sayLayoutUses(layout.title, layout)).join("; ")}.`;
}

/** What of the uses the chart leaves out, being small. */
export function sayChartLimits(most: {
  readonly months?: number;
  readonly layouts?: number;
}): string {
  const parts = [
    ...(most.months === undefined ? [] : [`the last ${sayCount(most.months, "month")}`]),
    ...(most.layouts === undefined ? [] : [`the ${most.layouts} layouts used most`]),
  ];
  return parts.length === 0 ? "" : `The chart has ${sayList(parts, "and")}; the table has all.`;
}

/** Layouts that were used before and are no longer; `end` is the last day of the last set-up. */
export function sayUnused(
  layouts: readonly { readonly title: string; readonly last: string }[],
  end: string,
): string {
  if (layouts.length === 0) return `Every layout was used in the three months up to ${end}.`;
  const named = layouts.map(({ title, last }) => `${title} (last until ${last})`);
  return `Not used in the three months up to ${end}: ${sayList(named, "and")}.`;
}

/** Set-ups that could not be counted. */
export function sayUncounted(titles: readonly string[]): string {
  if (titles.length === 0) return "";
  const named = sayList(
    titles.map((title) => `“${title}”`),
    "and",
  );
  return `Not counted, since something in it is wrong or missing: ${named}.`;
}

/** How far the counting is. */
export function sayCountingUses(done: number, all: number): string {
  return `Set-up ${done + 1} of ${all} is being counted.`;
}
