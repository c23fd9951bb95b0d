/** What the gallery says about what it shows: how much it is, and what to do where it is nothing. */

import type { Remedy } from "../../../src/view/gallery/filter-patterns.ts";
import type { GalleryState, Wish } from "../../../src/view/gallery/gallery-query.ts";
import { makeElement } from "../ui/make-element.ts";
import { partOf } from "../ui/parts.ts";
import { sayFound, sayPatterns, sayWish } from "./say-filter.ts";
import type { QueryResult } from "./search-request.ts";

/** How much was found, and what is to be known about the search. */
export function sayResult(
  state: GalleryState,
  query: QueryResult,
  { count, all }: { readonly count: number; readonly all: number },
): string {
  const found = sayFound(count, all);
  if (query.kind === "failed")
    return `${found}; the search could not be loaded, and its words are left aside`;
  if (query.kind === "found" && query.isNear && count > 0)
    return `${found}, written nearly like ${sayWish(state, "query")}`;
  return found;
}

/** Shows words where they are read out; words that stand there already are not read again. */
export function showWords(page: Document, words: string): void {
  const place = partOf(page, "found");
  if (place.textContent !== words) place.textContent = words;
}

export interface Remedies {
  readonly state: GalleryState;
  readonly remedies: readonly Remedy[];
  /** Told of the wish that the reader gives up. */
  readonly takeBack: (wish: Wish) => void;
}

/** Shows each remedy as a button, or nothing where there is no need of any. */
export function showRemedies(
  page: Document,
  isNeeded: boolean,
  { state, remedies, takeBack }: Remedies,
): void {
  partOf(page, "nothing").hidden = !isNeeded;
  partOf(page, "remedies").replaceChildren(
    ...remedies.map(({ wish, count }) => {
      const words = `Without ${sayWish(state, wish)}`;
      const button = makeElement("button", { type: "button" }, words);
      button.addEventListener("click", () => takeBack(wish));
      return makeElement("li", {}, button, ` ${sayPatterns(count)}`);
    }),
  );
}
