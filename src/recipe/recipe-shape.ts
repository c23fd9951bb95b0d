/** The head of a recipe as a zod schema; its areas are read by hand, where a tree needs better words. */
import * as z from "zod";
import { textSchema } from "../source/schema/value-schema.ts";
import type { SourceNode } from "../source/tree.ts";
import { PURPOSES } from "./recipe.ts";
import { LIMITS, RECIPE_KEYS } from "./recipe-keys.ts";

const { recipe: KEYS } = RECIPE_KEYS;
const tree = () => z.custom<SourceNode>(() => true).optional();

export const RECIPE_SHAPE = {
  owner: "recipe",
  keys: KEYS,
  grammar: RECIPE_KEYS,
  needsOne: ["page", "spread"],
  schema: z.strictObject({
    title: textSchema(KEYS.title.expected),
    purpose: z.enum(PURPOSES),
    tags: z
      .array(textSchema({ longest: LIMITS.text }))
      .max(LIMITS.tags)
      .default([]),
    page: tree(),
    spread: tree(),
    otherwise: tree(),
  }),
} as const;
