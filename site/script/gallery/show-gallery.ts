/** The gallery as it is seen: the cards that are as wished, and what is said about them. */
import { filterPatterns, relaxations } from "../../../src/view/gallery/filter-patterns.ts";
import type { GalleryFacts } from "../../../src/view/gallery/gallery-facts.ts";
import {
  activeFilters,
  type Filter,
  type GalleryQuery,
} from "../../../src/view/gallery/gallery-query.ts";
import { partOf } from "../ui/parts.ts";
import { openPatternList } from "./pattern-list.ts";
import type { Query } from "./search-request.ts";
import { sayResult, showRelaxations, showWords } from "./show-summary.ts";

export interface ViewTools {
  readonly facts: GalleryFacts;
  readonly query: Query;
  /** Told of a wish that the reader gives up. */
  readonly takeBack: (filter: Filter) => void;
}

/** Shows what is asked for on a notebook; while a search is on its way, what was shown before stays. */
export function openView(
  page: Document,
  { facts, query, takeBack }: ViewTools,
): (state: GalleryQuery, notebook: string) => void {
  const list = openPatternList(page);
  let opened = "";
  return (state, notebook) => {
    if (notebook !== opened) list.open(notebook, facts.notebooks.indexOf(notebook), facts.patterns);
    opened = notebook;
    partOf(page, "show-all").hidden = activeFilters(state).length === 0;
    const store = query.ask(state.query);
    if (store.kind === "waiting") {
      showWords(page, "Searching");
      return;
    }
    const patternFilter = {
      facts,
      notebook,
      found: store.kind === "found" ? store.places : undefined,
    };
    const patterns = filterPatterns(patternFilter, state);
    page.documentElement.classList.remove("sifting");
    list.show(patterns, state.sort === "purpose" && store.kind !== "found");
    showWords(
      page,
      sayResult(state, store, { count: patterns.length, all: facts.patterns.length }),
    );
    const relaxed = patterns.length > 0 ? [] : relaxations(patternFilter, state);
    showRelaxations(page, patterns.length === 0, { state, relaxed, takeBack });
  };
}
