/** Reads a split's gap: one number of steps, or a range. */
import type { Note } from "../../issue/facts/reading.ts";
import { takeMap } from "../../source/schema/take-map.ts";
import { takeWhole } from "../../source/schema/take-value.ts";
import { entryOf, type SourceEntry } from "../../source/tree.ts";
import type { GapRange } from "../recipe.ts";
import { RECIPE_KEYS } from "../recipe-keys.ts";

const GAP = {
  owner: "gap",
  allowed: Object.keys(RECIPE_KEYS.gap),
  keys: RECIPE_KEYS.gap,
  grammar: RECIPE_KEYS,
  needsOne: ["max"],
} as const;

/** No gap where none is written. */
export function readGap(entry: SourceEntry | undefined, note: Note): GapRange {
  if (!entry) return { min: 0, max: 0 };
  const node = entry.value;
  if (node.kind === "scalar" && typeof node.value === "number") {
    const steps = takeWhole({ ...RECIPE_KEYS.gap.min, key: "gap", node, note });
    return { min: steps, max: steps };
  }
  const { expected } = RECIPE_KEYS.split.gap;
  const map = takeMap(node, GAP, { key: "gap", expected, note });
  const least = map && entryOf(map, "min");
  const most = map && entryOf(map, "max");
  const min = least
    ? takeWhole({ ...RECIPE_KEYS.gap.min, key: "min", node: least.value, note })
    : 0;
  if (!most) return { min, max: min };
  const max = takeWhole({ ...RECIPE_KEYS.gap.max, key: "max", node: most.value, note });
  if (min > max) note({ about: "shape", kind: "min-above-max", min, max, at: most.value.at });
  return { min, max };
}
