/** A calendar file that somebody opens: its events in some days, and whatever is wrong with it told at its line. */
import { dayOf } from "../../src/calendar/day.ts";
import { eventsIn, RANGE_LIMITS } from "../../src/events/events-in.ts";
import { keptText } from "../../src/events/kept-text.ts";
import { sayCalendarFile } from "../../src/issue/words/say-calendar-file-issue.ts";
import { readText, years } from "../events/written.ts";
import { wildCalendar } from "../random/wild-calendar.ts";
import { promise, promiseSaid, promiseSame, type Seen } from "./promises.ts";

const MARCH = {
  from: dayOf({ year: 2027, month: 3, day: 1 }),
  to: dayOf({ year: 2027, month: 3, day: 31 }),
};

export function calendarKind() {
  return { name: "calendar files", cases: wildCalendar(), attempt: tryCalendar };
}

/** Reads and expands a file, and checks what holds of any. */
export function tryCalendar(text: string, seen: Seen): void {
  const file = seen.run(() => readText(text));
  const kept = readText(keptText(new TextEncoder().encode(text)));
  const lines = text.split(/\r\n|\r|\n/).length;
  seen.depth(file.events.length > 0 ? "events" : "none");
  for (const range of [MARCH, years(2020, 2029), years(1, 1), years(9999)]) {
    const { events, issues } = seen.run(() => eventsIn([file], range));
    promise(events.length <= RANGE_LIMITS.events, "more events than there may be");
    for (const { from, to, title, time = "00:00" } of events) {
      promise(from <= range.to && to >= range.from && from <= to, "an event of other days", title);
      const isPlain = !/\p{Cc}/u.test(title) && /^([01]\d|2[0-3]):[0-5]\d$/.test(time);
      promise(isPlain, "an event that cannot be shown", { title, time });
    }
    // What is kept on a device of a file gives the same events, where all of it could be read.
    if (file.issues.length + issues.length === 0)
      promiseSame(eventsIn([kept], range).events, events, "other events once it is kept");
    for (const issue of [...file.issues, ...issues, ...file.notes]) {
      seen.code(`calendar-file/${issue.kind}`);
      promise(issue.at.line > 0 && issue.at.line <= lines, "a line outside the file", issue.at);
      const { sentence, hint } = sayCalendarFile(issue);
      promiseSaid(sentence, hint);
    }
  }
}
