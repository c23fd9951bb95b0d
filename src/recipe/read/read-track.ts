/** Reads one track: its size, how often it is repeated, and the area that it is. */
import { takeMap } from "../../source/schema/take-map.ts";
import { takeWhole } from "../../source/schema/take-value.ts";
import { entryOf, isNothing, type SourceMapping, type SourceNode } from "../../source/tree.ts";
import { type Area, FILLS, type Track } from "../recipe.ts";
import { RECIPE_KEYS } from "../recipe-keys.ts";
import type { ReadContext } from "./read-context.ts";
import { readSize } from "./read-size.ts";

/** A desk that also reads the area among a track's keys, one split deeper. */
export interface AreaContext extends ReadContext {
  readonly areaOf: (track: SourceMapping) => Area;
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

/** A track behind `each` or among `tracks`, and how many copies of it there are. */
export function readTrack(
  key: "each" | "tracks",
  node: SourceNode,
  context: AreaContext,
): { readonly track: Track; readonly copies: number } {
  const { note } = context;
  const map = takeMap(node, TRACK, { ...ENTRIES[key], key, meant: meantBy(node), note });
  if (!map) return { track: PLAIN_TRACK, copies: 1 };
  const track = { size: readSize(map, context), area: context.areaOf(map) };
  const repeat = entryOf(map, "repeat");
  if (!repeat) return { track, copies: 1 };
  if (key === "each") {
    // `count` already says how many.
    note({
      about: "shape",
      kind: "not-together",
      owner: "split",
      keys: ["count", "repeat"],
      first: map.at,
      at: repeat.keyAt,
    });
  }
  const { expected } = RECIPE_KEYS.track.repeat;
  return { track, copies: takeWhole({ key: "repeat", node: repeat.value, expected, note }) };
}
