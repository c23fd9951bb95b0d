/** What the forms of the pages offer to choose from and how long their texts may be: the keys' own tables, with words beside each value. */
import { WEEKDAY_WORDS } from "../../calendar/calendar.ts";
import { weekday } from "../../calendar/day.ts";
import { ENGLISH } from "../../calendar/english.ts";
import { weekdayName } from "../../calendar/names.ts";
import { COUNTS, MIDDLES, type Middle } from "../../measure/grid-axis.ts";
import type { Binding, Ruling } from "../../notebook/notebook.ts";
import { BINDINGS, BOUNDS, RULINGS } from "../../notebook/notebook-keys.ts";
import { PAPER_NAMES } from "../../notebook/paper.ts";
import { PRINTER_PAPERS } from "../../print/sheets/printer-paper.ts";
import { MAKES, type Make } from "../../recipe/strip-recipe.ts";
import { LONGEST_SLUG } from "../../source/slug.ts";
import { LONGEST_QUERY } from "../address/gallery-address.ts";
import { FITS, LINE_RANGES, PAGE_COUNTS, SORTS } from "../gallery/gallery-query.ts";
import { FIT_WORDS, lineWords, PAGE_WORDS, SORT_WORDS } from "../gallery/query-words.ts";
import { COUNT_WORDS } from "../notebook/notebook-facts.ts";
import { weekOneWords } from "../pattern/span-words.ts";

/** A value, and what it is called. */
export type Choice = readonly [value: string, words: string];

const BINDING_WORDS: Readonly<Record<Binding, string>> = {
  left: "left",
  right: "right",
  top: "top",
  none: "none",
};
const RULING_WORDS: Readonly<Record<Ruling, string>> = {
  dots: "dots",
  squares: "squares",
  lines: "lines",
};
const MIDDLE_WORDS: Readonly<Record<Middle, string>> = {
  lower: "the lower",
  higher: "the higher",
  both: "both",
};
const MAKE_WORDS: Readonly<Record<Make, string>> = {
  edges: "both edges of one face",
  fold: "a fold along the middle",
  two: "two strips",
};

/** For the templates. */
export const FORM_LISTS = {
  papers: PAPER_NAMES,
  sheets: PRINTER_PAPERS,
  counts: choices(COUNTS, (count) => COUNT_WORDS[count]),
  bindings: choices(BINDINGS, (binding) => BINDING_WORDS[binding]),
  rulings: choices(RULINGS, (ruling) => RULING_WORDS[ruling]),
  middles: choices(MIDDLES, (middle) => MIDDLE_WORDS[middle]),
  makes: choices(MAKES, (make) => MAKE_WORDS[make]),
  fits: choices(FITS, (fit) => FIT_WORDS[fit].label),
  pages: choices(PAGE_COUNTS, (count) => PAGE_WORDS[count].label),
  lines: choices(
    LINE_RANGES.map(({ name }) => name),
    (name) => lineWords(name).label,
  ),
  sorts: choices(SORTS, (sort) => SORT_WORDS[sort]),
  weekdays: choices(WEEKDAY_WORDS, (word) =>
    weekdayName(ENGLISH, weekday(WEEKDAY_WORDS.indexOf(word) + 1), "wide"),
  ),
  weekOnes: choices(["1", "2", "3", "4", "5", "6", "7"], (days) => weekOneWords(Number(days))),
  longest: { title: BOUNDS.title, slug: LONGEST_SLUG, query: LONGEST_QUERY },
} as const;

function choices<Value extends string>(
  values: readonly Value[],
  wordsOf: (value: Value) => string,
): readonly Choice[] {
  return values.map((value) => [value, wordsOf(value)]);
}
