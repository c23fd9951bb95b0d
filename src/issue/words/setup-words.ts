/** What a set-up says of its pages, on the screen and on paper. */
import type { Misfit } from "../facts/misfit.ts";
import { harmless } from "./harmless-text.ts";
import type { Said } from "./said.ts";
import { asSentence, nounFor, sayCount, sayList } from "./say-count.ts";
import { sayMisfit } from "./say-misfit.ts";

interface NumberedPage {
  readonly number: number;
  readonly side: "left" | "right";
}

/** `Page 44, left: Week in two rows`; of a page without a pattern, that it stays free. */
export function saySetupPage({ number, side }: NumberedPage, title?: string): string {
  return `Page ${number}, ${side}: ${title ?? "stays free"}`;
}

/** On which side the first page of a file lies. */
export function sayFirstSide({ number, side }: NumberedPage): string {
  return `the first page is ${number} and lies at the ${side}`;
}

/** Of the pages that come before spreads: how many stay bare, and how many are filled. */
export function sayFreePages(free: number, filled: number): string {
  const bare = free === 1 ? "1 page stays free" : `${sayCount(free, "page")} stay free`;
  const put = filled === 1 ? "1 page is filled" : `${sayCount(filled, "page")} are filled`;
  const why = "because a spread begins on an even page.";
  if (free === 0 && filled === 0) return "No page stays free.";
  if (filled === 0) return `${bare}, ${why}`;
  return free === 0 ? `${put}, ${why}` : `${bare} and ${put}, ${why}`;
}

/** What another order of the entries would save. */
export function saySavingOrder(titles: readonly string[], free: number): string {
  const stays =
    free === 0
      ? "no page stays free"
      : `only ${sayCount(free, "page")} ${free === 1 ? "stays" : "stay"} free`;
  return `In this order ${stays}: ${titles.join(" · ")}.`;
}

/** Said of a notebook bound at the top. */
export const TOP_BOUND =
  "This notebook is bound at the top, so the two halves of a spread do not face each other.";

/** What an entry takes: `5 pages, 46–50`; with others among them, `5 pages between 46 and 54`. */
export function sayEntryPages(numbers: readonly number[]): string {
  const [first = 0, last = 0] = [numbers[0], numbers.at(-1)];
  const count = sayCount(numbers.length, "page");
  if (numbers.length < 2) return numbers.length === 0 ? "No page" : `${count}, ${first}`;
  return last - first === numbers.length - 1
    ? `${count}, ${first}–${last}`
    : `${count} between ${first} and ${last}`;
}

/** Pages before spreads, where they stay free or are filled. */
export function sayFreeBefore(numbers: readonly number[], isFilled: boolean): string {
  const pages = `${nounFor(numbers.length, "Page")} ${sayList(numbers.map(String), "and")}`;
  const verb = isFilled
    ? numbers.length === 1
      ? "is filled"
      : "are filled"
    : numbers.length === 1
      ? "stays free"
      : "stay free";
  return `${pages} ${verb}: a spread begins on an even page.`;
}

/** For which days another layout than the first of a pattern is taken, and why; none are named where all take it. */
export function sayOtherLayout(days: readonly string[], used: number, misfit: Misfit): string {
  const taken = `layout ${used + 1} of the recipe is taken`;
  const head =
    days.length === 0 ? asSentence(taken) : `${asSentence(sayList(days, "and"))}: ${taken}`;
  return `${head}. ${sayMisfit(misfit)}`;
}

/** What takes no page, for which days, and why. */
export function sayNoPage(days: readonly string[], why: string): string {
  const head = days.length === 0 ? "Takes no page" : `${asSentence(sayList(days, "and"))}: no page`;
  return `${head}. ${why}`;
}

/** A pattern that a set-up names and nobody has here, and what can be done. */
export function sayUnknownLayout(slug: string): Said {
  return {
    sentence: `Neither the book nor this device has a layout “${harmless(slug)}”.`,
    hint: "Open its file under “Kept on this device”, or take it out here.",
  };
}

/** Said of a block with nothing in it. */
export const EMPTY_BLOCK = "Nothing in it yet: choose it below the search, then add a layout.";
