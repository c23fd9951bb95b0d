/** How much a strip may carry, how it may be made and called, and what it is where nothing is said: for its keys and the fields of pages. */
import { LIMITS } from "./limits.ts";

/** The width is in millimetres: wide enough for one lane, narrow enough to lie on a page. */
export const STRIP_BOUNDS = {
  patterns: 40,
  uses: { min: 1, max: 10_000 },
  /** Of its dates. */
  years: 10,
  lanes: { min: 1, max: 12 },
  width: { min: 10, max: 100 },
} as const;

/** What a strip is where its recipe does not say. */
export const STRIP_DEFAULTS = { lanes: 4, make: "edges", width: 30 } as const;

/** What a strip and a plain division may be called. */
export const STRIP_TITLE = { kind: "text", longest: LIMITS.text } as const;
