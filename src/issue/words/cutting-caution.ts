/** What must be said wherever a strip or a pocket is offered for cutting. */

/** The caution: how it begins, which is set in bold where that can be, and what it says. */
export const CUTTING_CAUTION = {
  head: "A blade is sharp.",
  words:
    "Cut away from your body, on a cutting mat, with the blade along a metal edge. Children cut with somebody's help.",
} as const;
