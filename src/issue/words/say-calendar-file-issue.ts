/** The words for what is wrong with a calendar file, and for what of it is worth a word. */
import type { CalendarFileIssue, CalendarFileNote } from "../facts/calendar-file-issue.ts";
import { harmless } from "./harmless-text.ts";
import type { Said } from "./said.ts";
import { sayCode } from "./say-code.ts";
import { asSentence } from "./say-count.ts";

/** Sentence and remedy for one. */
export function sayCalendarFile(fact: CalendarFileIssue | CalendarFileNote): Said {
  switch (fact.kind) {
    case "in-utc":
    case "unknown-zone":
    case "and-all-after":
      return sayNote(fact);
    default:
      return sayIssue(fact);
  }
}

function sayIssue(issue: CalendarFileIssue): Said {
  switch (issue.kind) {
    case "too-large":
      return {
        sentence: `The file is larger than ${issue.limitKib} KiB.`,
        hint: "Export fewer days or one calendar at a time.",
      };
    case "no-calendar":
      return {
        sentence: "This is not a calendar file: no line in it is `BEGIN:VCALENDAR`.",
        hint: "Export the calendar again, as a file that ends in .ics.",
      };
    case "unclosed":
      return {
        sentence: "Something begins or ends here without its other half: the file may be cut off.",
        hint: "Export it again.",
      };
    case "too-many-events":
      return {
        sentence: `There are more than ${issue.limit.toLocaleString("en")} events in the file: this one and those after it are not read.`,
        hint: "Export fewer days or one calendar at a time.",
      };
    case "no-start":
      return {
        sentence: `${asSentence(sayTitle(issue.title))} has no date, so it is not shown.`,
        hint: "Give it a date in the program that it comes from, or add a line such as `DTSTART;VALUE=DATE:20270305`.",
      };
    case "bad-line":
      return badLine(issue);
    case "not-utf8-line":
      return {
        sentence: "This line is not UTF-8 text: one of its characters is in another encoding.",
        hint: "Export the calendar again, or save the file as plain text in UTF-8.",
      };
    case "ends-before-start":
      return {
        sentence: `${asSentence(sayTitle(issue.title))} ends before it begins: it is shown on its first day.`,
        hint: "Correct its end in the program that it comes from.",
      };
    case "bad-rule":
      return {
        sentence: `How ${sayTitle(issue.title)} is repeated cannot be read, by its ${sayCode(issue.part)}: it is shown once.`,
        hint: "Set the repetition anew in the program that it comes from.",
      };
    case "too-many-times":
      return {
        sentence: `These days have more than ${issue.limit.toLocaleString("en")} events, most of them perhaps from ${sayTitle(issue.title)}: the others are not shown.`,
        hint: "Choose fewer days, or leave out what is repeated so often.",
      };
    case "too-long-to-count":
      return {
        sentence: `${asSentence(sayTitle(issue.title))} is repeated so often that counting up to these days takes too long: it and the events after it are not all shown.`,
        hint: "Let the repetition begin later or come less often.",
      };
  }
}

function badLine({ title, name }: Extract<CalendarFileIssue, { kind: "bad-line" }>): Said {
  const without = name === "DTSTART" ? "is not shown" : "is shown without it";
  return {
    sentence: `The ${sayCode(name)} of ${sayTitle(title)} cannot be read: the event ${without}.`,
    hint: HINTS[name] ?? "Correct the line, or export the calendar again.",
  };
}

const HINTS: Readonly<Record<string, string>> = {
  DTSTART: "It must be a day that exists, such as `DTSTART;VALUE=DATE:20270305`.",
  DTEND: "It must be a day that exists, such as `DTEND;VALUE=DATE:20270306`.",
  DURATION: "It must be a length of time, such as `DURATION:PT1H30M` or `DURATION:P2D`.",
};

/** What is shown all the same. */
function sayNote(note: CalendarFileNote): Said {
  switch (note.kind) {
    case "in-utc":
      return {
        sentence: "Times that are written in UTC are shown as they are written.",
        hint: "Where your clock differs from UTC, such an event may be some hours earlier or later, near midnight on another day.",
      };
    case "unknown-zone":
      return {
        sentence: `The file does not say how the time zone ${sayCode(note.zone)} differs from UTC, and an event is repeated until a time in UTC.`,
        hint: "Its last time may be missing or one too many: see the program that it comes from.",
      };
    case "and-all-after":
      return {
        sentence:
          "One event of a series was changed together with all after it: only this one is shown as changed.",
        hint: "See the program that it comes from for the others.",
      };
  }
}

/** A title is cut where it says enough. */
function sayTitle(title: string): string {
  if (title === "") return "an event without a title";
  return `“${harmless(title.length > 60 ? `${title.slice(0, 60)}…` : title)}”`;
}
