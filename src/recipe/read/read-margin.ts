/** Reads an area's margin: one number for all four sides, or steps by side. */
import type { Note } from "../../issue/facts/reading.ts";
import { takeMap } from "../../source/schema/take-map.ts";
import { takeWhole } from "../../source/schema/take-value.ts";
import type { SourceEntry } from "../../source/tree.ts";
import { MARGIN_KEYS, type Margin } from "../recipe.ts";
import { RECIPE_KEYS } from "../recipe-keys.ts";

const MARGIN = {
  owner: "margin",
  allowed: MARGIN_KEYS,
  keys: RECIPE_KEYS.margin,
  grammar: RECIPE_KEYS,
} as const;

/** No steps where no margin is written. The place is the written value. */
export function readMargin(entry: SourceEntry | undefined, note: Note): Margin {
  if (!entry) return { steps: {} };
  const node = entry.value;
  if (node.kind === "scalar" && typeof node.value === "number") {
    const all = takeWhole({ key: "margin", node, expected: RECIPE_KEYS.margin.top.expected, note });
    return { steps: { top: all, bottom: all, left: all, right: all }, place: node.at };
  }
  const { expected } = RECIPE_KEYS.area.margin;
  const map = takeMap(node, MARGIN, { key: "margin", expected, note });
  const steps = (map?.entries ?? []).flatMap(({ key, value }) => {
    const known = MARGIN_KEYS.find((name) => name === key);
    if (!known) return [];
    return [[known, takeWhole({ ...RECIPE_KEYS.margin[known], key, node: value, note })] as const];
  });
  return { steps: Object.fromEntries(steps), place: node.at };
}
