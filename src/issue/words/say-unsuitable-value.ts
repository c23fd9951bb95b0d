/** The words for a value that its key cannot take. */
import type { AddressFault, Found, ShapeIssue } from "../facts/shape-issue.ts";
import type { ValueType } from "../facts/value-type.ts";
import type { Said } from "./said.ts";
import { sayCode } from "./say-code.ts";
import { isList, sayListSlip } from "./say-list-slip.ts";
import { isQuotedNumber, sayNumberSlip } from "./say-number-slip.ts";
import { sayValueType } from "./say-value-type.ts";

type Of<K extends ShapeIssue["kind"]> = Extract<ShapeIssue, { kind: K }>;

/** What was found, then what was probably meant, then what the key takes. */
export function sayUnsuitable({ key, found, expected, nearest, isEntry }: Of<"unsuitable">): Said {
  const subject = isEntry ? `An entry of ${sayCode(key)}` : sayCode(key);
  const hints = [
    nearest === undefined ? "" : `Did you mean ${sayCode(nearest)}?`,
    slipWords(found, expected),
    `${subject} takes ${sayValueType(expected)}.`,
  ];
  return {
    sentence: `${subject} ${foundWords(found, expected)}.`,
    hint: hints.filter((words) => words !== "").join(" "),
  };
}

/** Everything that the address must not have. */
export function sayBadAddress({ key, source, faults }: Of<"bad-address">): Said {
  return {
    sentence: `${sayCode(key)} cannot be ${sayCode(source)}.`,
    hint: faults.map((fault) => ADDRESS_HINTS[fault]).join(" "),
  };
}

function foundWords(found: Found, expected: ValueType): string {
  switch (found.kind) {
    case "nothing":
      return "has no value";
    case "list":
      return "cannot be this list";
    case "map":
      return "cannot be a group of keys";
    case "scalar":
      if (found.source.trim() === "") return "is blank";
      return isQuotedNumber(found, expected)
        ? `cannot be the text ${sayCode(found.source)}`
        : `cannot be ${sayCode(found.source)}`;
  }
}

function slipWords(found: Found, expected: ValueType): string {
  if (found.kind === "nothing" && found.isRemark)
    return "What stands behind `#` is a remark: a text with `#` first needs quotation marks.";
  if (found.kind === "list" && expected.kind === "form" && expected.form === "split")
    return "A list of tracks stands behind `tracks`.";
  if (found.kind === "scalar" && expected.kind === "form" && isList(expected.form))
    return sayListSlip(found.source, expected.form);
  return sayNumberSlip(found, expected);
}

const ADDRESS_HINTS: Readonly<Record<AddressFault, string>> = {
  scheme: "`url` takes an address that begins with https:// or http://.",
  host: "The name of the site is missing, as in https://example.org/book/.",
  port: "The number behind the colon is no port: those go from 1 to 65535. Most addresses need none.",
  length: "It has at most 500 characters.",
  space: "Take out the space, or write %20 for it.",
  user: "Take out what stands before the `@`: anyone could read it.",
  query: "Take out the `?` and what follows it: the names of the pages come there.",
  fragment: "Take out the `#` and what follows it: the names of the pages come there.",
  page: "Take out the page at its end: it is the address of the folder that the book lies in.",
};
