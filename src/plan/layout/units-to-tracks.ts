/** A dated pattern set on a span of days: each unit gets a track of its own, and each area its days. */
import { type Weekday, weekday } from "../../calendar/day.ts";
import {
  type BeyondYears,
  isBeyondYears,
  overlaps,
  type Span,
  type SpanKind,
} from "../../calendar/span.ts";
import { kindOfUnit, mostUnits, selectUnits, unitsOf, weekdaysOf } from "../../calendar/units.ts";
import { mapPages } from "../../recipe/area-tree.ts";
import type { AreaDates, Outside, PatternDates, TrackUnits } from "../../recipe/dates.ts";
import type { LabelPart } from "../../recipe/label-template.ts";
import type { Area, Attempt, Leftover, Track } from "../../recipe/recipe.ts";
import type { When } from "../when.ts";
import { fillLabel, tidyUndated } from "./fill-labels.ts";
import { type KnownNumbers, knownNumbers } from "./undated-numbers.ts";

/** An attempt without units: those of a dated pattern are written out as tracks that know their days. */
export type DatedAttempt = Attempt | BeyondYears;

/**
 * Writes the units of an attempt out. Without a span each kind of span is taken at its largest, and what is known of
 * a day is its place: the third day of a month is a 3, but of no month.
 */
export function datedAttempt(attempt: Attempt, dates: PatternDates, when: When): DatedAttempt {
  const { span } = when;
  const around: Around = { kind: dates.span, ...(span ? { span, period: periodOf(span) } : {}) };
  const { outside } = dates;
  const writing: Writing = { when, outside, bare: new Map(), beyond: [] };
  const written = mapPages(attempt, (page) => writeArea(page, around, writing));
  return writing.beyond[0] ?? written;
}

/** What the area around stands for. */
interface Around {
  readonly kind: SpanKind;
  readonly span?: Span;
  /** The nearest month, quarter or year, itself counted. */
  readonly period?: Span | undefined;
  readonly weekday?: Weekday;
  /** Without a span. */
  readonly known?: KnownNumbers;
}

interface Writing {
  readonly when: When;
  readonly outside: Outside;
  /** Each written area without what is written anew for each unit: a year writes the same area 365 times. */
  readonly bare: Map<Area, BareArea>;
  /** Units that leave the years 1 to 9999. */
  readonly beyond: BeyondYears[];
}

/** `place` is its number, in the order in which they are met. */
type BareArea = Omit<Area, "split" | "labelParts" | "label"> & { readonly place: number };

function bareOf(area: Area, bare: Map<Area, BareArea>): BareArea {
  const known = bare.get(area);
  if (known) return known;
  const { split, labelParts, label, ...own } = area;
  const found = { ...own, place: bare.size };
  bare.set(area, found);
  return found;
}

function writeArea(area: Area, around: Around, writing: Writing): Area {
  const { split, labelParts } = area;
  const own = bareOf(area, writing.bare);
  const dates = datesOf(around);
  const dated = { ...own, dates, ...labelsOf(labelParts, { around, dates }, writing) };
  if (!split) return dated;
  const tracks = split.tracks.map((track) => writeTrack(track, around, writing));
  const flat = tracks.flat();
  // A split that is left without any track is a blank leaf.
  if (flat.length === 0) return { ...own, dates, label: "" };
  const leftover = movedLeftover(split.leftover, split.tracks, tracks);
  return { ...dated, split: { ...split, tracks: flat, leftover, origin: split } };
}

/** The label of an area; none of a day outside, where these are left away. */
function labelsOf(
  parts: readonly LabelPart[] = [],
  { around, dates }: { readonly around: Around; readonly dates: AreaDates },
  { when, outside, beyond }: Writing,
): Pick<Area, "label" | "labelForms"> {
  if (dates.isOutside && outside === "blank") return { label: "" };
  const forms = fillLabel(parts, dates, when);
  if ("code" in forms) {
    beyond.push(forms);
    return { label: "" };
  }
  // Many small boxes that all say "Date" or "Week" would tell nobody anything.
  const isNamed = !around.known || (around.kind !== "day" && around.kind !== "week");
  const texts = dates.span ? forms : forms.map((form) => tidyUndated(form, parts, isNamed));
  const hasForms = texts.some((each) => each !== texts[0]);
  return { label: texts[0] ?? "", ...(hasForms ? { labelForms: texts } : {}) };
}

function datesOf({ kind, span, period, weekday, known }: Around): AreaDates {
  return {
    kind,
    ...(span ? { span } : {}),
    ...(weekday ? { weekday } : {}),
    ...known,
    isOutside: span !== undefined && period !== undefined && !overlaps(span, period),
  };
}

function writeTrack(track: Track, around: Around, writing: Writing): readonly Track[] {
  const { units, ...own } = track;
  if (!units) return [{ ...own, area: writeArea(track.area, around, writing) }];
  return aroundsOf(units, around, writing).map((each) => ({
    ...own,
    isUnit: true,
    area: writeArea(track.area, each, writing),
  }));
}

/** What each unit stands for, in order. */
function aroundsOf(units: TrackUnits, around: Around, writing: Writing): readonly Around[] {
  const { unit, ...selection } = units;
  const { rule } = writing.when;
  if (unit === "weekdays") {
    return weekdaysOf(rule, selection).map((weekday) => ({ ...around, weekday }));
  }
  const kind = kindOfUnit(unit);
  if (!around.span) {
    const run = selectUnits(mostUnits(around.kind, unit) ?? 0, selection);
    return Array.from({ length: run.count }, (_, index) => ({
      kind,
      known: knownNumbers(kind, run.first + index, around),
      ...(around.kind === "week" && { weekday: weekday(rule.firstWeekday + run.first + index) }),
    }));
  }
  const spans = unitsOf(around.span, unit, rule, selection);
  if (isBeyondYears(spans)) {
    writing.beyond.push(spans);
    return [];
  }
  return spans.map((span) => ({ kind, span, period: periodOf(span) ?? around.period }));
}

/** The span itself, where days can lie outside of it. */
function periodOf(span: Span): Span | undefined {
  return span.kind === "day" || span.kind === "week" ? undefined : span;
}

/**
 * The named track's place among the tracks written out: of the first that has this label, as it is written. At the end
 * where none is left of these.
 */
function movedLeftover(
  leftover: Leftover,
  written: readonly Track[],
  tracks: readonly (readonly Track[])[],
): Leftover {
  if (leftover.kind !== "track") return leftover;
  const label = written[leftover.index]?.area.label;
  const named = tracks.findIndex(
    ({ length }, index) => length > 0 && written[index]?.area.label === label,
  );
  if (named < 0) return { kind: "end" };
  const before = tracks.slice(0, named);
  return { kind: "track", index: before.reduce((sum, { length }) => sum + length, 0) };
}
