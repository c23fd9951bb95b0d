/** What the gallery says about what it shows: how much it is, and what to do where it is nothing. */
import type { Relaxation } from "../../../src/view/gallery/filter-patterns.ts";
import type { Filter, GalleryQuery } from "../../../src/view/gallery/gallery-query.ts";
import type { QueryResult } from "../app/search-request.ts";
import { makeElement } from "../ui/make-element.ts";
import { partOf } from "../ui/parts.ts";
import { sayFilter, sayFound, sayPatterns } from "./say-filter.ts";

/** How much was found, and what is to be known about the search. */
export function sayResult(
  state: GalleryQuery,
  query: QueryResult,
  { count, all }: { readonly count: number; readonly all: number },
): string {
  const found = sayFound(count, all);
  if (query.kind === "failed")
    return `${found}; the search could not be loaded, and its words are left aside`;
  if (query.kind === "found" && query.meant !== undefined)
    return `Nothing is called ${sayFilter(state, "query")}`;
  return found;
}

/** Offers to search for what was probably meant. */
export function showMeant(page: Document, query: QueryResult): void {
  const button = partOf(page, "meant");
  const meant = query.kind === "found" ? (query.meant ?? "") : "";
  button.hidden = meant === "";
  button.textContent = meant === "" ? "" : `Did you mean “${meant}”?`;
  button.dataset.query = meant;
}

/** Shows words where they are read out; words that stand there already are not read again. */
export function showWords(page: Document, words: string): void {
  const place = partOf(page, "found");
  if (place.textContent !== words) place.textContent = words;
}

export interface Relaxations {
  readonly state: GalleryQuery;
  readonly relaxed: readonly Relaxation[];
  /** Told of the wish that the reader gives up. */
  readonly takeBack: (filter: Filter) => void;
}

/** Shows each remedy as a button, or nothing where there is no need of any. */
export function showRelaxations(
  page: Document,
  isNeeded: boolean,
  { state, relaxed, takeBack }: Relaxations,
): void {
  partOf(page, "nothing").hidden = !isNeeded;
  partOf(page, "remedies").replaceChildren(
    ...relaxed.map(({ filter, count }) => {
      const words = `Without ${sayFilter(state, filter)}`;
      const button = makeElement("button", { type: "button" }, words);
      button.addEventListener("click", () => takeBack(filter));
      return makeElement("li", {}, button, ` ${sayPatterns(count)}`);
    }),
  );
}
