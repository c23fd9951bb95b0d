/** The paper of printers at home, and how much of it they can print on, in millimetres. */
import type { Rect } from "../../draw/geometry/rect.ts";
import type { PaperName, PaperSize } from "../../notebook/paper.ts";
import { correctionFor, type PrinterCorrection } from "../printer-correction.ts";

export const PRINTER_PAPERS = ["A4", "letter"] as const satisfies readonly PaperName[];
export type PrinterPaper = (typeof PRINTER_PAPERS)[number];

/** What a printer leaves white along the ends and the sides of upright paper. */
export interface PrinterMargin {
  readonly ends: number;
  readonly sides: number;
}

/** 36 and 18 points, as generic printer descriptions (PPD, `*ImageableArea`) have it for A4 and letter. */
export const SAFE_MARGIN: PrinterMargin = { ends: 12.7, sides: 6.35 };

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
