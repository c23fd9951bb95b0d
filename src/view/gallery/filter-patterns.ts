/** Which patterns are as the reader wishes, and in which order. */
import { type GalleryFacts, type GalleryPattern, STATE_LETTERS } from "./gallery-facts.ts";
import {
  activeFilters,
  type Filter,
  type GalleryQuery,
  LINE_RANGES,
  without,
} from "./gallery-query.ts";

/** What is known of a pattern on the notebook that is shown. */
interface OnNotebook {
  readonly state: string;
  readonly pages: string;
  readonly lines: number;
}

/** What is sieved. */
export interface PatternFilter {
  readonly facts: GalleryFacts;
  /** The slug of a notebook of the book. */
  readonly notebook: string;
  /** Places of patterns that a search has found, the best first; undefined where nothing is searched for. */
  readonly found: readonly number[] | undefined;
}

/** The patterns to show, in order; a search without another order puts the best first. */
export function filterPatterns(
  patternFilter: PatternFilter,
  state: GalleryQuery,
): readonly GalleryPattern[] {
  const { patterns, notebooks } = patternFilter.facts;
  const index = notebooks.indexOf(patternFilter.notebook);
  const searched = patternFilter.found?.flatMap((place) => patterns[place] ?? []) ?? patterns;
  const kept = searched.filter((pattern) => isWished(pattern, onNotebook(pattern, index), state));
  if (state.sort === "title") return [...kept].sort(byTitle);
  if (state.sort === "lines")
    return [...kept].sort((a, b) => effort(a, index) - effort(b, index) || byTitle(a, b));
  return kept;
}

/** A wish without which there would be something to show, and how much. */
export interface Relaxation {
  readonly filter: Filter;
  readonly count: number;
}

/** The wishes that, taken back one at a time, leave something to show; the one with the most first. */
export function relaxations(
  patternFilter: PatternFilter,
  state: GalleryQuery,
): readonly Relaxation[] {
  return activeFilters(state)
    .map((filter) => {
      const found = filter === "query" ? undefined : patternFilter.found;
      return {
        filter,
        count: filterPatterns({ ...patternFilter, found }, without(state, filter)).length,
      };
    })
    .filter(({ count }) => count > 0)
    .sort((a, b) => b.count - a.count);
}

function onNotebook({ states, pages, lines }: GalleryPattern, index: number): OnNotebook {
  return { state: states[index] ?? "", pages: pages[index] ?? "", lines: lines[index] ?? 0 };
}

function isWished(pattern: GalleryPattern, on: OnNotebook, wished: GalleryQuery): boolean {
  const { purposes, tag, pages, fit } = wished;
  return (
    (purposes.length === 0 || purposes.includes(pattern.purpose)) &&
    (tag === "" || pattern.tags.includes(tag)) &&
    (pages === "" || on.pages === pages) &&
    (fit === "" || isFitting(on.state, fit)) &&
    isInRange(on.lines, wished.lines)
  );
}

function isFitting(state: string, fit: "fits" | "even"): boolean {
  return fit === "even" ? state === STATE_LETTERS.even : state !== STATE_LETTERS.misfit;
}

function isInRange(lines: number, name: GalleryQuery["lines"]): boolean {
  const range = LINE_RANGES.find((each) => each.name === name);
  return !range || (lines >= range.least && lines <= range.most);
}

/** Lines to draw; what does not fit comes last. */
function effort(pattern: GalleryPattern, index: number): number {
  return pattern.lines[index] || Number.MAX_SAFE_INTEGER;
}

function byTitle(a: GalleryPattern, b: GalleryPattern): number {
  return a.title.localeCompare(b.title, "en");
}
