/** What must be said wherever a strip or a pocket is offered for cutting. */

/** The caution, a sentence each. */
export const CUTTING_CAUTION: readonly string[] = [
  "Cut away from your body, on a cutting mat, with the blade along a metal edge.",
  "Children cut with somebody's help.",
];
