/** What calendar files have in the days that a page shows, looked for once. */
import type { DayRange } from "../../../src/calendar/span.ts";
import type { DatedEvent } from "../../../src/events/events-in.ts";

/** What calendar files have in some days. */
export type EventsIn = (range: DayRange) => readonly DatedEvent[];

export interface Events {
  /** Other files are open from now on. */
  set(eventsIn: EventsIn): void;
  /** The same list for the same days, until there are other files; an empty one for no days. */
  days(span: DayRange | undefined): readonly DatedEvent[];
}

const NO_EVENTS: readonly DatedEvent[] = [];

/** No file is open at first. */
export function openEvents(): Events {
  let eventsIn: EventsIn = () => NO_EVENTS;
  let last: DayRange | undefined;
  let events = NO_EVENTS;
  return {
    set: (next) => {
      eventsIn = next;
      last = undefined;
    },
    days: (span) => {
      if (!span) return NO_EVENTS;
      if (last?.from !== span.from || last.to !== span.to) events = eventsIn(span);
      last = span;
      return events;
    },
  };
}
