/** The gallery as it is seen: the cards that are as wished, and what is said about them. */
import { filterPatterns, relaxations } from "../../../src/view/gallery/filter-patterns.ts";
import type { GalleryFacts } from "../../../src/view/gallery/gallery-facts.ts";
import {
  activeFilters,
  EVERYTHING,
  type Filter,
  type GalleryQuery,
  MINE,
} from "../../../src/view/gallery/gallery-query.ts";
import type { Query, QueryResult } from "../app/search-request.ts";
import { partOf } from "../ui/parts.ts";
import type { Facts } from "./open-facts.ts";
import { type OwnCardsTools, openMine } from "./own-notebook.ts";
import type { PatternList } from "./pattern-list.ts";
import { sayFound } from "./say-filter.ts";
import { sayResult, showMeant, showRelaxations, showWords } from "./show-summary.ts";
import type { ShowYours } from "./yours.ts";

export interface ViewTools {
  /** Brought when what is asked for needs them. */
  readonly facts: Facts;
  readonly list: PatternList;
  readonly own: OwnCardsTools | undefined;
  readonly yours: ShowYours;
  readonly query: Query;
  /** Told of a wish that the reader gives up. */
  readonly takeBack: (filter: Filter) => void;
}

/** Shows what is asked for on a notebook; while something for it is on its way, what was shown before stays. */
export function openView(
  page: Document,
  tools: ViewTools,
): (state: GalleryQuery, notebook: string) => void {
  const { facts, list, own } = tools;
  let mine: ReturnType<typeof openMine> | undefined;
  let opened = "";
  const fill = (known: GalleryFacts) => {
    if (!list.fill(known)) return;
    opened = "";
    mine = own && openMine(known, own, list.cards());
  };
  return (state, notebook) => {
    const known = facts.now();
    if (known) fill(known);
    if (notebook !== opened) list.open(notebook);
    if (notebook !== opened) mine?.show(notebook === MINE);
    opened = notebook;
    if (!known && isOpening(state)) {
      if (notebook === MINE) facts.bring();
      showOpening(page, tools, { state, notebook });
    } else if (!known) {
      facts.bring();
      showWords(page, "Searching");
    } else if (notebook === MINE && !mine?.isKnown() && asksForOutcomes(state)) {
      showWords(page, "Working it out for your notebook");
    } else {
      showFound(page, tools, { state, notebook, facts: mine?.facts() ?? known });
    }
  };
}

interface Asked {
  readonly state: GalleryQuery;
  readonly notebook: string;
}

/** Is it what the page was written with? */
function isOpening(state: GalleryQuery): boolean {
  return activeFilters(state).length === 0 && state.sort === EVERYTHING.sort;
}

function showOpening(page: Document, { list, yours }: ViewTools, asked: Asked): void {
  const found = yours({ ...asked, isNear: false });
  page.documentElement.classList.remove("sifting");
  partOf(page, "show-all").hidden = true;
  showMeant(page, { kind: "none" });
  showWords(page, sayFound(list.count + found.count, list.count + found.all));
}

function showFound(
  page: Document,
  { list, yours, query, takeBack }: ViewTools,
  { state, notebook, facts }: Asked & { readonly facts: GalleryFacts },
): void {
  partOf(page, "show-all").hidden = activeFilters(state).length === 0;
  const asked = query.ask(state.query);
  if (asked.kind === "waiting") {
    showWords(page, "Searching");
    return;
  }
  const isNear = asked.kind === "found" && asked.isNear;
  const found = yours({ state, notebook, isNear });
  const store: QueryResult = isNear && found.isExact ? NONE_OF_BOOK : asked;
  const places = store.kind === "found" ? store.places : undefined;
  const patternFilter = { facts, notebook, found: places };
  const patterns = filterPatterns(patternFilter, state);
  page.documentElement.classList.remove("sifting");
  list.show(patterns, state.sort === "purpose" && store.kind !== "found");
  const count = patterns.length + found.count;
  showMeant(page, store);
  showWords(page, sayResult(state, store, { count, all: facts.patterns.length + found.all }));
  const relaxed = count === 0 ? relaxations(patternFilter, state) : [];
  showRelaxations(page, count === 0, { state, relaxed, takeBack });
}

/** What is written nearly so is not shown beside what is written so. */
const NONE_OF_BOOK: QueryResult = { kind: "found", places: [], isNear: false };

/** Can it be answered only when each pattern was worked out? */
function asksForOutcomes({ fit, pages, lines, sort }: GalleryQuery): boolean {
  return fit !== "" || pages !== "" || lines !== "" || sort === "lines";
}
