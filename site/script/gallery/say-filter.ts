/** The reader's wishes and what came of them, in words. */
import type { Filter, GalleryQuery } from "../../../src/view/gallery/gallery-query.ts";
import { FIT_WORDS, lineWords, PAGE_WORDS } from "../../../src/view/gallery/query-words.ts";
import { PURPOSE_WORDS } from "../../../src/view/pattern/purpose-words.ts";

/** A wish as it is called when it is taken back. */
export function sayFilter(state: GalleryQuery, filter: Filter): string {
  switch (filter) {
    case "query":
      return `“${state.query}”`;
    case "purposes":
      return state.purposes.map((purpose) => PURPOSE_WORDS[purpose].title.toLowerCase()).join(", ");
    case "tag":
      return state.tag;
    case "fit":
      return state.fit && FIT_WORDS[state.fit].said;
    case "pages":
      return state.pages && PAGE_WORDS[state.pages].said;
    case "lines":
      return state.lines && lineWords(state.lines).said;
  }
}

/** How much is shown of how much. */
export function sayFound(count: number, all: number): string {
  if (count === 0) return "No pattern";
  return count === all ? sayPatterns(all) : `${count} of ${sayPatterns(all)}`;
}

/** `1 pattern`, `12 patterns`. */
export function sayPatterns(count: number): string {
  return count === 1 ? "1 pattern" : `${count} patterns`;
}

/** How many strokes of the pen: "" for a pattern that cannot be drawn. */
export function sayLines(count: number): string {
  if (count === 0) return "";
  return count === 1 ? "1 line" : `${count} lines`;
}
