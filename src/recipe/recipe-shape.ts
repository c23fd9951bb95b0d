/** The head of a recipe as a zod schema; its areas are read by hand, where a tree needs better words. */
import * as z from "zod";
import { SPAN_KINDS } from "../calendar/span.ts";
import { textSchema } from "../source/schema/value-schema.ts";
import type { SourceNode } from "../source/tree.ts";
import { OUTSIDE } from "./dates.ts";
import { LIMITS } from "./limits.ts";
import { PURPOSES } from "./recipe.ts";
import { RECIPE_KEYS } from "./recipe-keys.ts";

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
    dates: z.enum(SPAN_KINDS).optional(),
    outside: z.enum(OUTSIDE).optional(),
    date: tree(),
    page: tree(),
    spread: tree(),
    otherwise: tree(),
  }),
} as const;
