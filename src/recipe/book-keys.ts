/** The keys of `book.yaml`: for each what it takes and what it means. */
import type { Grammar } from "../source/schema/keys.ts";
import { LIMITS } from "./recipe-keys.ts";

/** A printer that is off by more than a tenth does not print at actual size. */
export const STRETCH = { min: 0.9, max: 1.1 } as const;

export const BOOK_KEYS = {
  book: {
    title: { expected: { kind: "text", longest: LIMITS.text }, meaning: "The book's title." },
    notebooks: {
      expected: { kind: "form", form: "chosen-notebooks" },
      meaning: "Which notebooks the book has, in this order. Left out: all, by name.",
    },
    patterns: {
      expected: { kind: "form", form: "chosen-patterns" },
      meaning: "Which patterns the book has. Left out: all.",
    },
    url: {
      expected: { kind: "form", form: "address" },
      meaning:
        "Where the book will be found, for addresses in feeds and previews. May be left out.",
    },
    printer: {
      expected: { kind: "form", form: "printer", ...STRETCH },
      meaning:
        "Stretches all that is printed, along the short side (x) and the long side (y) of the paper: 100 divided by what a bar of 100 mm measures.",
    },
  },
} as const satisfies Grammar;
