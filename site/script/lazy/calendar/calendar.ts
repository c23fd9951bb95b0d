/** The part that reads calendar files: loaded when somebody opens one, or has kept one on this device. */
import { CALENDAR_LIMITS, readCalendarFile } from "../../../../src/events/calendar-file.ts";
import { eventsIn } from "../../../../src/events/events-in.ts";
import { keptText } from "../../../../src/events/kept-text.ts";
import { harmless } from "../../../../src/issue/words/harmless-text.ts";
import { sayCalendarFile } from "../../../../src/issue/words/say-calendar-file-issue.ts";
import type { CalendarPart } from "./calendar-part.ts";

const part: CalendarPart = {
  openCalendar: (name, bytes) => {
    const file = readCalendarFile({ path: name, bytes });
    return { file, kept: file.events.length === 0 ? "" : keptText(bytes) };
  },
  eventsIn,
  said: (fact) => {
    const { file, line, width } = fact.at;
    const { sentence, hint } = sayCalendarFile(fact);
    const place = width === 0 ? harmless(file) : `${harmless(file)}, line ${line}`;
    return `${place}: ${sentence} ${hint}`;
  },
  mostBytes: CALENDAR_LIMITS.kib * 1024,
};

Object.assign(window, { spanbookCalendar: part });
