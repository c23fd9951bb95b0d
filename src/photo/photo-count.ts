/** What counting a photo comes to: the grid, or why it is not said; and in which copy of it. */
import type { PhotoPoint } from "./grey.ts";
import type { PlaneView } from "./plane-view.ts";

export const PHOTO_SIDES = ["left", "top", "right", "bottom"] as const;
export type PhotoSide = (typeof PHOTO_SIDES)[number];

/** A doubtful count is refused, with what was seen. */
export type PhotoDoubt =
  /** Of light or dark alone, or of nothing that is fine enough. */
  | { readonly kind: "blurred" }
  | { readonly kind: "too-few"; readonly dots: number }
  /** Lines are seen, but not as evenly as they are counted. */
  | { readonly kind: "lined" }
  /** The lines of a lined page run from top to bottom: the photo lies on its side. */
  | { readonly kind: "upright" }
  /** The next row or column would lie outside the photo. */
  | { readonly kind: "cut-off"; readonly sides: readonly PhotoSide[] }
  /** Beyond the last row or column there may be another. */
  | { readonly kind: "unsure-end"; readonly sides: readonly PhotoSide[] }
  /** A row or a column within the grid has hardly a dot: as between two pages. */
  | { readonly kind: "bare-line" }
  /** Too many places of the grid have no dot; `fill` is the part that has. */
  | { readonly kind: "gaps"; readonly fill: number }
  /** Dots lie between the dots, or as far off as by chance. */
  | { readonly kind: "no-grid"; readonly residual: number };

/** A counted grid. Lengths in a photo are pixels. */
export interface CountedGrid {
  readonly across: number;
  readonly down: number;
  readonly ruling: "dots" | "squares";
  readonly view: PlaneView;
  /** The first dot's place in the view's lattice; the last one's is by so many dots farther. */
  readonly first: { readonly across: number; readonly down: number };
  /** From the top left one clockwise. */
  readonly corners: readonly PhotoPoint[];
  readonly dots: readonly PhotoPoint[];
  /** Half of the dots lie no farther from where the view says. */
  readonly residual: number;
  /** And half of them no farther from halfway between their neighbours, which curled paper hardly changes. */
  readonly unevenness: number;
  /** The shorter step in the middle of the grid. */
  readonly step: number;
  /** The part of the grid's places that have a dot. */
  readonly fill: number;
}

/** A counted page of lines. Lengths in a photo are pixels. */
export interface LinedPage {
  /** From the top; of each line, places about a step apart from the left. */
  readonly lines: readonly (readonly PhotoPoint[])[];
  /** From line to line in the middle of the page. */
  readonly step: number;
}

export type PhotoCount =
  | { readonly ok: true; readonly of: "grid"; readonly grid: CountedGrid }
  | { readonly ok: true; readonly of: "lines"; readonly page: LinedPage }
  /** `found` are the dots that were seen, to be shown. */
  | { readonly ok: false; readonly doubt: PhotoDoubt; readonly found: readonly PhotoPoint[] };

/** The longer side in pixels of the copy that is counted: about six for a millimetre of A5; and where that one does not do. */
export const COPY = 1_200;
export const FINER_COPY = 2_000;
/** With fewer pixels for a step a count is not trusted: noise passes for dots, while a crossing is seen by its lines. */
const LEAST_STEP = { dots: 13, squares: 10, lines: 15 } as const;
/** A finer copy shows this as well. */
const AS_WELL: ReadonlySet<PhotoDoubt["kind"]> = new Set(["blurred", "cut-off", "upright"]);

/** Need no finer copy be counted? */
export function isSure(count: PhotoCount): boolean {
  if (!count.ok) return AS_WELL.has(count.doubt.kind);
  if (count.of === "lines") return count.page.step >= LEAST_STEP.lines;
  return count.grid.step >= LEAST_STEP[count.grid.ruling];
}
