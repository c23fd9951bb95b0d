/**
 * A dated pattern for some days, or for none, by the rules' text: units are written out as tracks, each area gets its days,
 * and the planner that was read off the text lays it out. It takes the pattern as written, and knows nothing of the engine's
 * calendar.
 */
import type { Axis } from "../../src/measure/axis.ts";
import type { Binding } from "../../src/notebook/notebook.ts";
import type { PlanPage } from "../../src/plan/plan.ts";
import type { Area, Attempt, Leftover, Track, TrackSizing } from "../../src/recipe/recipe.ts";
import { FILLS } from "../../src/recipe/recipe.ts";
import { labelByTheText, type NameLists, OutsideYears } from "./labels-by-the-text.ts";
import { pagesByTheText } from "./planned-by-the-text.ts";
import {
  type Days,
  FIRST_NUMBER,
  isoDate,
  LAST_NUMBER,
  type SpanName,
  spanAround,
  type Weeks,
} from "./rata-die.ts";
import type {
  UnitWord,
  WrittenArea,
  WrittenAttempt,
  WrittenPattern,
  WrittenSelection,
  WrittenSplit,
  WrittenTrack,
} from "./written-pattern.ts";

export interface DatedOn {
  readonly steps: Readonly<Record<Axis, number>>;
  readonly binding: Binding;
  /** Left out: undated. */
  readonly days?: Days | undefined;
  readonly weeks: Weeks;
  readonly names: NameLists;
}

/** What `plan.json` says of dates, the page used, splits and boxes; nothing where no page fits. */
export function datedByTheText(pattern: WrittenPattern, on: DatedOn) {
  const { otherwise = [], ...first } = pattern;
  for (const [used, attempt] of [first, ...otherwise].entries()) {
    const written = writtenOut(attempt, pattern, on);
    const pages = written && pagesByTheText(written.attempt, on);
    if (!pages) continue;
    const roots = rootsOf(written.attempt);
    return {
      dates: on.days ? range(on.days) : null,
      fits: true,
      used,
      pages: pages.map((page, index) => pageJson(page, roots[index], written.facts)),
    };
  }
  return undefined;
}

/** What an area stands for. */
interface Around {
  readonly kind: SpanName;
  readonly days?: Days | undefined;
  /** The nearest area around, itself counted, that is a month, a quarter or a year. */
  readonly period?: Days | undefined;
  readonly weekday?: number;
}

interface Facts {
  readonly days?: Days | undefined;
  readonly isOutside: boolean;
}

interface Writing extends DatedOn {
  readonly outside: "pale" | "blank";
  readonly facts: Map<Area, Facts>;
}

/** The attempt with its units as tracks; nothing where it needs a day, or the year of a week, outside 1 to 9999. */
function writtenOut({ page, spread }: WrittenAttempt, pattern: WrittenPattern, on: DatedOn) {
  const { days } = on;
  const writing: Writing = { ...on, outside: pattern.outside ?? "pale", facts: new Map() };
  const around: Around = { kind: pattern.dates, ...(days && { days, period: asPeriod(days) }) };
  const area = (written: WrittenArea = {}) => areaOf(written, around, writing);
  try {
    const attempt: Attempt = spread
      ? { kind: "spread", left: area(spread.left), right: area(spread.right) }
      : { kind: "page", page: area(page) };
    return { attempt, facts: writing.facts };
  } catch (error) {
    if (error instanceof OutsideYears) return undefined;
    throw error;
  }
}

function asPeriod(days: Days): Days | undefined {
  return ["month", "quarter", "year"].includes(days.kind) ? days : undefined;
}

function areaOf(written: WrittenArea, around: Around, writing: Writing): Area {
  const { days, period } = around;
  const isOutside =
    days !== undefined && period !== undefined && (days.to < period.from || days.from > period.to);
  const { label = "", margin = {}, fill, every = 1, columns, rows } = written;
  const own = { margin: { steps: margin }, every };
  const isLeft = isOutside && writing.outside === "blank";
  const said = () =>
    days ? labelByTheText(label, { ...writing, days, weekday: around.weekday }) : label;
  const area: Area = {
    ...own,
    label: isLeft ? "" : said(),
    fill: FILLS.find((known) => known === fill) ?? "blank",
  };
  const split = columns ?? rows;
  const axis = columns ? "across" : "down";
  const tracks = split ? writtenTracks(split).map((track) => unitsOf(track, around, writing)) : [];
  // A split that is left without any track is a blank leaf.
  const done: Area =
    split && tracks.flat().length === 0
      ? { ...own, label: "", fill: "blank" }
      : split
        ? { ...area, split: splitOf(axis, split, tracks) }
        : area;
  writing.facts.set(done, { days, isOutside });
  return done;
}

/** A track as it is written, with all copies of it that a number asks for. */
function writtenTracks({
  count,
  each = {},
  labels,
  tracks,
  ...selection
}: WrittenSplit): readonly WrittenTrack[] {
  if (tracks) {
    return tracks.flatMap((track) =>
      typeof track.repeat === "number"
        ? Array.from({ length: track.repeat }, () => track)
        : [track],
    );
  }
  if (typeof count === "string") return [{ ...each, repeat: count, ...picked(selection) }];
  return Array.from({ length: count ?? 1 }, (_, index) => {
    const label = labels?.[index];
    return label === undefined ? each : { ...each, label };
  });
}

function picked({ from, to, least }: WrittenSelection): WrittenSelection {
  return {
    ...(from !== undefined && { from }),
    ...(to !== undefined && { to }),
    ...(least !== undefined && { least }),
  };
}

interface LabelledTrack extends Track {
  readonly written: string;
}

