/** What each entry of a set-up comes to on a notebook: its pages, other layouts that are taken, and what finds no room. */
import type { DayRange } from "../../calendar/span.ts";
import type { WeekRule } from "../../calendar/week.ts";
import { saySetupLeftOut } from "../../issue/words/say-setup-left-out.ts";
import {
  sayEntryPages,
  sayFreeBefore,
  sayNoPage,
  sayOtherLayout,
} from "../../issue/words/setup-words.ts";
import type { SetupEntry } from "../../recipe/setup-recipe.ts";
import { daysOfPage, type Setup, type SetupPage } from "../../setup/setup.ts";
import { rangeTitle } from "../pattern/span-words.ts";
import { type EntryPath, entryAt } from "./edit-setup.ts";

export interface EntryWords {
  /** Such as `5 pages, 46–50`. */
  readonly pages: string;
  /** What there is to know of them, a sentence or two each. */
  readonly notes: readonly string[];
}

/** The words for the entry at a place; those of a block are of all that is in it. */
export function entryWords(setup: Setup, path: EntryPath, rule: WeekRule): EntryWords {
  const entry = entryAt(setup.recipe.pages, path);
  const own = setup.pages.filter((page) => isWithin(page, path));
  const pages = sayEntryPages(own.map(({ number }) => number));
  if (!entry || entry.kind === "each") return { pages, notes: [] };
  return {
    pages,
    notes: [
      ...freeNotes(setup, own),
      ...otherLayouts(setup, own, rule),
      ...noPages(setup, entry, rule),
    ],
  };
}

function isWithin({ drawn }: SetupPage, path: EntryPath): boolean {
  return drawn?.path === path || drawn?.path?.startsWith(`${path}.`) === true;
}

/** The pages before its spreads that come from no entry. */
function freeNotes({ pages, recipe }: Setup, own: readonly SetupPage[]): readonly string[] {
  const before = own.flatMap(({ number }) => {
    const page = pages[number - recipe.first - 1];
    return page && page.drawn?.path === undefined ? [page] : [];
  });
  return [false, true].flatMap((isFilled) => {
    const numbers = before.filter(({ drawn }) => (drawn !== undefined) === isFilled);
    return numbers.length === 0
      ? []
      : [
          sayFreeBefore(
            numbers.map(({ number }) => number),
            isFilled,
          ),
        ];
  });
}

/** Pages with one reason are told together; no days are named where all pages have it. */
function otherLayouts(setup: Setup, own: readonly SetupPage[], rule: WeekRule): readonly string[] {
  const told = new Map<
    string,
    { readonly words: (days: readonly string[]) => string; days: string[]; count: number }
  >();
  for (const page of own) {
    const plan = setup.plans[page.drawn?.plan ?? -1];
    if (!plan?.passedOver) continue;
    const { used, passedOver } = plan;
    const words = (days: readonly string[]) => sayOtherLayout(days, used, passedOver);
    const one = told.get(words([])) ?? { words, days: [], count: 0 };
    const days = daysWords(daysOfPage(page), rule);
    if (days !== undefined && !one.days.includes(days)) one.days.push(days);
    told.set(words([]), { ...one, count: one.count + 1 });
  }
  return [...told.values()].map(({ words, days, count }) =>
    words(count === own.length && own.length > 1 ? [] : shortened(days)),
  );
}

function noPages(
  { leftOut }: Setup,
  entry: Extract<SetupEntry, { kind: "pattern" }>,
  rule: WeekRule,
): readonly string[] {
  const told = new Map<string, string[]>();
  for (const { pattern, dates, why } of leftOut) {
    if (pattern !== entry.pattern) continue;
    const words = saySetupLeftOut(why);
    const days = daysWords(dates, rule);
    told.set(words, [...(told.get(words) ?? []), ...(days === undefined ? [] : [days])]);
  }
  return [...told].map(([why, days]) => sayNoPage(shortened(days), why));
}

function daysWords(days: DayRange | undefined, rule: WeekRule): string | undefined {
  return days && rangeTitle(days, rule);
}

const MOST_NAMED = 4;

/** A year of days would fill the page. */
function shortened(days: readonly string[]): readonly string[] {
  if (days.length <= MOST_NAMED + 1) return days;
  return [...days.slice(0, MOST_NAMED), `${days.length - MOST_NAMED} more`];
}
