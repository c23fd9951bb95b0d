/** The keys of a set-up: for each what it takes and what it means. */
import type { Grammar } from "../source/schema/keys.ts";
import { LIMITS } from "./limits.ts";
import { BORDERS, EACH_KINDS } from "./setup-recipe.ts";
import { STRIP_KEYS } from "./strip-keys.ts";

/** What a set-up may hold at most; pages and boxes are counted before anything is planned. */
export const SETUP_LIMITS = {
  pages: 1_000,
  boxes: 400_000,
  years: 10,
  /** Entries as written, those inside others too. */
  entries: 100,
  /** Blocks of `each` inside one another. */
  depth: 4,
  times: 400,
  first: { min: 1, max: 9_999 },
} as const;

const borders = (what: string) =>
  ({
    expected: { kind: "choice", allowed: BORDERS },
    meaning: `Which ${what} at an end of the days: first takes those that begin in \`dates\`, last those that end in it. Default: both.`,
  }) as const;

const { lanes, make, width } = STRIP_KEYS.strip;

export const SETUP_KEYS = {
  setup: {
    title: {
      expected: { kind: "text", longest: LIMITS.text },
      meaning: "The set-up's name, as it is shown.",
    },
    dates: {
      expected: { kind: "form", form: "days" },
      meaning: `The days it is for, at most ${SETUP_LIMITS.years} years. A week is always the ISO week.`,
    },
    first: {
      expected: { kind: "whole", unit: "pages", ...SETUP_LIMITS.first },
      meaning: "The number of the first free page in the notebook. Default: 1.",
    },
    pages: {
      expected: { kind: "form", form: "setup-entries", max: SETUP_LIMITS.entries },
      meaning: "What comes on the next pages, in order.",
    },
    fill: {
      expected: { kind: "form", form: "slug" },
      meaning:
        "A single page without dates, for a page that would stay free before a spread. Default: nothing.",
    },
    lanes,
    make,
    width,
  },
  "setup-entry": {
    pattern: {
      expected: { kind: "form", form: "slug" },
      meaning:
        "A pattern. With dates it is drawn for each of its days, weeks or months that has a day in `dates`. The name alone says the same.",
    },
    times: {
      expected: { kind: "whole", unit: "times", min: 1, max: SETUP_LIMITS.times },
      meaning: "How many times a pattern without dates is drawn. Default: 1.",
    },
    each: {
      expected: { kind: "choice", allowed: EACH_KINDS },
      meaning:
        "Repeats `pages` for each such unit that has a day in `dates`, instead of a pattern.",
    },
    borders: borders("spans"),
    pages: {
      expected: { kind: "form", form: "setup-entries", max: SETUP_LIMITS.entries },
      meaning: "The entries that `each` repeats.",
    },
  },
} as const satisfies Grammar;
