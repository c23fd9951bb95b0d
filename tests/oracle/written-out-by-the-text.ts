/** A dated pattern with its units written out as tracks: each area has its days, and its label says them. */
import type { Axis } from "../../src/measure/axis.ts";
import type { Binding } from "../../src/notebook/notebook.ts";
import {
  type Area,
  type Attempt,
  FILLS,
  type Leftover,
  type Track,
  type TrackSizing,
} from "../../src/recipe/recipe.ts";
import { labelByTheText, type NameLists, OutsideYears } from "./labels-by-the-text.ts";
import type { Days, Weeks } from "./rata-die.ts";
import { type Around, aroundsOf, asPeriod } from "./units-by-the-text.ts";
import type {
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

export interface Facts {
  readonly days?: Days | undefined;
  readonly isOutside: boolean;
}

interface Writing extends DatedOn {
  readonly outside: "pale" | "blank";
  readonly facts: Map<Area, Facts>;
}

/** The attempt with its units as tracks; nothing where it needs a day, or the year of a week, outside 1 to 9999. */
export function writtenOut({ page, spread }: WrittenAttempt, pattern: WrittenPattern, on: DatedOn) {
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
  return aroundsOf(track.repeat, track, around, writing.weeks).map(one);
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
