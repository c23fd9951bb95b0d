/** The words for typed days that are none, and for a calendar that nobody knows. */
import type { SpanFault } from "../facts/field-issue.ts";

/** One or two plain sentences, with what would do. */
export function saySpanFault(fault: SpanFault): string {
  switch (fault.kind) {
    case "no-span":
      return `This needs ${FORMS}.`;
    case "duration":
      return `A length of time does not say which days. This needs ${FORMS}.`;
    case "open-end":
      return "Both ends are needed, such as 2027-03/2027-05.";
    case "backwards":
      return "The end comes before the beginning: write the earlier date first.";
    case "no-such-year":
      return "Years go from 0001 to 9999.";
    case "no-such-month":
      return "Months go from 01 to 12.";
    case "no-such-day":
      return `This month has the days 01 to ${fault.last}.`;
    case "no-such-week":
      return `This year has the weeks W01 to W${fault.last}, by ISO 8601.`;
    case "beyond-years":
      return "Years go from 0001 to 9999, and this has a day or a week outside of them.";
    case "unknown-region":
      return "This needs the code of a region, such as GB, or 001 for the world.";
    case "unknown-language":
      return "This needs the code of a language whose names are known, such as en or pt-BR.";
  }
}

const FORMS = "a year, a month, a week or a day, such as 2027, 2027-05, 2027-W09 or 2027-05-14";
