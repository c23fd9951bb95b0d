/** What the gallery's filters and orders are called: short in its controls, and as they are said where one is taken back. */
import {
  type FITS,
  LINE_RANGES,
  type LineRange,
  type PAGE_COUNTS,
  type SORTS,
} from "./gallery-query.ts";

export interface FilterWords {
  readonly label: string;
  readonly said: string;
}

type WordsOf<Names extends readonly string[]> = Readonly<Record<Names[number], FilterWords>>;

export const FIT_WORDS: WordsOf<typeof FITS> = {
  fits: { label: "Fits", said: "fits" },
  even: { label: "Nothing left over", said: "leaves nothing over" },
};

export const PAGE_WORDS: WordsOf<typeof PAGE_COUNTS> = {
  "1": { label: "One", said: "one page" },
  "2": { label: "Two", said: "two pages" },
};

export const SORT_WORDS: Readonly<Record<(typeof SORTS)[number], string>> = {
  purpose: "purpose",
  title: "title",
  lines: "fewest lines first",
};

/** The words of a range of strokes. */
export function lineWords(name: LineRange): FilterWords {
  const { least = 0, most = 0 } = LINE_RANGES.find((range) => range.name === name) ?? {};
  if (most === Number.POSITIVE_INFINITY)
    return { label: "More", said: `more than ${least - 1} lines` };
  if (least <= 1) return { label: `Up to ${most}`, said: `up to ${most} lines` };
  return { label: `${least} to ${most}`, said: `${least} to ${most} lines` };
}
