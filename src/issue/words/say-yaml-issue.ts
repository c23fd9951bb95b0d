/** The words for YAML that cannot be read, or that uses what a recipe never needs. */
import type { YamlFault, YamlIssue } from "../facts/yaml-issue.ts";
import type { Said } from "./said.ts";
import { sayCode } from "./say-code.ts";

/** Sentence and remedy for one. */
export function sayYamlIssue(issue: YamlIssue): Said {
  switch (issue.kind) {
    case "duplicate-key":
      return {
        sentence: `${sayCode(issue.key)} is written twice in one group of keys.`,
        hint: `It stands in line ${issue.first.line} already: keep one of the two.`,
      };
    case "too-deep":
      return {
        sentence: `This is nested more than ${issue.limit} levels deep.`,
        hint: "Look for brackets or dashes that are repeated by mistake.",
      };
    case "too-many-words":
      return {
        sentence: `The file has more than ${issue.limit.toLocaleString("en")} words and marks: what comes from here on is too much.`,
        hint: "Look for something that is repeated by mistake, or divide it into several files.",
      };
    default:
      return FAULTS[issue.kind];
  }
}

const FAULTS: Readonly<Record<YamlFault, Said>> = {
  tab: { sentence: "This line is indented with a tab.", hint: "Indent with spaces." },
  indent: {
    sentence: "This line is not indented like the lines it belongs with.",
    hint: "Lines of one group begin in one column, further in than the key above them.",
  },
  "no-dash": {
    sentence: "A dash is missing in this line.",
    hint: "In a list, every entry begins with a dash and a space.",
  },
  "open-quote": {
    sentence: "A quotation mark is opened and never closed.",
    hint: "Close it, or leave both out: most text needs none.",
  },
  "after-quote": {
    sentence: "The quotation mark before this ends the text.",
    hint: "Leave the quotation marks out: most text needs none. Between single ones an apostrophe is written twice: `'Bob''s'`.",
  },
  "no-colon": {
    sentence: "A colon is missing in this line.",
    hint: "Write `key: value`, with a space behind the colon.",
  },
  "no-comma": {
    sentence: "A comma is missing here.",
    hint: "Between brackets, values are separated by commas.",
  },
  "no-space": {
    sentence: "A space is missing here.",
    hint: "A colon and a dash need a space behind them, and `#` one before it.",
  },
  "not-closed": {
    sentence: "A bracket is opened and never closed.",
    hint: "Every `[` needs its `]` and every `{` its `}`.",
  },
  "not-opened": {
    sentence: "A bracket is closed that was never opened.",
    hint: "Take it out: every `]` belongs to a `[` and every `}` to a `{`.",
  },
  "bad-escape": {
    sentence: "This is not an escape that YAML knows.",
    hint: "Between double quotes a backslash begins an escape; between single quotes it is itself.",
  },
  "bad-start": {
    sentence: "Text cannot begin with this character.",
    hint: "Put the whole text between quotation marks.",
  },
  "nested-on-one-line": {
    sentence: "Two keys stand in one line.",
    hint: "Put the second on its own line, or both between braces: `{count: 3, gap: 1}`. A text with a colon needs quotation marks.",
  },
  "long-key": {
    sentence: "A key must stand on one line, with its colon.",
    hint: "Look for a missing colon, bracket or quotation mark before this.",
  },
  "key-not-text": { sentence: "A key must be a word.", hint: "Write a key before the colon." },
  "several-documents": {
    sentence: "A second YAML document begins here.",
    hint: "One file is one document: take out this line.",
  },
  directive: {
    sentence: "Lines that begin with `%` are instructions to a YAML reader; none are taken here.",
    hint: "Take out this line.",
  },
  anchor: {
    sentence: "Names for repeated parts (`&name`) are not taken here.",
    hint: "Write the part out, or use `each` or `repeat`. A text with `&` first needs quotation marks.",
  },
  alias: {
    sentence: "References to other parts (`*name`) are not taken here.",
    hint: "Write the part out, or use `each` or `repeat`. A text with `*` first needs quotation marks.",
  },
  "merge-key": {
    sentence: "Merging with `<<` is not taken here.",
    hint: "Write the keys out.",
  },
  tag: {
    sentence: "YAML tags (`!name`) are not taken here.",
    hint: "Take it out. A text with `!` first needs quotation marks.",
  },
  "not-keys": {
    sentence: "This is not a group of keys.",
    hint: "Write one key a line, such as `title: Seed list`.",
  },
  unexpected: {
    sentence: "This cannot stand here.",
    hint: "Look for a missing or doubled comma, colon, bracket or quotation mark.",
  },
};
