/** Reads the words for units behind `count` and `repeat`, and which of the units are meant. */
import type { SpanKind } from "../../calendar/span.ts";
import {
  kindOfUnit,
  mostUnits,
  selectUnits,
  UNITS,
  type Unit,
  type UnitSelection,
  unitsWithin,
} from "../../calendar/units.ts";
import type { Note } from "../../issue/facts/reading.ts";
import { takeWhole, unsuitable } from "../../source/schema/take-value.ts";
import {
  entryOf,
  type SourceEntry,
  type SourceMapping,
  type SourceNode,
} from "../../source/tree.ts";
import type { TrackUnits } from "../dates.ts";
import { RECIPE_KEYS } from "../recipe-keys.ts";
import type { ReadContext } from "./read-context.ts";

const SELECTION_KEYS = ["from", "to", "least"] as const;

/** The unit behind `count` or `repeat`; nothing where a number is meant, or no such unit can stand there. */
export function readUnits(
  entry: SourceEntry | undefined,
  map: SourceMapping,
  context: ReadContext,
): TrackUnits | undefined {
  const word = entry?.value.kind === "scalar" ? entry.value.source : "";
  const unit = UNITS.find((known) => known === word);
  if (!entry || !unit) {
    noteUselessKeys(map, context.note);
    return undefined;
  }
  const selection = readSelection(map, context.note);
  return isUnitHere(unit, entry, context) ? { unit, ...selection } : undefined;
}

/** Is it a word for units, wherever it stands? */
export function isUnitWord(node: SourceNode): boolean {
  return node.kind === "scalar" && UNITS.some((known) => known === node.source);
}

/** How many tracks a number behind `count` or `repeat` means; a word that is near a unit is told with it. */
export function takeCount(key: "count" | "repeat", node: SourceNode, context: ReadContext): number {
  const { span, note } = context;
  const { expected: either } = key === "count" ? RECIPE_KEYS.split.count : RECIPE_KEYS.track.repeat;
  const { min, max } = either;
  const unit = key === "count" ? ("tracks" as const) : ("copies" as const);
  const isNumber = node.kind === "scalar" && typeof node.value === "number";
  if (!span || isNumber) {
    return takeWhole({ key, node, expected: { kind: "whole", unit, min, max }, note });
  }
  note(unsuitable({ key, node, expected: either }));
  return min;
}

/** The most tracks that units can come to in a span of a kind. */
export function mostTracks({ unit, ...selection }: TrackUnits, span: SpanKind): number {
  return selectUnits(mostUnits(span, unit) ?? 0, selection).count;
}

/** What the areas of such tracks stand for: a unit of their own, or, with `weekdays`, what is around. */
export function contextWithin(units: TrackUnits, context: ReadContext): ReadContext {
  if (units.unit === "weekdays") return { ...context, isInWeekdays: true };
  return { ...context, span: kindOfUnit(units.unit) };
}

/** Notes a unit that the span around it does not have. */
function isUnitHere(unit: Unit, { key, value }: SourceEntry, context: ReadContext): boolean {
  const { span, isInWeekdays, note } = context;
  const about = { about: "rule", unit, key, at: value.at } as const;
  if (!span) note({ ...about, kind: "unit-without-dates" });
  else if (isInWeekdays) note({ ...about, kind: "unit-in-weekdays" });
  else if (mostUnits(span, unit) === undefined) {
    note({ ...about, kind: "unit-not-in-span", span, units: [...unitsWithin(span), "weekdays"] });
  } else return true;
  return false;
}

function readSelection(map: SourceMapping, note: Note): UnitSelection {
  const read = (key: "from" | "to"): number | undefined => {
    const entry = entryOf(map, key);
    if (!entry) return undefined;
    const { value: node } = entry;
    const value = node.kind === "scalar" ? node.value : null;
    if (typeof value === "number" && Number.isInteger(value) && value !== 0) return value;
    note(unsuitable({ key, node, expected: RECIPE_KEYS.split[key].expected }));
    return undefined;
  };
  const [from, to, least] = [read("from"), read("to"), entryOf(map, "least")];
  const end = entryOf(map, "to");
  // From the same end both say at once that nothing is left, in whatever span.
  if (end && from !== undefined && to !== undefined && from > to && from > 0 === to > 0) {
    note({ about: "rule", kind: "from-past-to", from, to, at: end.value.at });
  }
  const { expected } = RECIPE_KEYS.split.least;
  return {
    ...(from === undefined ? {} : { from }),
    ...(to === undefined ? {} : { to }),
    ...(least ? { least: takeWhole({ key: "least", node: least.value, expected, note }) } : {}),
  };
}

/** `from`, `to` and `least` choose among units: beside a number they mean nothing. */
function noteUselessKeys(map: SourceMapping, note: Note): void {
  for (const key of SELECTION_KEYS) {
    const entry = entryOf(map, key);
    if (entry) note({ about: "rule", kind: "selection-without-unit", key, at: entry.keyAt });
  }
}
