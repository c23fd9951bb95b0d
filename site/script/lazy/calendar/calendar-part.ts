/** What the part that reads calendar files gives to a page, once it is loaded. */
import type { CalendarFile } from "../../../../src/events/calendar-file.ts";
import type { eventsIn } from "../../../../src/events/events-in.ts";
import type {
  CalendarFileIssue,
  CalendarFileNote,
} from "../../../../src/issue/facts/calendar-file-issue.ts";

export interface CalendarPart {
  openCalendar(name: string, bytes: Uint8Array): OpenedCalendar;
  readonly eventsIn: typeof eventsIn;
  /** With its place and what to do about it. */
  said(fact: CalendarFileIssue | CalendarFileNote): string;
  /** A longer file is refused: no more of it need be taken out of the keeper's folder. */
  readonly mostBytes: number;
}

export interface OpenedCalendar {
  readonly file: CalendarFile;
  /** The same without what is not drawn, as it is kept. */
  readonly kept: string;
}

declare global {
  interface Window {
    readonly spanbookCalendar?: CalendarPart;
  }
}

/** The part, loaded if it is not there yet. Rejects where its script cannot be loaded. */
export async function calendarPart(
  window: Window,
  load: (name: string) => Promise<void>,
): Promise<CalendarPart> {
  await load("calendar.js");
  if (window.spanbookCalendar) return window.spanbookCalendar;
  throw new Error("the part that reads calendar files is not what was expected");
}
