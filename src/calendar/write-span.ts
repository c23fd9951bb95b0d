/** Writes a run of days in the shortest form that `read-span.ts` reads. */
import { civilDate, type Day, day, digits, isoText } from "./day.ts";
import type { DayRange } from "./span.ts";
import { ISO_WEEKS, weekOf } from "./week.ts";

/**
 * A run of days in the years 1 to 9999 as a year, a month, an ISO week or a day where it is a whole one, else as two of
 * them: both of the longest kind that it has whole at both ends, so that a quarter is `2027-01/2027-03`.
 */
export function spanText({ from, to }: DayRange): string {
  const write = FORMS.find(({ begins, ends }) => begins(from) && ends(to))?.write ?? isoText;
  const [first, last] = [write(from), write(to)];
  return first === last ? first : `${first}/${last}`;
}

/** One way to write a day by what it lies in, and which days begin and end such a thing. */
interface Form {
  readonly begins: (of: Day) => boolean;
  readonly ends: (of: Day) => boolean;
  readonly write: (of: Day) => string;
}

/** The shortest first; a run that is none of these is written by its days. */
const FORMS: readonly Form[] = [
  formOf((of) => digits(civilDate(of).year, 4)),
  formOf((of) => isoText(of).slice(0, 7)),
  formOf(weekText),
];

/** What is written for a day changes where another year, month or week begins. */
function formOf(write: (of: Day) => string): Form {
  return {
    write,
    begins: (of) => write(of) !== write(day(of - 1)),
    ends: (of) => write(of) !== write(day(of + 1)),
  };
}

function weekText(of: Day): string {
  const week = weekOf(of, ISO_WEEKS);
  return week ? `${digits(week.year, 4)}-W${digits(week.number, 2)}` : "";
}
