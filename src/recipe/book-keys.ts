/** The keys of `book.yaml`: for each what it takes and what it means. */
import type { Grammar } from "../written/keys.ts";
import { LIMITS } from "./recipe-keys.ts";

export const BOOK_KEYS = {
  book: {
    title: { wanted: { kind: "text", longest: LIMITS.text }, meaning: "The book's title." },
    notebooks: {
      wanted: { kind: "form", form: "chosen-slugs" },
      meaning: "Which notebooks the book has, in this order. Left out: all, by name.",
    },
    patterns: {
      wanted: { kind: "form", form: "chosen-slugs" },
      meaning: "Which patterns the book has. Left out: all.",
    },
    url: {
      wanted: { kind: "form", form: "address" },
      meaning:
        "Where the book will be found, for addresses in feeds and previews. May be left out.",
    },
  },
} as const satisfies Grammar;
