/** Reads one way to lay a pattern out: a page, or a spread of two. */
import { noteNotTogether, takeMap } from "../../source/schema/take-map.ts";
import { unsuitable } from "../../source/schema/take-value.ts";
import {
  entryOf,
  type SourceEntry,
  type SourceMapping,
  type SourceNode,
} from "../../source/tree.ts";
import { LIMITS } from "../limits.ts";
import type { Area, Attempt } from "../recipe.ts";
import { RECIPE_KEYS } from "../recipe-keys.ts";
import { readArea } from "./read-area.ts";
import type { ReadContext } from "./read-context.ts";

const ATTEMPT = {
  owner: "attempt",
  allowed: Object.keys(RECIPE_KEYS.attempt),
  grammar: RECIPE_KEYS,
  needsOne: ["page", "spread"],
} as const;

const ENTRY = {
  key: "otherwise",
  expected: { kind: "form", form: "attempt" },
  isEntry: true,
} as const;

const SPREAD = {
  owner: "spread",
  allowed: Object.keys(RECIPE_KEYS.spread),
  grammar: RECIPE_KEYS,
} as const;

/** The page or the spread among the keys of a recipe or of an entry of `otherwise`; both is a problem. */
export function readAttempt(
  map: SourceMapping,
  owner: "recipe" | "attempt",
  context: ReadContext,
): readonly Attempt[] {
  noteNotTogether(map, owner, [["page", "spread"]], context.note);
  const page = entryOf(map, "page");
  const spread = entryOf(map, "spread");
  return [
    ...(page ? [{ kind: "page", page: readArea("page", page.value, context) } as const] : []),
    ...(spread ? [readSpread(spread, context)] : []),
  ];
}

/** The attempts of `otherwise`, in order. */
export function readOtherwise(
  entry: SourceEntry | undefined,
  context: ReadContext,
): readonly Attempt[] {
  if (!entry) return [];
  const node = entry.value;
  if (node.kind !== "list" || node.entries.length > LIMITS.attempts) {
    const { expected } = RECIPE_KEYS.recipe.otherwise;
    context.note(unsuitable({ key: "otherwise", node, expected }));
    return [];
  }
  return node.entries.flatMap((node: SourceNode) => {
    const map = takeMap(node, ATTEMPT, { ...ENTRY, note: context.note });
    return map ? readAttempt(map, "attempt", context) : [];
  });
}

function readSpread({ value: node }: SourceEntry, context: ReadContext): Attempt {
  const { expected } = RECIPE_KEYS.recipe.spread;
  const map = takeMap(node, SPREAD, { key: "spread", expected, note: context.note });
  const areaOf = (key: "left" | "right"): Area => {
    const entry = map && entryOf(map, key);
    if (entry) return readArea(key, entry.value, context);
    const { expected } = RECIPE_KEYS.spread[key];
    if (map)
      context.note({
        about: "shape",
        kind: "missing-key",
        key,
        owner: "spread",
        expected,
        at: map.at,
      });
    return { label: "", margin: { steps: {} }, fill: "blank", every: 1 };
  };
  return { kind: "spread", left: areaOf("left"), right: areaOf("right") };
}
