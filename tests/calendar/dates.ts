/** Days and spans as tests write them. */
import { type Day, dayOf, isoText } from "../../src/calendar/day.ts";
import { type BeyondYears, isBeyondYears, type Span } from "../../src/calendar/span.ts";

/** The day of `2027-03-05`. */
export function date(text: string): Day {
  const [year = 0, month = 0, day = 0] = text.split("-").map(Number);
  return dayOf({ year, month, day });
}

/** `month 2027-03-01/2027-03-31`, `day 2027-03-05`, or the problem's code. */
export function textOf(span: Span | BeyondYears): string {
  if (isBeyondYears(span)) return span.code;
  const [from, to] = [isoText(span.from), isoText(span.to)];
  return `${span.kind} ${from === to ? from : `${from}/${to}`}`;
}
