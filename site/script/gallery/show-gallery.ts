/** The gallery as it is seen: the cards that are as wished, and what is said about them. */
import { filterPatterns, relaxations } from "../../../src/view/gallery/filter-patterns.ts";
import type { GalleryFacts } from "../../../src/view/gallery/gallery-facts.ts";
import {
  activeFilters,
  type Filter,
  type GalleryQuery,
  MINE,
} from "../../../src/view/gallery/gallery-query.ts";
import type { Query, QueryResult } from "../app/search-request.ts";
import { partOf } from "../ui/parts.ts";
import { type OwnCardsTools, openMine } from "./own-notebook.ts";
import { openPatternList } from "./pattern-list.ts";
import { sayResult, showRelaxations, showWords } from "./show-summary.ts";
import type { ShowYours } from "./yours.ts";

export interface ViewTools {
  readonly facts: GalleryFacts;
  readonly own: OwnCardsTools | undefined;
  readonly yours: ShowYours;
  readonly query: Query;
  /** Told of a wish that the reader gives up. */
  readonly takeBack: (filter: Filter) => void;
}

/** Shows what is asked for on a notebook; while a search is on its way, what was shown before stays. */
export function openView(
  page: Document,
  { facts: bookFacts, own, yours, query, takeBack }: ViewTools,
): (state: GalleryQuery, notebook: string) => void {
  const list = openPatternList(page, own?.notebook);
  const mine = own && openMine(bookFacts, own, list.cards);
  let opened = "";
  return (state, notebook) => {
    const facts = mine?.facts() ?? bookFacts;
    if (notebook !== opened) list.open(notebook, facts.notebooks.indexOf(notebook), facts.patterns);
    if (notebook !== opened) mine?.show(notebook === MINE);
    opened = notebook;
    if (notebook === MINE && !mine?.isKnown() && asksForOutcomes(state)) {
      showWords(page, "Working it out for your notebook");
      return;
    }
    partOf(page, "show-all").hidden = activeFilters(state).length === 0;
    const asked = query.ask(state.query);
    if (asked.kind === "waiting") {
      showWords(page, "Searching");
      return;
    }
    const isNear = asked.kind === "found" && asked.isNear;
    const found = yours({ state, notebook, isNear });
    const store: QueryResult = isNear && found.isExact ? NONE_OF_BOOK : asked;
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
      sayResult(state, store, {
        count: patterns.length + found.count,
        all: facts.patterns.length + found.all,
      }),
    );
    const isNothing = patterns.length + found.count === 0;
    const relaxed = isNothing ? relaxations(patternFilter, state) : [];
    showRelaxations(page, isNothing, { state, relaxed, takeBack });
  };
}

/** What is written nearly so is not shown beside what is written so. */
const NONE_OF_BOOK: QueryResult = { kind: "found", places: [], isNear: false };

/** Can it be answered only when each pattern was worked out? */
function asksForOutcomes({ fit, pages, lines, sort }: GalleryQuery): boolean {
  return fit !== "" || pages !== "" || lines !== "" || sort === "lines";
}
