/** A printer's error: by how much all that is printed is stretched so that it comes out in true size. */
import type { PaperSize } from "../notebook/paper.ts";

/** Factors along the short side (x) and the long side (y) of the paper; 100 mm divided by what a bar of 100 mm measures. */
export interface PrinterCorrection {
  readonly x: number;
  readonly y: number;
}

/** A printer that needs no correction. */
export const NO_STRETCH: PrinterCorrection = { x: 1, y: 1 };

/**
 * The factors across and down a page as it is read. A printer draws paper in by its short side, so a page that
 * is wider than high lies turned in it, and its across is the printer's y.
 */
export function correctionFor(
  { width, height }: PaperSize,
  { x, y }: PrinterCorrection,
): PrinterCorrection {
  return width > height ? { x: y, y: x } : { x, y };
}
