/** The words for groups of keys, and for where their keys are written. */
import type { Owner } from "../facts/shape-issue.ts";

/** As a sentence begins: `A split`. */
export function asOwner(owner: Owner): string {
  return OWNERS[owner];
}

/** Where a key of that group is written. */
export function ownerPlace(owner: Owner): string {
  return PLACES[owner];
}

const OWNERS: Readonly<Record<Owner, string>> = {
  notebook: "A notebook",
  recipe: "A pattern",
  strip: "A strip",
  setup: "A set-up",
  "strip-entry": "An entry of a strip",
  book: "The book",
  words: "The table of words",
  spread: "A spread",
  attempt: "An entry of `otherwise`",
  area: "An area",
  track: "A track",
  split: "A split",
  gap: "A gap",
  margin: "A margin",
  "setup-entry": "An entry of `pages`",
  axes: "A value for each axis",
  calendar: "A calendar",
  printer: "A printer",
};

const TOP = "at the beginning of a line, outside all other keys";

const PLACES: Readonly<Record<Owner, string>> = {
  notebook: TOP,
  recipe: TOP,
  strip: TOP,
  setup: TOP,
  "strip-entry": "inside an entry of `across` or `down`",
  book: TOP,
  words: TOP,
  spread: "inside `spread`",
  attempt: "inside an entry of `otherwise`",
  area: "inside `page`, `left`, `right` or a track",
  track: "inside `each` or an entry of `tracks`",
  split: "inside `columns` or `rows`",
  gap: "inside `gap`",
  margin: "inside `margin`",
  "setup-entry": "inside an entry of `pages`",
  axes: "inside the braces",
  calendar: "inside `calendar`",
  printer: "inside `printer`",
};
