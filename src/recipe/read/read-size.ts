/** Reads a track's size: exact steps, a share with limits, or a `same` name. */
import { noteNotTogether } from "../../source/schema/take-map.ts";
import { takeShare, takeText, takeWhole, unsuitable } from "../../source/schema/take-value.ts";
import { entryOf, type SourceMapping } from "../../source/tree.ts";
import type { TrackSizing } from "../recipe.ts";
import { RECIPE_KEYS } from "../recipe-keys.ts";
import type { ReadContext } from "./read-context.ts";

/** The size among a track's keys; a share of 1 without limits where none is written. */
export function readSize(map: SourceMapping, context: ReadContext): TrackSizing {
  const { note } = context;
  noteNotTogether(map, "track", TOGETHER, note);
  const steps = entryOf(map, "steps");
  const share = entryOf(map, "share");
  const limits = readLimits(map, context);
  const weight = share
    ? takeShare({ ...RECIPE_KEYS.track.share, key: "share", node: share.value, note })
    : 100;
  const name = readName(map, context);
  if (name !== undefined) return { kind: "same", name, weight, ...limits };
  if (!steps) return { kind: "share", weight, ...limits };
  const exact = takeWhole({ ...RECIPE_KEYS.track.steps, key: "steps", node: steps.value, note });
  return { kind: "steps", steps: exact };
}

const TOGETHER = [
  ["steps", "share"],
  ["steps", "same"],
  ["steps", "min"],
  ["steps", "max"],
] as const;

function readLimits(map: SourceMapping, { note }: ReadContext) {
  const limit = (key: "min" | "max", otherwise: number) => {
    const entry = entryOf(map, key);
    return entry
      ? takeWhole({ ...RECIPE_KEYS.track[key], key, node: entry.value, note })
      : otherwise;
  };
  const min = limit("min", 1);
  const max = limit("max", Number.POSITIVE_INFINITY);
  const most = entryOf(map, "max");
  if (most && min > max) {
    note({ about: "shape", kind: "min-above-max", min, max, at: most.value.at });
  }
  return { min, max };
}

function readName(map: SourceMapping, context: ReadContext): string | undefined {
  const same = entryOf(map, "same");
  if (!same) return undefined;
  const { expected } = RECIPE_KEYS.track.same;
  const name = takeText({ key: "same", node: same.value, expected, note: context.note });
  if (name.trim() === "" && same.value.kind === "scalar" && same.value.value !== null) {
    context.note(unsuitable({ key: "same", node: same.value, expected }));
  }
  context.takeName(name, same.value.at);
  return name;
}
