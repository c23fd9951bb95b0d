/** A notebook's front matter as a zod schema. */
import * as z from "zod";
import { COUNTS, MIDDLES } from "../measure/grid-axis.ts";
import { mmSchema, textSchema, wholeSchema } from "../source/schema/value-schema.ts";
import { BINDINGS, BOUNDS, NOTEBOOK_DEFAULTS, NOTEBOOK_KEYS, RULINGS } from "./notebook-keys.ts";
import { PAPER_NAMES } from "./paper.ts";

const { notebook: KEYS } = NOTEBOOK_KEYS;

/** Two values of one kind, across and down. */
const pair = <T extends z.ZodType>(of: T) => z.tuple([of, of]);

/** One value for both axes, or one for each. */
const perAxis = <T extends z.ZodType>(of: T) =>
  z.union([of, z.strictObject({ across: of, down: of })]);

export const NOTEBOOK_SHAPE = {
  owner: "notebook",
  keys: KEYS,
  grammar: NOTEBOOK_KEYS,
  schema: z.strictObject({
    title: textSchema(KEYS.title.expected),
    paper: z.union([z.enum(PAPER_NAMES), pair(mmSchema(BOUNDS.paper))]),
    pitch: perAxis(mmSchema(BOUNDS.pitch)),
    dots: pair(wholeSchema(BOUNDS.dots)),
    firstDot: pair(mmSchema({ min: 0, max: BOUNDS.paper.max })).optional(),
    count: perAxis(z.enum(COUNTS)).default(NOTEBOOK_DEFAULTS.count),
    ruling: z.enum(RULINGS).default(NOTEBOOK_DEFAULTS.ruling),
    binding: z.enum(BINDINGS).default(NOTEBOOK_DEFAULTS.binding),
    middle: z.enum(MIDDLES).default(NOTEBOOK_DEFAULTS.middle),
  }),
} as const;

/** The keys that make the grid: it can be checked where another key is wrong. */
export const GRID_SCHEMA = NOTEBOOK_SHAPE.schema
  .pick({ paper: true, pitch: true, dots: true, firstDot: true, count: true })
  .strip();

export type GridHead = z.infer<typeof GRID_SCHEMA>;
