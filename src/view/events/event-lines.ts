/** Events as the lines of a list: their days, their time, what they are called. */
import type { WeekRule } from "../../calendar/week.ts";
import type { DatedEvent } from "../../events/events-in.ts";
import { sayEvent } from "../../issue/words/say-event.ts";
import { rangeTitle } from "../pattern/span-words.ts";

export interface EventLine {
  /** `Friday, 5 March 2027`. */
  readonly dates: string;
  readonly time?: string;
  readonly title: string;
}

/** One for each, in their order. */
export function eventLines(events: readonly DatedEvent[], rule: WeekRule): readonly EventLine[] {
  return events.map(({ from, to, time, title }) => ({
    dates: rangeTitle({ from, to }, rule),
    ...(time !== undefined && { time }),
    title: sayEvent({ title }, false),
  }));
}
