/** The gallery as it is seen: the cards that are as wished, and what is said about them. */

import { remediesFor, sievePatterns } from "../../../src/view/gallery/filter-patterns.ts";
import type { GalleryFacts } from "../../../src/view/gallery/gallery-facts.ts";
import { type GalleryState, type Wish, wishesOf } from "../../../src/view/gallery/gallery-query.ts";
import { partOf } from "../ui/parts.ts";
import { openPatternList } from "./pattern-list.ts";
import type { Query } from "./search-request.ts";
import { sayResult, showRemedies, showWords } from "./show-summary.ts";

export interface ViewTools {
  readonly facts: GalleryFacts;
  readonly query: Query;
  /** Told of a wish that the reader gives up. */
  readonly takeBack: (wish: Wish) => void;
}

/** Shows what is asked for on a notebook; while a search is on its way, what was shown before stays. */
export function openView(
  page: Document,
  { facts, query, takeBack }: ViewTools,
): (state: GalleryState, notebook: string) => void {
  const list = openPatternList(page);
  let opened = "";
  return (state, notebook) => {
    if (notebook !== opened) list.open(notebook, facts.notebooks.indexOf(notebook), facts.patterns);
    opened = notebook;
    partOf(page, "show-all").hidden = wishesOf(state).length === 0;
    const asked = query.ask(state.query);
    if (asked.kind === "waiting") {
      showWords(page, "Searching");
      return;
    }
    const sieve = { facts, notebook, found: asked.kind === "found" ? asked.places : undefined };
    const patterns = sievePatterns(sieve, state);
    page.documentElement.classList.remove("sifting");
    list.show(patterns, state.sort === "purpose" && asked.kind !== "found");
    showWords(
      page,
      sayResult(state, asked, { count: patterns.length, all: facts.patterns.length }),
    );
    const remedies = patterns.length > 0 ? [] : remediesFor(sieve, state);
    showRemedies(page, patterns.length === 0, { state, remedies, takeBack });
  };
}
