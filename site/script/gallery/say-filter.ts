/** The reader's wishes and what came of them, in words. */
import type { Filter, GalleryQuery } from "../../../src/view/gallery/gallery-query.ts";
import { PURPOSE_WORDS } from "../../../src/view/pattern/purpose-words.ts";

const LINE_WORDS = {
  few: "up to 15 lines",
  some: "16 to 30 lines",
  many: "more than 30 lines",
} as const;
const FIT_WORDS = { fits: "fits", even: "leaves nothing over" } as const;
const PAGE_WORDS = { "1": "one page", "2": "two pages" } as const;

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
      return state.fit && FIT_WORDS[state.fit];
    case "pages":
      return state.pages && PAGE_WORDS[state.pages];
    case "lines":
      return state.lines && LINE_WORDS[state.lines];
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