/** The tracks that a written one stands for, each with its label as written. */
function unitsOf(track: WrittenTrack, around: Around, writing: Writing): readonly LabelledTrack[] {
  const written = track.label ?? "";
  const one = (inner: Around) => ({
    written,
    size: sizeOf(track),
    area: areaOf(track, inner, writing),
  });
  if (typeof track.repeat !== "string") return [one(around)];
  return aroundsOf(track.repeat, track, around, writing).map(one);
}

function aroundsOf(
  unit: UnitWord,
  selection: WrittenSelection,
  around: Around,
  { weeks }: Writing,
): readonly Around[] {
  if (unit === "weekdays") {
    // Seven, from the calendar's first day on, going round.
    return chosen(7, selection).map((number) => ({
      ...around,
      weekday: ((weeks.first - 1 + number - 1) % 7) + 1,
    }));
  }
  const kind = KINDS[unit];
  const { days } = around;
  if (!days) return chosen(LARGEST[around.kind][unit] ?? 0, selection).map(() => ({ kind }));
  const all = allUnits(kind, days, weeks);
  return chosen(all.length, selection).map((number) => {
    const own = all[number - 1] ?? unitAfter(kind, all, number, weeks);
    if (own.from < FIRST_NUMBER || own.to > LAST_NUMBER) throw new OutsideYears(unit);
    return { kind, days: own, period: asPeriod(own) ?? around.period };
  });
}

const KINDS = { days: "day", weeks: "week", months: "month", quarters: "quarter" } as const;

/** The largest case at every level. */
const LARGEST: Readonly<Record<SpanName, Readonly<Partial<Record<UnitWord, number>>>>> = {
  day: {},
  week: { days: 7 },
  month: { days: 31, weeks: 6 },
  quarter: { days: 92, weeks: 14, months: 3 },
  year: { days: 366, weeks: 54, months: 12, quarters: 4 },
};

/** Each unit with a day in the span, one after another. */
function allUnits(kind: SpanName, { from, to }: Days, weeks: Weeks): readonly Days[] {
  const units: Days[] = [];
  for (let next = from; next <= to; ) {
    const unit = spanAround(kind, next, weeks);
    units.push(unit);
    next = unit.to + 1;
  }
  return units;
}

/** One of those that follow the last. */
function unitAfter(kind: SpanName, all: readonly Days[], number: number, weeks: Weeks): Days {
  let last = all.at(-1);
  if (!last) throw new Error("a span has units");
  for (let at = all.length; at < number; at++) last = spanAround(kind, last.to + 1, weeks);
  return last;
}

/** Which of so many, by their numbers from 1; numbers past the last are of those that follow. */
function chosen(
  count: number,
  { from = 1, to = -1, least = 0 }: WrittenSelection,
): readonly number[] {
  const begin = from > 0 ? from : Math.max(1, count + 1 + from);
  const end = to > 0 ? Math.min(count, to) : count + 1 + to;
  const numbers: number[] = [];
  for (let number = begin; number <= end; number++) numbers.push(number);
  while (numbers.length < least) numbers.push((numbers.at(-1) ?? begin - 1) + 1);
  return numbers;
}

function sizeOf({ steps, share = 1, same, min = 1, max }: WrittenTrack): TrackSizing {
  if (steps !== undefined) return { kind: "steps", steps };
  const limits = {
    weight: Math.round(share * 100),
    min,
    max: max ?? Number.POSITIVE_INFINITY,
  };
  return same === undefined
    ? { kind: "share", ...limits }
    : { kind: "same", name: same, ...limits };
}

function splitOf(
  axis: Axis,
  { gap = { min: 0, max: 0 }, leftover = "end" }: WrittenSplit,
  tracks: readonly (readonly LabelledTrack[])[],
) {
  const all = tracks.flat();
  return {
    axis,
    gap,
    tracks: all.map(({ size, area }) => ({ size, area })),
    leftover: leftoverOf(leftover, all),
  };
}

/** A word, or the label, as written, of the first track that has it; where none is left of these, the end. */
function leftoverOf(word: string, tracks: readonly LabelledTrack[]): Leftover {
  const kind = (["end", "start", "centre", "gaps", "parts"] as const).find((one) => one === word);
  if (kind) return { kind };
  const index = tracks.findIndex(({ written }) => written === word);
  return index < 0 ? { kind: "end" } : { kind: "track", index };
}

function rootsOf(attempt: Attempt): readonly Area[] {
  return attempt.kind === "page" ? [attempt.page] : [attempt.left, attempt.right];
}

function pageJson(
  { side, steps, splits, boxes }: PlanPage,
  root: Area | undefined,
  facts: ReadonlyMap<Area, Facts>,
) {
  const at = (path: string): Facts => {
    const found = root && facts.get(inside(root, path.split(".")));
    if (!found) throw new Error(`nothing is known of ${path}`);
    return found;
  };
  return {
    side,
    steps,
    splits: splits.map(({ leftover: _, ...split }) => ({
      ...split,
      ...datesJson(at(split.path.split(".").slice(0, -1).join("."))),
    })),
    boxes: boxes.map(({ every, ...box }) => ({
      ...box,
      ...(every > 1 && { every }),
      ...datesJson(at(box.path)),
      ...(at(box.path).isOutside && { outside: true }),
    })),
  };
}

function inside(area: Area, [, index, ...more]: readonly string[]): Area {
  const inner = index === undefined ? undefined : area.split?.tracks[Number(index)]?.area;
  return inner ? inside(inner, more) : area;
}

function datesJson({ days }: Facts) {
  return days ? { dates: range(days) } : {};
}

function range({ from, to }: Days) {
  return { from: isoDate(from), to: isoDate(to) };
}
