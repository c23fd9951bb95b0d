/** Reads one track: its size, how often it is repeated, and the area that it is. */

import type { Note } from "../../issue/facts/reading.ts";
import { takeMap } from "../../source/schema/take-map.ts";
import { entryOf, isNothing, type SourceMapping, type SourceNode } from "../../source/tree.ts";
import { type Area, FILLS, type Track } from "../recipe.ts";
import { RECIPE_KEYS } from "../recipe-keys.ts";
import type { ReadContext } from "./read-context.ts";
import { readSize } from "./read-size.ts";
import { contextWithin, isUnitWord, readUnits, takeCount } from "./read-units.ts";

/** A context that also reads the area among a track's keys, one split deeper. */
export interface AreaContext extends ReadContext {
  readonly areaOf: (track: SourceMapping, context: ReadContext) => Area;
}

const TRACK = {
  owner: "track",
  allowed: [...Object.keys(RECIPE_KEYS.track), ...Object.keys(RECIPE_KEYS.area)],
  keys: { ...RECIPE_KEYS.track, ...RECIPE_KEYS.area },
  grammar: { ...RECIPE_KEYS, area: {} },
} as const;

/** A blank track with a share of 1. */
export const PLAIN_TRACK: Track = {
  size: { kind: "share", weight: 100, min: 1, max: Number.POSITIVE_INFINITY },
  area: { label: "", margin: { steps: {} }, fill: "blank", every: 1 },
};

const ENTRIES = {
  each: { expected: RECIPE_KEYS.split.each.expected, isEntry: false },
  tracks: { expected: RECIPE_KEYS.split.each.expected, isEntry: true },
} as const;

/** A number was meant as a size, a word as a fill or a label. */
function meantBy(node: SourceNode): string | undefined {
  if (node.kind !== "scalar" || isNothing(node) || node.source.trim() === "") return undefined;
  if (typeof node.value === "number") return `{steps: ${node.source}}`;
  const fill = FILLS.find((word) => word === node.source);
  return fill ? `{fill: ${fill}}` : `{label: ${node.source}}`;
}

/** A track among `tracks`, and how many copies of it there are; one for each of its units, if it has any. */
export function readTrack(
  node: SourceNode,
  context: AreaContext,
): { readonly track: Track; readonly copies: number } {
  const { note } = context;
  const map = takeTrack("tracks", node, note);
  if (!map) return { track: PLAIN_TRACK, copies: 1 };
  const repeat = entryOf(map, "repeat");
  const units = readUnits(repeat, map, context);
  const within = units ? contextWithin(units, context) : context;
  const track = { size: readSize(map, context), area: context.areaOf(map, within) };
  if (units) return { track: { ...track, units }, copies: 1 };
  if (!repeat || isUnitWord(repeat.value)) return { track, copies: 1 };
  return { track, copies: takeCount("repeat", repeat.value, context) };
}

/** The track behind `each`: `count` says how many there are, so that a `repeat` beside it is a problem. */
export function readEach(node: SourceNode, context: AreaContext): Track {
  const { note } = context;
  const map = takeTrack("each", node, note);
  if (!map) return PLAIN_TRACK;
  const repeat = entryOf(map, "repeat");
  if (repeat) {
    note({
      about: "shape",
      kind: "not-together",
      owner: "split",
      keys: ["count", "repeat"],
      first: map.at,
      at: repeat.keyAt,
    });
  }
  return { size: readSize(map, context), area: context.areaOf(map, context) };
}

function takeTrack(key: "each" | "tracks", node: SourceNode, note: Note) {
  return takeMap(node, TRACK, { ...ENTRIES[key], key, meant: meantBy(node), note });
}
