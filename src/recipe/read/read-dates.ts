/** Reads the run of days behind a key. */
import { readSpan } from "../../calendar/read-span.ts";
import type { DayRange } from "../../calendar/span.ts";
import type { Note } from "../../issue/facts/reading.ts";
import { unsuitable } from "../../source/schema/take-value.ts";
import { isNothing, type SourceNode } from "../../source/tree.ts";
import { spanFaultOf } from "../span-fault.ts";

/** The days; nothing where none can be read, which is told. A year alone is a number to YAML. */
export function readDates(key: "dates", node: SourceNode, note: Note): DayRange | undefined {
  if (node.kind !== "scalar" || isNothing(node)) {
    note(unsuitable({ key, node, expected: { kind: "form", form: "span" } }));
    return undefined;
  }
  const reading = readSpan(node.source);
  if (reading.ok) return reading.value;
  for (const problem of reading.problems) {
    const { written } = problem;
    note({
      about: "rule",
      kind: "bad-span",
      key,
      written,
      fault: spanFaultOf(problem),
      at: node.at,
    });
  }
  return undefined;
}
