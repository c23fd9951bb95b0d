/** Reads a split: a number, a count with what each track is, or its tracks one by one. */
import type { Axis } from "../../measure/axis.ts";
import { noteNotTogether, takeMap } from "../../source/schema/take-map.ts";
import { takeWhole, unsuitable } from "../../source/schema/take-value.ts";
import { entryOf, type SourceEntry, type SourceMapping } from "../../source/tree.ts";
import type { TrackUnits } from "../dates.ts";
import { LIMITS } from "../limits.ts";
import type { Split, Track } from "../recipe.ts";
import { RECIPE_KEYS } from "../recipe-keys.ts";
import { readGap } from "./read-gap.ts";
import { type Label, readLabel } from "./read-label.ts";
import { readLeftover } from "./read-leftover.ts";
import { type AreaContext, PLAIN_TRACK, readEach, readTrack } from "./read-track.ts";
import { contextWithin, isUnitWord, mostTracks, readUnits, takeCount } from "./read-units.ts";

const SPLIT = {
  owner: "split",
  allowed: Object.keys(RECIPE_KEYS.split),
  keys: RECIPE_KEYS.split,
  grammar: RECIPE_KEYS,
  needsOne: ["count", "tracks"],
} as const;

/** The split behind `columns` or `rows`. The desk knows how to read the area of a track. */
export function readSplit(entry: SourceEntry, axis: Axis, context: AreaContext): Split {
  const { key, value: node } = entry;
  const plain = { axis, gap: { min: 0, max: 0 }, leftover: { kind: "end" } } as const;
  if (node.kind === "scalar" && typeof node.value === "number") {
    const { min, max } = RECIPE_KEYS.split.count.expected;
    const expected = { kind: "whole", unit: "tracks", min, max } as const;
    const count = takeWhole({ key, node, expected, note: context.note });
    return { ...plain, tracks: Array.from({ length: count }, () => PLAIN_TRACK) };
  }
  const { expected } = RECIPE_KEYS.area.columns;
  const map = takeMap(node, SPLIT, { key, expected, note: context.note });
  if (!map) return { ...plain, tracks: [PLAIN_TRACK] };
  noteNotTogether(map, "split", TOGETHER, context.note);
  const tracks = entryOf(map, "tracks") ? readTracks(map, context) : readCounted(map, context);
  return {
    axis,
    tracks,
    gap: readGap(entryOf(map, "gap"), context.note),
    leftover: readLeftover(entryOf(map, "leftover"), tracks, context.note),
  };
}

const TOGETHER = [
  ["count", "tracks"],
  ["each", "tracks"],
  ["labels", "tracks"],
] as const;

/** Tracks written one by one, `repeat` written out; copies share their area. */
function readTracks(map: SourceMapping, context: AreaContext): readonly Track[] {
  const node = entryOf(map, "tracks")?.value;
  if (node?.kind !== "list" || node.entries.length === 0) {
    const { expected } = RECIPE_KEYS.split.tracks;
    if (node) context.note(unsuitable({ key: "tracks", node, expected }));
    return [PLAIN_TRACK];
  }
  const written = node.entries.map((entry) => readTrack(entry, context));
  const total = written.reduce(
    (sum, { track: { units }, copies }) =>
      sum + (units && context.span ? mostTracks(units, context.span) : copies),
    0,
  );
  if (total > LIMITS.tracks) {
    const limit = LIMITS.tracks;
    const unit = written.find(({ track }) => track.units)?.track.units?.unit;
    context.note({
      about: "rule",
      kind: "too-many-tracks",
      tracks: total,
      limit,
      ...(unit ? { unit } : {}),
      at: node.at,
    });
    return written.map(({ track }) => track);
  }
  return written.flatMap(({ track, copies }) => Array.from({ length: copies }, () => track));
}

/** Counted tracks, all alike but for their labels. */
function readCounted(map: SourceMapping, context: AreaContext): readonly Track[] {
  const count = entryOf(map, "count");
  const each = entryOf(map, "each");
  const units = readUnits(count, map, context);
  if (count && units) return [readUnitTrack(units, map, count, context)];
  const length =
    count && !isUnitWord(count.value) ? takeCount("count", count.value, context) : undefined;
  const track = each ? readEach(each.value, context) : PLAIN_TRACK;
  const labels = readLabels(map, length, context);
  return Array.from({ length: length ?? 1 }, (_, index) => {
    const label = labels[index];
    return label === undefined ? track : { ...track, area: { ...track.area, ...label } };
  });
}

/** One track for all units; each has its own label from the placeholders in it. */
function readUnitTrack(
  units: TrackUnits,
  map: SourceMapping,
  count: SourceEntry,
  context: AreaContext,
): Track {
  const { note, span } = context;
  const labels = entryOf(map, "labels");
  if (labels) {
    note({ about: "rule", kind: "labels-with-units", unit: units.unit, at: labels.keyAt });
  }
  const tracks = span ? mostTracks(units, span) : 0;
  const limit = LIMITS.tracks;
  if (tracks > limit) {
    const { unit } = units;
    note({ about: "rule", kind: "too-many-tracks", tracks, limit, unit, at: count.value.at });
  }
  const each = entryOf(map, "each");
  const track = each
    ? readEach(each.value, { ...context, ...contextWithin(units, context) })
    : PLAIN_TRACK;
  return { ...track, units };
}

function readLabels(
  map: SourceMapping,
  count: number | undefined,
  context: AreaContext,
): readonly Label[] {
  const entry = entryOf(map, "labels");
  if (!entry) return [];
  const { value: node } = entry;
  if (node.kind !== "list") {
    context.note(unsuitable({ key: "labels", node, expected: RECIPE_KEYS.split.labels.expected }));
    return [];
  }
  const labels = node.entries.length;
  const extra = count === undefined ? undefined : node.entries[count];
  if (extra && count !== undefined) {
    context.note({ about: "rule", kind: "too-many-labels", labels, tracks: count, at: extra.at });
  }
  return node.entries.map((label) => readLabel("labels", label, context));
}
