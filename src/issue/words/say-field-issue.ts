/** The sentence that stands at a field whose content is not valid. */
import type { FieldIssue } from "../facts/field-issue.ts";
import { sayCount } from "./say-count.ts";
import { sayGridFaultAtField } from "./say-grid-fault.ts";
import { saySpanFault } from "./say-span-fault.ts";
import { sayValueType } from "./say-value-type.ts";

/** What would do in the field, and the words on the button that puts it there; none for most problems. */
export function fieldOffer(
  issue: FieldIssue,
): { readonly text: string; readonly words: string } | undefined {
  const text =
    issue.kind === "no-file-name"
      ? issue.nearest
      : issue.kind === "no-span"
        ? issue.meant
        : undefined;
  return text === undefined ? undefined : { text, words: `Make it ${text}` };
}

/** One or two plain sentences, with what would do. */
export function sayFieldIssue(issue: FieldIssue): string {
  switch (issue.kind) {
    case "unsuitable":
      return `This needs ${sayValueType(issue.expected)}.`;
    case "too-many-decimals":
      return `At most ${sayCount(issue.decimals, "decimal")} are kept exactly.`;
    case "control-character":
      return "This has a character in it that cannot be shown.";
    case "no-file-name":
      return "A file name has small letters a–z, figures and hyphens, not a hyphen first; Windows keeps a few for devices, such as con.";
    case "no-stretch":
      return `This needs a number from ${issue.min} to ${issue.max}. A printer that is off by more does not print at actual size.`;
    case "too-many-years":
      return `These dates are longer than ${sayCount(issue.limit, "year")}.`;
    case "dots-beyond-paper":
    case "first-dot-beyond-paper":
    case "empty-edge-step":
      return sayGridFaultAtField(issue);
    default:
      return saySpanFault(issue);
  }
}
