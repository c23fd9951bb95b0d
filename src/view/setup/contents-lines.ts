/** The lines to copy into a notebook's own contents: a block is one line for each unit that it is repeated for. */

import { type DayRange, rangeOver } from "../../calendar/span.ts";
import type { WeekRule } from "../../calendar/week.ts";
import { asSentence } from "../../issue/words/say-count.ts";
import type { Recipe } from "../../recipe/recipe.ts";
import type { Setup, SetupPage } from "../../setup/setup.ts";
import { rangeTitle, spanTitle } from "../pattern/span-words.ts";
import type { ContentsView } from "./setup-view.ts";

interface Line {
  /** What pages of one line have in common. */
  readonly key: string;
  readonly title: string;
  readonly dates?: DayRange;
  readonly from: number;
  readonly to: number;
}

/** Lines in the order of their pages. A page that was filled among those of a unit belongs to its line. */
export function contentsLines(
  setup: Setup,
  recipe: (slug: string) => Recipe,
  rule: WeekRule,
): readonly ContentsView[] {
  const lines: Line[] = [];
  for (const [index, page] of setup.pages.entries()) {
    const line = lineOf(page, recipe, rule);
    if (!line || isWithinUnit(setup.pages, index)) continue;
    const last = lines.at(-1);
    if (last?.key === line.key && isJoined(last, line)) {
      lines[lines.length - 1] = { ...last, to: line.to, ...bothDates(last, line) };
    } else lines.push(line);
  }
  return lines.map(({ title, dates, from, to }) => ({
    title: dates ? `${title}, ${rangeTitle(dates, rule)}` : title,
    pages: from === to ? `${from}` : `${from}–${to}`,
  }));
}

function lineOf(
  { number, drawn }: SetupPage,
  recipe: (slug: string) => Recipe,
  rule: WeekRule,
): Line | undefined {
  if (!drawn) return undefined;
  const { pattern, dates, unit, entry } = drawn;
  const place = { from: number, to: number };
  if (unit) {
    return { key: `${entry} ${unit.from}`, title: asSentence(spanTitle(unit, rule)), ...place };
  }
  return { key: pattern, title: recipe(pattern).title, ...(dates && { dates }), ...place };
}

/** Is it a page that was filled, with pages of one unit of a block on both sides of it? */
function isWithinUnit(pages: readonly SetupPage[], index: number): boolean {
  const [before, page, after] = [pages[index - 1], pages[index], pages[index + 1]];
  if (page?.drawn?.entry !== undefined) return false;
  const [one, other] = [before?.drawn, after?.drawn];
  return (
    one?.unit !== undefined && one.entry === other?.entry && one.unit.from === other?.unit?.from
  );
}

/** Pages of a unit, whose key has a space in it, belong together over a free one between them. */
function isJoined(last: Line, next: Line): boolean {
  return last.to === next.from - 1 || last.key.includes(" ");
}

function bothDates(a: Line, b: Line): Pick<Line, "dates"> {
  if (!a.dates || !b.dates) return {};
  return { dates: rangeOver(a.dates, b.dates) };
}
