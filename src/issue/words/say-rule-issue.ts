/** The words for a recipe or a notebook that makes no sense although its keys are all right. */
import type { RuleIssue } from "../facts/rule-issue.ts";
import type { Said } from "./said.ts";
import { sayCode, sayCodes } from "./say-code.ts";
import { sayCount } from "./say-count.ts";
import { sayCalendarIssue, sayDaysIssue, sayLabelIssue, sayUnitIssue } from "./say-dates-issue.ts";
import { sayGridFaultInFile } from "./say-grid-fault.ts";
import { saySetupIssue } from "./say-setup-issue.ts";

/** Sentence and remedy for one. */
export function sayRuleIssue(issue: RuleIssue): Said {
  switch (issue.kind) {
    case "too-many-labels":
      return {
        sentence: `There are ${sayCount(issue.labels, "label")} for ${sayCount(issue.tracks, "track")}.`,
        hint: "There may be fewer labels than tracks, not more. This is the first one too many.",
      };
    case "too-many-tracks":
      return {
        sentence: issue.unit
          ? `There can be ${sayCount(issue.tracks, "track")} with all ${issue.unit}.`
          : `With \`repeat\` written out these are ${sayCount(issue.tracks, "track")}.`,
        hint: `A split has at most ${issue.limit}.${issue.unit ? " Cut a year into months first, and these into days." : ""}`,
      };
    case "too-many-areas":
    case "too-many-names":
    case "too-deep":
      return tooMuch(issue);
    case "unknown-leftover":
      return unknownLeftover(issue);
    case "title-without-slug":
      return {
        sentence: `${sayCode(issue.title)} has no letter or number that can stand in the name of a file.`,
        hint: "The marks of a plain division go by its title: give it one with letters from a to z or numbers, such as Thirds.",
      };
    case "bad-days":
    case "too-many-years":
      return sayDaysIssue(issue);
    case "unknown-region":
    case "unknown-language":
    case "unknown-weekday":
    case "no-utc-offset":
      return sayCalendarIssue(issue);
    case "unit-without-dates":
    case "unit-in-weekdays":
    case "unit-not-in-span":
    case "selection-without-unit":
    case "from-past-to":
    case "labels-with-units":
    case "outside-without-dates":
      return sayUnitIssue(issue);
    case "unclosed-placeholder":
    case "unknown-placeholder":
      return sayLabelIssue(issue);
    case "dots-beyond-paper":
    case "first-dot-beyond-paper":
    case "empty-edge-step":
      return sayGridFaultInFile(issue);
    default:
      return saySetupIssue(issue);
  }
}

type Of<K extends RuleIssue["kind"]> = Extract<RuleIssue, { kind: K }>;

function tooMuch({ kind, limit }: Of<"too-many-areas" | "too-many-names" | "too-deep">): Said {
  switch (kind) {
    case "too-many-areas":
      return {
        sentence: `The pattern has more than ${limit} written areas.`,
        hint: "Use `count`, `each` and `repeat` for areas that are alike.",
      };
    case "too-many-names":
      return {
        sentence: `The pattern has more than ${limit} different \`same\` names.`,
        hint: "Take `same` from tracks that may differ, or give several of them one name.",
      };
    case "too-deep":
      return {
        sentence: `Splits lie more than ${limit} deep in one another.`,
        hint: "Put tracks side by side in one split, instead of splitting a track once more.",
      };
  }
}

function unknownLeftover(issue: Of<"unknown-leftover">): Said {
  const { written, keywords, labels, nearest } = issue;
  const meant = nearest ? `Did you mean ${sayCode(nearest)}? ` : "";
  const named = labels.slice(0, MOST_LABELS);
  const more = labels.length > named.length ? " and so on" : "";
  const tracks = labels.length === 0 ? "" : ` or a track's label: ${sayCodes(named)}${more}`;
  return {
    sentence: `The leftover cannot go to ${sayCode(written)}.`,
    hint: `${meant}It goes to ${keywords.join(", ")}${tracks}.`,
  };
}

const MOST_LABELS = 8;
