/** Reads the days behind `dates`, a span of at most so many years, and the day behind `date`. */
import { civilDate, type Day, dayOf } from "../../calendar/day.ts";
import { readSpan } from "../../calendar/read-span.ts";
import type { DayRange } from "../../calendar/span.ts";
import type { Note } from "../../issue/facts/reading.ts";
import { unsuitable } from "../../source/schema/take-value.ts";
import { isNothing, type SourceEntry } from "../../source/tree.ts";
import { spanFault } from "../span-fault.ts";

/** The days; nothing where none are written, or where something in them is wrong. */
export function readDays(
  entry: SourceEntry | undefined,
  years: number,
  note: Note,
): DayRange | undefined {
  if (!entry) return undefined;
  const { key, value: node } = entry;
  if (node.kind !== "scalar" || isNothing(node)) {
    note(unsuitable({ key, node, expected: { kind: "form", form: "days" } }));
    return undefined;
  }
  const about = { about: "rule", at: node.at } as const;
  const reading = readSpan(node.source);
  if (!reading.ok) {
    for (const problem of reading.problems) {
      note({ ...about, kind: "bad-days", written: problem.written, fault: spanFault(problem) });
    }
    return undefined;
  }
  if (isLonger(reading.value, years)) {
    note({ ...about, kind: "too-many-years", limit: years });
    return undefined;
  }
  return reading.value;
}

/** The one day; nothing where none is written, or where it is no day of the calendar. */
export function readDay(entry: SourceEntry | undefined, note: Note): Day | undefined {
  if (!entry) return undefined;
  const { key, value: node } = entry;
  const reading = node.kind === "scalar" ? readSpan(node.source) : undefined;
  if (reading?.ok && reading.value.from === reading.value.to) return reading.value.from;
  note(unsuitable({ key, node, expected: { kind: "form", form: "day" } }));
  return undefined;
}

/** Are these more days than so many years have from their first day on? */
export function isLonger({ from, to }: DayRange, years: number): boolean {
  const { year, ...date } = civilDate(from);
  return to >= dayOf({ ...date, year: year + years });
}
