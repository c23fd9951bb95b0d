/** The keys of a strip: for each what it takes and what it means. */
import type { Grammar } from "../source/schema/keys.ts";
import { LIMITS } from "./limits.ts";
import { MAKES } from "./strip-recipe.ts";

/** The width is in millimetres: wide enough for one lane, narrow enough to lie on a page. */
export const STRIP_BOUNDS = {
  patterns: 40,
  lanes: { min: 1, max: 12 },
  width: { min: 10, max: 100 },
} as const;

/** What a strip is where its recipe does not say. */
export const STRIP_DEFAULTS = { lanes: 4, make: "edges", width: 30 } as const;

const SLUGS = { kind: "form", form: "slugs", max: STRIP_BOUNDS.patterns } as const;

export const STRIP_KEYS = {
  strip: {
    title: {
      expected: { kind: "text", longest: LIMITS.text },
      meaning: "The strip's name, as it is shown.",
    },
    across: {
      expected: SLUGS,
      meaning: "Patterns whose columns are marked on the side that lies across, most used first.",
    },
    down: {
      expected: SLUGS,
      meaning: "Patterns whose rows are marked on the side that lies down, most used first.",
    },
    lanes: {
      expected: { kind: "whole", unit: "lanes", ...STRIP_BOUNDS.lanes },
      meaning: `At most so many lanes a side. Left out: ${STRIP_DEFAULTS.lanes}.`,
    },
    make: {
      expected: { kind: "choice", allowed: MAKES },
      meaning: `How the two sides come together: both on one face, the second turned round (edges), on a fold, or as two strips. Left out: ${STRIP_DEFAULTS.make}.`,
    },
    width: {
      expected: { kind: "millimetres", ...STRIP_BOUNDS.width },
      meaning: `The strip's width in millimetres. Left out: ${STRIP_DEFAULTS.width}.`,
    },
  },
} as const satisfies Grammar;
