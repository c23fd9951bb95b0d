/** The zod schemas of single values, made from what a key takes. */
import * as z from "zod";
import type { ValueTypeOf } from "../../issue/facts/value-type.ts";
import { LONGEST_SLUG, SLUG } from "../slug.ts";
import { foulCharacter } from "./forbidden-character.ts";
import { hasMoreDecimals } from "./take-value.ts";

/** Text of one line that is not blank. */
export function textSchema({ longest }: Pick<ValueTypeOf<"text">, "longest">) {
  return z
    .string()
    .max(longest)
    .refine((text) => foulCharacter(text) === undefined && text.trim() !== "");
}

/** A whole number within its limits. */
export function wholeSchema({ min, max }: Pick<ValueTypeOf<"whole">, "min" | "max">) {
  return z.int().min(min).max(max);
}

/** Millimetres with at most six decimals, which are whole nanometres. */
export function mmSchema({ min, max }: Pick<ValueTypeOf<"millimetres">, "min" | "max">) {
  return z
    .number()
    .min(min)
    .max(max)
    .refine((mm) => !hasMoreDecimals(mm, MM_DECIMALS), { params: { decimals: MM_DECIMALS } });
}

const MM_DECIMALS = 6;

/** A file name without its ending. */
export function slugSchema() {
  return z.string().max(LONGEST_SLUG).regex(SLUG);
}
