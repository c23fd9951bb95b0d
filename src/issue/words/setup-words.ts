/** What a set-up says of its pages, on the screen and on paper. */
import { sayCount } from "./say-count.ts";

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
  const stays = free === 0 ? "no page stays free" : `only ${free} would be left over`;
  return `In this order ${stays}: ${titles.join(" · ")}.`;
}

/** Said of a notebook bound at the top. */
export const TOP_BOUND =
  "This notebook is bound at the top, so the two halves of a spread do not face each other.";
