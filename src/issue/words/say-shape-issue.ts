/** The words for keys that do not belong, are missing, or have a value that is not valid. */
import type { Owner, ShapeIssue } from "../facts/shape-issue.ts";
import type { Said } from "./said.ts";
import { sayCode } from "./say-code.ts";
import { sayList } from "./say-count.ts";
import { asOwner, ownerPlace } from "./say-owner.ts";
import { sayBadAddress, sayUnsuitable } from "./say-unsuitable-value.ts";
import { sayValueType } from "./say-value-type.ts";

/** Sentence and remedy for one. */
export function sayShapeIssue(issue: ShapeIssue): Said {
  switch (issue.kind) {
    case "unknown-key":
      return unknownKey(issue);
    case "run-together":
      return {
        sentence: `${issue.lacks === "space" ? "A space is missing behind the colon of" : "A colon is missing in"} ${sayCode(issue.written)}.`,
        hint: `Write ${sayCode(`${issue.key}: ${issue.value}`)}.`,
      };
    case "decimal-comma":
      return {
        sentence: `A comma ends a value: ${sayCode(issue.written)} is no number.`,
        hint: `Decimals stand behind a point: ${sayCode(issue.meant)}.`,
      };
    case "comma-in-text":
      return {
        sentence: `A comma between braces ends the text of ${sayCode(issue.key)} too early.`,
        hint: `Put quotation marks around the whole of ${sayCode(issue.written)}.`,
      };
    case "missing-key":
      return missingKey(issue);
    case "needs-one":
      return {
        sentence: `${asOwner(issue.owner)} needs ${sayList(issue.keys.map(sayCode), "or")}.`,
        hint: NEEDS[issue.owner] ?? "Write one of them.",
      };
    case "not-together":
      return notTogether(issue);
    case "unsuitable":
      return sayUnsuitable(issue);
    case "bad-address":
      return sayBadAddress(issue);
    case "min-above-max":
      return {
        sentence: `\`min\` is ${issue.min} and larger than \`max\`, which is ${issue.max}.`,
        hint: "Make `min` the smaller of the two.",
      };
    case "too-many-decimals":
      return {
        sentence: `${sayCode(issue.key)} is given as ${sayCode(issue.source)}, with more than ${issue.decimals} decimals.`,
        hint: "Round it: the book counts exactly and rounds nothing by itself.",
      };
    case "control-character":
      return {
        sentence: `${sayCode(issue.key)} holds a character that cannot be drawn (U+${hex(issue.codePoint)}).`,
        hint: "Take it out. Line ends and tabs count, too: titles and labels have one line.",
      };
  }
}

type Of<K extends ShapeIssue["kind"]> = Extract<ShapeIssue, { kind: K }>;

/** What a group is written with where it lacks all of the keys of which it needs one. */
const NEEDS: Readonly<Partial<Record<Owner, string>>> = {
  recipe: "Write `page: {rows: 7}`, or `spread: {left: {…}, right: {…}}` for two pages.",
  attempt: "Write `page: {rows: 7}`, or `spread: {left: {…}, right: {…}}` for two pages.",
  strip: "Name at least one pattern: `across: [two-row-week]`.",
  "setup-entry":
    "Name a pattern, such as `month-grid` or `{pattern: day-notes, times: 2}`, or write `{each: week, pages: [two-row-week]}`.",
  "strip-entry":
    "`{pattern: seed-list, uses: 3}` names a pattern, `{title: Thirds, split: {count: 3}}` divides the page.",
  split:
    "`{count: 3}` makes tracks that are all alike, `{tracks: [{steps: 4}, {share: 1}]}` lists them one by one.",
  gap: "Write `{min: 1, max: 2}`, or one number for a gap that is always the same.",
};

/** One of a pair of axes takes what the other takes. */
function missingKey({ key, owner, expected }: Of<"missing-key">): Said {
  return {
    sentence: `${asOwner(owner)} needs the key ${sayCode(key)}.`,
    hint:
      owner === "axes"
        ? "Give each axis its own value, or write one value for both."
        : `${sayCode(key)} takes ${sayValueType(expected)}.`,
  };
}

function unknownKey({ key, owner, allowed, nearest, elsewhere }: Of<"unknown-key">): Said {
  const keys = `${asOwner(owner)} has ${allowed.join(", ")}.`;
  const meant = nearest ? `Did you mean ${sayCode(nearest)}? ` : "";
  const moved = elsewhere
    ? `It belongs to ${asOwner(elsewhere).toLowerCase()}: write it ${ownerPlace(elsewhere)}. `
    : "";
  return {
    sentence: `${sayCode(key)} is not a key of ${asOwner(owner).toLowerCase()}.`,
    hint: `${meant}${moved}${keys}`,
  };
}

function notTogether({ owner, keys, first, at }: Of<"not-together">): Said {
  const [one, other] = keys;
  const where = first.line === at.line ? "" : ` (line ${first.line})`;
  return {
    sentence: `${asOwner(owner)} cannot have both ${sayCode(one)}${where} and ${sayCode(other)}.`,
    hint: REASONS[pairOf(one, other)] ?? "Keep one of the two.",
  };
}

function pairOf(one: string, other: string): string {
  return [one, other].sort().join(" ");
}

/** Why two keys exclude each other, where it is worth a word. */
const REASONS: Readonly<Record<string, string>> = {
  "columns rows": "To have both, give one split a track and put the other split into that track.",
  "columns fill": "A fill goes into the tracks: `each: {fill: lines}`.",
  "columns every": "A fill and its `every` go into the tracks: `each: {fill: lines, every: 2}`.",
  "fill rows": "A fill goes into the tracks: `each: {fill: lines}`.",
  "every rows": "A fill and its `every` go into the tracks: `each: {fill: lines, every: 2}`.",
  "page spread": "A pattern is one page or a spread of two. The other may go under `otherwise`.",
  "count tracks": "`count` makes tracks that are all alike; `tracks` lists them one by one.",
  "each tracks": "`each` describes counted tracks; `tracks` lists them one by one.",
  "labels tracks": "In a list of tracks, each has its own `label`.",
  "count repeat": "`count` already says how often the track of `each` is repeated.",
  "share steps": "`steps` is an exact size, `share` a part of what is left.",
  "same steps": "`steps` is an exact size already.",
  "min steps": "`steps` is an exact size already.",
  "max steps": "`steps` is an exact size already.",
  "each pattern": "Put the pattern into the `pages` of `each`.",
  "pages pattern": "`pages` belongs to `each`; a pattern has `times` and `borders`.",
  "each times": "`times` belongs to a pattern inside `pages`.",
};

function hex(codePoint: number): string {
  return codePoint.toString(16).toUpperCase().padStart(4, "0");
}
