/** What a set-up adds to the notebook's contents, and how often it draws each pattern. */
import { type DayRange, rangeOver } from "../calendar/span.ts";
import { beginsPlan, type Setup } from "./setup.ts";

/** A run of pages of one pattern, by their numbers. */
export interface ContentsLine {
  readonly pattern: string;
  readonly title: string;
  /** From the first day of its pages to the last. */
  readonly dates?: DayRange;
  readonly from: number;
  readonly to: number;
}

/** Runs go on from one entry to the next; a free page ends one. */
export function setupContents({ pages, titles }: Setup): readonly ContentsLine[] {
  const lines: ContentsLine[] = [];
  for (const { number, drawn } of pages) {
    if (!drawn) continue;
    const { pattern, dates } = drawn;
    const last = lines.at(-1);
    if (last?.pattern === pattern && last.to === number - 1) {
      lines[lines.length - 1] = { ...last, to: number, ...joined(last.dates, dates) };
    } else {
      const title = titles.get(pattern) ?? pattern;
      lines.push({ pattern, title, ...(dates && { dates }), from: number, to: number });
    }
  }
  return lines;
}

function joined(a: DayRange | undefined, b: DayRange | undefined): { readonly dates?: DayRange } {
  const [one, other] = [a ?? b, b ?? a];
  if (!one || !other) return {};
  return { dates: rangeOver(one, other) };
}

/** How many pages or spreads there are of each pattern, in the order of their first ones. */
export function setupUses(setup: Setup): ReadonlyMap<string, number> {
  const uses = new Map<string, number>();
  for (const page of setup.pages) {
    if (!page.drawn || !beginsPlan(page, setup)) continue;
    const { pattern } = page.drawn;
    uses.set(pattern, (uses.get(pattern) ?? 0) + 1);
  }
  return uses;
}
