/** The paper of printers at home, and how much of it they can print on, in millimetres. */
import type { Rect } from "../../draw/geometry/rect.ts";
import { correctionFor, type PaperSize, type PrinterCorrection } from "../printer-correction.ts";

export type PrinterPaper = "A4" | "letter";

/** Upright (ISO 216; CSS Paged Media, `size`: letter is 8.5 by 11 inches). */
export const SHEET_PAPERS: Readonly<Record<PrinterPaper, PaperSize>> = {
  A4: { width: 210, height: 297 },
  letter: { width: 215.9, height: 279.4 },
};

/** What a printer leaves white along the ends and the sides of upright paper. */
export interface PrinterMargin {
  readonly ends: number;
  readonly sides: number;
}

/** 36 and 18 points, as generic printer descriptions (PPD, `*ImageableArea`) have it for A4 and letter. */
export const SAFE_MARGIN: PrinterMargin = { ends: 12.7, sides: 6.35 };

/** Paper as it is read: upright or on its side. */
export function sidewise({ width, height }: PaperSize): PaperSize {
  return { width: height, height: width };
}

/**
 * What may be printed on, before it is stretched: stretched, nothing comes nearer to an edge than the margin.
 * Of paper on its side the ends are left and right.
 */
export function safeArea(
  paper: PaperSize,
  margin: PrinterMargin,
  printer: PrinterCorrection,
): Rect {
  const isWide = paper.width > paper.height;
  const across = isWide ? margin.ends : margin.sides;
  const down = isWide ? margin.sides : margin.ends;
  const factor = correctionFor(paper, printer);
  return {
    x: across / factor.x,
    y: down / factor.y,
    width: (paper.width - 2 * across) / factor.x,
    height: (paper.height - 2 * down) / factor.y,
  };
}
