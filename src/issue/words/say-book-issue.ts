/** The words for what is wrong between files. */
import type { BookIssue } from "../facts/book-issue.ts";
import type { Said } from "./said.ts";
import { sayCode, sayCodes } from "./say-code.ts";
import { sayCount, sayList } from "./say-count.ts";

/** Sentence and remedy for one. */
export function sayBookIssue(issue: BookIssue): Said {
  switch (issue.kind) {
    case "unknown-slug":
      return unknownSlug(issue);
    case "repeated-slug":
      return {
        sentence: `${sayCode(issue.slug)} is named twice.`,
        hint: `It stands in line ${issue.first.line} already: keep one of the two.`,
      };
    case "title-of-pattern":
      return {
        sentence: `A plain division cannot be called so: \`${issue.slug}\` is a pattern.`,
        hint: `Give it another title, or mean the pattern: ${sayCode(`{pattern: ${issue.slug}}`)}.`,
      };
    case "moon-without-offset":
      return {
        sentence: "On which day the moon is full depends on the clock, and this book names none.",
        hint: 'Add `calendar: {utcOffset: "+00:00"}` to `book.yaml`, with the hours that your clock is ahead of UTC, or leave `{moon}` out.',
      };
    case "margin-clash":
      return marginClash(issue);
  }
}

type Of<K extends BookIssue["kind"]> = Extract<BookIssue, { kind: K }>;

function unknownSlug({ what, slug, known, nearest }: Of<"unknown-slug">): Said {
  const meant = nearest ? `Did you mean ${sayCode(nearest)}? ` : "";
  const named = known.slice(0, MOST_KNOWN);
  const rest = known.length - named.length;
  const more = rest > 0 ? ` and ${sayCount(rest, "other")}` : "";
  return {
    sentence: `There is no ${WHAT[what]} ${sayCode(slug)}.`,
    hint: `${meant}${known.length === 0 ? `The folder \`${what}s\` is empty.` : `There are ${sayCodes(named)}${more}.`}`,
  };
}

const WHAT = { notebook: "notebook", pattern: "pattern", setup: "set-up" } as const;

const MOST_KNOWN = 12;

function marginClash(issue: Of<"margin-clash">): Said {
  const { side, keys, page, binding, notebooks } = issue;
  const bound = binding === "none" ? "not bound" : `bound at the ${binding}`;
  const where = page === "single" ? "a page" : `a ${page} page`;
  const books = notebooks.slice(0, MOST_KNOWN).map(sayCode);
  return {
    sentence: `${sayList(keys.map(sayCode), "and")} land on the same side, the ${side}, of ${where} that is ${bound}.`,
    hint: `Keep one of them. ${sayList(books, "and")} ${books.length === 1 ? "is" : "are"} ${bound}.`,
  };
}
