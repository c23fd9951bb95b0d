/** Set-ups with whatever can be in them: patterns, blocks in blocks, borders, times, a filling, any days. */
import fc from "fast-check";
import { SETUP_LIMITS } from "../../src/recipe/setup-keys.ts";
import {
  BORDERS,
  EACH_KINDS,
  type SetupEntry,
  type SetupRecipe,
} from "../../src/recipe/setup-recipe.ts";
import { STRIP_BOUNDS } from "../../src/recipe/strip-bounds.ts";
import { MAKES } from "../../src/recipe/strip-recipe.ts";
import { anyRange } from "./any-dates.ts";
import { anyLine } from "./any-notebook.ts";

/** A set-up of patterns with these names, without places in a file and without a text below it. */
export function anySetup(slug: fc.Arbitrary<string>): fc.Arbitrary<SetupRecipe> {
  const heads = fc.record({
    slug,
    title: anyLine(),
    dates: anyRange(),
    first: fc.integer(SETUP_LIMITS.first),
    pages: fc.array(anyEntry(slug, 0), { minLength: 1, maxLength: 6 }),
    lanes: fc.integer(STRIP_BOUNDS.lanes),
    make: fc.constantFrom(...MAKES),
    width: fc.integer({ min: 10_000_000, max: 100_000_000 }).map((nm) => nm / 1_000_000),
    body: fc.constant(""),
  });
  const fill = fc.option(
    slug.map((pattern) => ({ fill: pattern })),
    { nil: {} },
  );
  return fc.tuple(heads, fill).map(([head, filling]) => ({ ...head, ...filling }));
}

function anyEntry(slug: fc.Arbitrary<string>, depth: number): fc.Arbitrary<SetupEntry> {
  const borders = fc.constantFrom(...BORDERS);
  const pattern = fc.record({
    kind: fc.constant("pattern" as const),
    pattern: slug,
    times: fc.oneof(fc.constant(1), fc.integer({ min: 2, max: SETUP_LIMITS.times })),
    borders,
  });
  if (depth === 3) return pattern;
  const each = fc.record({
    kind: fc.constant("each" as const),
    each: fc.constantFrom(...EACH_KINDS),
    borders,
    pages: fc.array(anyEntry(slug, depth + 1), { minLength: 1, maxLength: 2 }),
  });
  return fc.oneof({ weight: 3, arbitrary: pattern }, { weight: 1, arbitrary: each });
}
