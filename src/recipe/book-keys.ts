/** The keys of `book.yaml`: for each what it takes and what it means. */
import { WEEKDAY_WORDS } from "../calendar/calendar.ts";
import type { Grammar } from "../source/schema/keys.ts";
import { LIMITS, STRETCH } from "./limits.ts";
export const BOOK_KEYS = {
  book: {
    title: { expected: { kind: "text", longest: LIMITS.text }, meaning: "The book's title." },
    notebooks: {
      expected: { kind: "form", form: "chosen-notebooks" },
      meaning: "Which notebooks the book has, in this order. Default: all, by name.",
    },
    patterns: {
      expected: { kind: "form", form: "chosen-patterns" },
      meaning: "Which patterns the book has. Default: all.",
    },
    strips: {
      expected: { kind: "form", form: "chosen-strips" },
      meaning: "Which strips the book has, in this order. Default: all, by name.",
    },
    setups: {
      expected: { kind: "form", form: "chosen-setups" },
      meaning: "Which set-ups the book has, in this order. Default: all, by name.",
    },
    with: {
      expected: { kind: "form", form: "packs", max: LIMITS.packs },
      meaning:
        "Folders inside the content folder that the book builds on: their notebooks, patterns, strips and set-ups are the book's, too. `spanbook/general` names the general layouts that come with Spanbook. Default: none.",
    },
    url: {
      expected: { kind: "form", form: "address" },
      meaning:
        "Where the book will be found, for addresses in feeds and previews. May be left out.",
    },
    calendar: {
      expected: { kind: "form", form: "calendar" },
      meaning:
        "Which day weeks begin with, which of them is week 1, and the language of days and months. Default: weeks as ISO 8601 has them, in English.",
    },
    printer: {
      expected: { kind: "form", form: "printer", ...STRETCH },
      meaning:
        "Stretches all that is printed, along the short side (x) and the long side (y) of the paper: 100 divided by what a bar of 100 mm measures.",
    },
  },
  calendar: {
    region: {
      expected: { kind: "form", form: "region" },
      meaning:
        "A country or region by its code: its first day of the week, and its rule for week 1. Default: ISO 8601.",
    },
    language: {
      expected: { kind: "form", form: "language" },
      meaning: "The language of the names, by its code. Default: en, whatever the region.",
    },
    week: {
      expected: { kind: "choice", allowed: WEEKDAY_WORDS },
      meaning: "The day that weeks begin with, whatever the region says.",
    },
    weekOne: {
      expected: { kind: "whole", unit: "days", min: 1, max: 7 },
      meaning: "How many of its days week 1 must have in the year, whatever the region says.",
    },
    utcOffset: {
      expected: { kind: "form", form: "utc-offset" },
      meaning:
        "How far the clock is ahead of UTC, for labels with {moon}: on which day the moon is full depends on it. It holds all year round, summer time or not. Default: no label can have {moon}.",
    },
  },
} as const satisfies Grammar;
