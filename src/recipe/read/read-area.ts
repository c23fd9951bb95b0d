/** Reads an area: its label, its margin, and its split or its fill. */
import type { Axis } from "../../measure/axis.ts";
import { noteNotTogether, takeMap } from "../../source/schema/take-map.ts";
import { takeChoice, takeWhole } from "../../source/schema/take-value.ts";
import {
  entryOf,
  type SourceEntry,
  type SourceMapping,
  type SourceNode,
} from "../../source/tree.ts";
import { LIMITS } from "../limits.ts";
import { type Area, FILLS, type Split } from "../recipe.ts";
import { RECIPE_KEYS } from "../recipe-keys.ts";
import type { ReadContext } from "./read-context.ts";
import { readLabel } from "./read-label.ts";
import { readMargin } from "./read-margin.ts";
import { readSplit } from "./read-split.ts";

/** A split without an area around it, of a strip's plain division. */
export function readBareSplit(entry: SourceEntry, axis: Axis, context: ReadContext): Split {
  const areaOf = (track: SourceMapping, within: ReadContext) => readAreaKeys(track, 1, within);
  return readSplit(entry, axis, { ...context, areaOf });
}

const AREA_KEYS = Object.keys(RECIPE_KEYS.area);
const AREA = {
  owner: "area",
  allowed: AREA_KEYS,
  keys: RECIPE_KEYS.area,
  grammar: RECIPE_KEYS,
} as const;

/** An area of its own: a page, or a page of a spread. A blank one where it is not written as keys. */
export function readArea(key: string, node: SourceNode, context: ReadContext): Area {
  const expected = { kind: "form", form: "area" } as const;
  const fill = FILLS.find((word) => node.kind === "scalar" && word === node.source);
  const meant = fill && `{fill: ${fill}}`;
  const map = takeMap(node, AREA, { key, expected, meant, note: context.note });
  return map ? readAreaKeys(map, 0, context) : BLANK;
}

const BLANK: Area = { label: "", margin: { steps: {} }, fill: "blank", every: 1 };

/** The area among the keys of a map, `depth` splits deep; keys of other groups are left alone. */
function readAreaKeys(map: SourceMapping, depth: number, context: ReadContext): Area {
  const { note } = context;
  if (!context.takesArea(map.at)) return BLANK;
  noteNotTogether(map, "area", TOGETHER, note);
  const label = entryOf(map, "label");
  const fill = entryOf(map, "fill");
  const every = entryOf(map, "every");
  const split = readSplitOf(map, depth, context);
  return {
    ...(label ? readLabel("label", label.value, context) : { label: "" }),
    margin: readMargin(entryOf(map, "margin"), note),
    ...(split ? { split } : {}),
    fill: fill ? takeChoice({ key: "fill", node: fill.value, note, allowed: FILLS }) : "blank",
    every: every
      ? takeWhole({ ...RECIPE_KEYS.area.every, key: "every", node: every.value, note })
      : 1,
  };
}

const TOGETHER = [
  ["columns", "rows"],
  ["columns", "fill"],
  ["columns", "every"],
  ["rows", "fill"],
  ["rows", "every"],
] as const;

/** Both splits are read where both are written, so that the problems of both are told. */
function readSplitOf(map: SourceMapping, depth: number, context: ReadContext): Split | undefined {
  const found = (["columns", "rows"] as const).flatMap((key) => {
    const entry = entryOf(map, key);
    if (!entry) return [];
    if (depth === LIMITS.depth) {
      context.note({ about: "rule", kind: "too-deep", limit: LIMITS.depth, at: entry.keyAt });
      return [];
    }
    const axis = key === "columns" ? ("across" as const) : ("down" as const);
    const areaOf = (track: SourceMapping, within: ReadContext) =>
      readAreaKeys(track, depth + 1, within);
    return [readSplit(entry, axis, { ...context, areaOf })];
  });
  return found[0];
}
