/** Reads how a book counts weeks, and in which language it names days. */
import {
  type Calendar,
  type CalendarFields,
  type CalendarProblem,
  readCalendar,
} from "../../calendar/calendar.ts";
import type { Note } from "../../issue/facts/reading.ts";
import { takeMap } from "../../source/schema/take-map.ts";
import { takeText, takeWhole } from "../../source/schema/take-value.ts";
import { entryOf, type SourceEntry, type SourceMapping } from "../../source/tree.ts";
import { BOOK_KEYS } from "../book-keys.ts";

const { calendar: KEYS } = BOOK_KEYS;

const CALENDAR = {
  owner: "calendar",
  allowed: Object.keys(KEYS),
  keys: KEYS,
  grammar: BOOK_KEYS,
} as const;

/** The calendar behind `calendar`; nothing where none is written, or where something in it is wrong. */
export function readBookCalendar(entry: SourceEntry | undefined, note: Note): Calendar | undefined {
  if (!entry) return undefined;
  const { expected } = BOOK_KEYS.book.calendar;
  const map = takeMap(entry.value, CALENDAR, { key: "calendar", expected, note });
  if (!map) return undefined;
  const reading = readCalendar(fieldsIn(map, note));
  if (reading.ok) return reading.value;
  for (const problem of reading.problems) noteProblem(problem, map, note);
  return undefined;
}

function fieldsIn(map: SourceMapping, note: Note): CalendarFields {
  const text = (key: "region" | "language" | "week" | "utcOffset") => {
    const node = entryOf(map, key)?.value;
    return node && { [key]: takeText({ key, node, expected: TEXT, note }) };
  };
  const node = entryOf(map, "weekOne")?.value;
  const { expected } = KEYS.weekOne;
  return {
    ...text("region"),
    ...text("language"),
    ...text("week"),
    ...text("utcOffset"),
    ...(node && { weekOne: takeWhole({ key: "weekOne", node, expected, note }) }),
  };
}

const TEXT = { kind: "text", longest: 40 } as const;

function noteProblem(problem: CalendarProblem, map: SourceMapping, note: Note): void {
  const at = entryOf(map, problem.field)?.value.at ?? map.at;
  if (problem.code === "no-week-one") return;
  note({ about: "rule", kind: problem.code, at, written: problem.written, ...meantBy(problem) });
}

function meantBy(problem: CalendarProblem): { readonly meant?: string } {
  return "meant" in problem && problem.meant !== undefined ? { meant: problem.meant } : {};
}
