/** The four sides of a page, and which of two facing pages it is. */
export const PAPER_SIDES = ["top", "right", "bottom", "left"] as const;
export type PaperSide = (typeof PAPER_SIDES)[number];

/** One of two facing pages. */
export type FacingSide = "left" | "right";

/** A page by itself, or one of two facing pages. */
export type PageSide = "single" | FacingSide;
