/** The words for units and placeholders that cannot stand where they are written. */
import type { CalendarIssue, DaysIssue, LabelIssue, UnitIssue } from "../facts/rule-issue.ts";
import type { Said } from "./said.ts";
import { sayCode, sayCodes } from "./say-code.ts";
import { sayCount } from "./say-count.ts";
import { saySpanFault } from "./say-span-fault.ts";

/** Sentence and remedy for a word for units, or for what stands beside it. */
export function sayUnitIssue(issue: UnitIssue): Said {
  switch (issue.kind) {
    case "unit-without-dates":
      return {
        sentence: `${sayCode(`${issue.key}: ${issue.unit}`)} needs dates, and this pattern has none.`,
        hint: "Give the pattern `dates: day`, `week`, `month`, `quarter` or `year`, or write a number here.",
      };
    case "unit-in-weekdays":
      return {
        sentence: `${sayCode(issue.unit)} cannot stand inside a track of \`weekdays\`, which has no days of its own.`,
        hint: "Put weeks outside, days inside: a track for each of the weeks, cut into its days.",
      };
    case "unit-not-in-span":
      return {
        sentence: `A ${issue.span} is not cut into ${issue.unit}.`,
        hint: `Here it can be ${sayCodes(issue.units)}.`,
      };
    case "selection-without-unit":
      return {
        sentence: `${sayCode(issue.key)} chooses among units, such as days or weeks, and there are none here.`,
        hint: "Leave it out, or put a unit such as `days` where the number stands.",
      };
    case "from-past-to":
      return {
        sentence: `From ${issue.from} to ${issue.to} there is no unit: \`from\` is past \`to\`.`,
        hint: `Did you mean ${sayCode(`from: ${issue.to}, to: ${issue.from}`)}? 1 is the first unit, −1 the last.`,
      };
    case "labels-with-units":
      return {
        sentence: `\`labels\` cannot name ${issue.unit}: the calendar decides how many there are.`,
        hint: 'Give `each` a label with placeholders, such as {label: "{weekday} {day}"}.',
      };
    case "outside-without-dates":
      return {
        sentence: "`outside` is for days, and this pattern has no `dates`.",
        hint: "Leave it out, or give the pattern `dates`.",
      };
  }
}

/** Sentence and remedy for a placeholder. */
export function sayLabelIssue(issue: LabelIssue): Said {
  if (issue.kind === "unclosed-placeholder") {
    return {
      sentence: `A brace is opened in ${sayCode(issue.label)} and not closed.`,
      hint: "Close it, or write `{{` where the brace itself is meant.",
    };
  }
  const meant = issue.nearest ? `Did you mean ${sayCode(`{${issue.nearest}}`)}? ` : "";
  return {
    sentence: `There is no placeholder ${sayCode(`{${issue.written}}`)}.`,
    hint: `${meant}There are ${sayCodes(issue.placeholders.map((name) => `{${name}}`))}. A brace itself is written \`{{\`.`,
  };
}

/** Sentence and remedy for written days. */
export function sayDaysIssue(issue: DaysIssue): Said {
  if (issue.kind === "too-many-years") {
    return {
      sentence: `These dates are longer than ${sayCount(issue.limit, "year")}.`,
      hint: "Name fewer days, such as one year: `dates: 2027`.",
    };
  }
  const { written, fault } = issue;
  const meant =
    fault.kind === "no-span" && fault.meant ? `Did you mean ${sayCode(fault.meant)}? ` : "";
  return {
    sentence: `\`dates\` cannot be ${sayCode(written)}.`,
    hint: `${meant}${saySpanFault(fault)}`,
  };
}

/** Sentence and remedy for a region, a language, a weekday or a clock that there is not. */
export function sayCalendarIssue({ kind, written, meant }: CalendarIssue): Said {
  const guess = meant ? `Did you mean ${sayCode(meant)}? ` : "";
  switch (kind) {
    case "unknown-region":
      return {
        sentence: `There is no region ${sayCode(written)}.`,
        hint: `${guess}A region is written by its code, such as GB, DE or US; 001 is the world.`,
      };
    case "unknown-language":
      return {
        sentence: `The names of days and months are not known in ${sayCode(written)}.`,
        hint: `${guess}A language is written by its code, such as en, de or pt-BR.`,
      };
    case "unknown-weekday":
      return {
        sentence: `There is no weekday ${sayCode(written)}.`,
        hint: `${guess}Weeks begin with monday, tuesday and so on.`,
      };
    case "no-utc-offset":
      return {
        sentence: `${sayCode(written)} is not a valid offset from UTC.`,
        hint: 'Write hours and minutes with a sign, from "-12:00" to "+14:00": "+00:00" for Greenwich, "+01:00" for Berlin in winter.',
      };
  }
}
