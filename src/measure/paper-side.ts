/** The four sides of a page, and which of two facing pages it is. */
export const PAPER_SIDES = ["top", "right", "bottom", "left"] as const;
export type PaperSide = (typeof PAPER_SIDES)[number];

/** A page by itself, or one of the two pages of a spread. */
export type PageSide = "single" | "left" | "right";
