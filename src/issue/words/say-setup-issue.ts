/** The words for a set-up that cannot be, although its keys are all right. */
import type { SetupIssue } from "../facts/rule-issue.ts";
import type { Said } from "./said.ts";
import { sayCode } from "./say-code.ts";
import { sayCount } from "./say-count.ts";

/** Sentence and remedy for one. */
export function saySetupIssue(issue: SetupIssue): Said {
  switch (issue.kind) {
    case "times-with-dates":
      return {
        sentence: `${sayCode(issue.pattern)} is drawn once for each ${issue.span}: it cannot have \`times\`.`,
        hint: "Leave `times` out. It is for patterns without `dates`.",
      };
    case "larger-than-each":
      return {
        sentence: issue.pattern
          ? `${sayCode(issue.pattern)} is for a ${issue.span}, and stands inside each ${issue.each}.`
          : `Each ${issue.span} cannot stand inside each ${issue.each}.`,
        hint: `What stands inside \`each: ${issue.each}\` is for a ${issue.each} or less. Put it outside, before or after the block.`,
      };
    case "fill-with-dates":
      return {
        sentence: `${sayCode(issue.pattern)} has dates, and a page that stays free has none.`,
        hint: "`fill` takes a pattern without `dates`, such as a page for notes.",
      };
    case "fill-is-spread":
      return {
        sentence: `${sayCode(issue.pattern)} is a spread, and a page that stays free is a single one.`,
        hint: "`fill` takes a pattern of one page, such as a page for notes.",
      };
    case "span-beyond-years":
      return {
        sentence: `A ${issue.span} of these dates${issue.pattern ? `, for ${sayCode(issue.pattern)},` : ""} has a day outside the years 1 to 9999.`,
        hint: "Begin later or end earlier, or leave it out with `borders: first` or `borders: last`.",
      };
    default:
      return tooMuch(issue);
  }
}

type Of<K extends SetupIssue["kind"]> = Extract<SetupIssue, { kind: K }>;

type TooMuch = Of<"too-many-entries" | "each-too-deep" | "too-many-pages" | "too-many-boxes">;

function tooMuch(issue: TooMuch): Said {
  const { limit } = issue;
  switch (issue.kind) {
    case "too-many-entries":
      return {
        sentence: `There are more than ${sayCount(limit, "entry")}.`,
        hint: "Use `times` for pages that are alike and `each` for those that come again, or make a second set-up.",
      };
    case "each-too-deep":
      return {
        sentence: `Blocks of \`each\` lie more than ${limit} deep in one another.`,
        hint: "Put blocks side by side.",
      };
    case "too-many-pages":
      return {
        sentence: `This comes to more than ${sayCount(limit, "page")}.`,
        hint: "Take fewer days, smaller `times`, or make a second set-up that goes on where this one ends.",
      };
    case "too-many-boxes":
      return {
        sentence: `The pages of this set-up have more than ${limit} boxes together.`,
        hint: "Take fewer days, smaller `times`, or patterns with fewer boxes.",
      };
  }
}
