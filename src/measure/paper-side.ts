/** The four sides of a page. */
export const PAPER_SIDES = ["top", "right", "bottom", "left"] as const;
export type PaperSide = (typeof PAPER_SIDES)[number];
