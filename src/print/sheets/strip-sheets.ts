/** Strips on sheets: in pieces that can be printed, as many copies as are wanted, and a pocket where there is room. */
import { CROP_ROOM } from "../../draw/print-marks/crop-marks.ts";
import { pocketScene } from "../../draw/strip/pocket-scene.ts";
import type { StripLook } from "../../draw/strip/strip-face.ts";
import { stripPieces } from "../../draw/strip/strip-pieces.ts";
import { paperSize, sidewise } from "../../notebook/paper.ts";
import type { Strip } from "../../strip/strip.ts";
import { NO_STRETCH, type PrinterCorrection } from "../printer-correction.ts";
import type { Drawings } from "./drawing-cache.ts";
import { type Imposed, impose } from "./impose.ts";
import { type PrinterMargin, type PrinterPaper, SAFE_MARGIN, safeArea } from "./printer-paper.ts";
import type { SheetPiece } from "./sheet.ts";

export interface StripsQuestion {
  readonly title: string;
  /** For a group, several: of one notebook or of many. */
  readonly strips: readonly Strip[];
  readonly paper: PrinterPaper;
  /** Of each strip; 1 where left out. */
  readonly copies?: number;
  readonly look?: StripLook;
  /** For who prints a strip more than once, in its usual look. */
  readonly drawings?: Drawings;
  readonly margin?: PrinterMargin;
  readonly printer?: PrinterCorrection;
}

/** The sheets, and what is too large for one. A pocket is printed for each strip, not for each copy. */
export function stripSheets(question: StripsQuestion): Imposed {
  const { strips, copies = 1, look = {}, drawings } = question;
  const printable = longestPiece(question);
  const pieces = strips.flatMap((strip) => {
    const scenes = drawings?.pieces(strip, printable) ?? stripPieces(strip, printable, look);
    const own = scenes.map((scene): SheetPiece => ({ scene, cut: "frame" }));
    return Array.from({ length: copies }, () => own).flat();
  });
  const pockets = strips.map(
    (strip): SheetPiece => ({
      scene: pocketScene(strip, printable, look),
      cut: "own",
      isExtra: true,
    }),
  );
  return impose({ ...question, pieces: [...pieces, ...pockets] });
}

/** The longest piece for which a sheet has room, crop marks and all. */
export function longestPiece({
  paper,
  margin = SAFE_MARGIN,
  printer = NO_STRETCH,
}: StripsQuestion): number {
  const { width } = safeArea(sidewise(paperSize(paper)), margin, printer);
  return Math.floor(width - 2 * CROP_ROOM);
}
