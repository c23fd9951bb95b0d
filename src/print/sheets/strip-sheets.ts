/** Strips on sheets: in pieces that can be printed, as many copies as are wanted, and a pocket where there is room. */
import { CROP_ROOM } from "../../draw/print-marks/crop-marks.ts";
import { pocketScene, pocketSize } from "../../draw/strip/pocket-scene.ts";
import type { StripLook } from "../../draw/strip/strip-face.ts";
import { stripPieces } from "../../draw/strip/strip-pieces.ts";
import type { StripNote } from "../../issue/facts/strip-note.ts";
import { sayStripNote } from "../../issue/words/say-strip-note.ts";
import { paperSize, sidewise } from "../../notebook/paper.ts";
import type { Strip } from "../../strip/strip.ts";
import { NO_STRETCH, type PrinterCorrection } from "../printer-correction.ts";
import { type Imposed, impose } from "./impose.ts";
import { type PrinterMargin, type PrinterPaper, SAFE_MARGIN, safeArea } from "./printer-paper.ts";
import type { SheetPiece } from "./sheet.ts";
import { BAR_ASIDE } from "./sheet-layout.ts";

export interface StripsQuestion {
  readonly title: string;
  /** For a group, several: of one notebook or of many. */
  readonly strips: readonly Strip[];
  readonly paper: PrinterPaper;
  /** Of each strip; 1 where left out. */
  readonly copies?: number;
  readonly look?: StripLook;
  readonly margin?: PrinterMargin;
  readonly printer?: PrinterCorrection;
}

/** The sheets, what is too large for one, and which strips have no pocket and why. */
export interface StripSheets extends Imposed {
  readonly notes: readonly NoPocket[];
}

type NoPocket = Extract<StripNote, { kind: "no-pocket" }>;

/** A pocket is printed for each strip, not for each copy; where there is none, the sheets say why. */
export function stripSheets(question: StripsQuestion): StripSheets {
  const { strips, copies = 1, look = {} } = question;
  const printable = longestPiece(question);
  const pieces = strips.flatMap((strip) => {
    const scenes = stripPieces(strip, printable, look);
    const own = scenes.map((scene): SheetPiece => ({ scene, cut: "frame" }));
    return Array.from({ length: copies }, () => own).flat();
  });
  const pockets = strips.map((strip) => pocketOf(strip, question));
  return withNotes(question, pieces, pockets);
}

/** A strip's pocket as a piece, or why it has none. */
interface Pocket {
  readonly strip: Strip;
  readonly made: SheetPiece | NoPocket;
}

function pocketOf(strip: Strip, question: StripsQuestion): Pocket {
  // A pocket is high, and so has to lie beside the upright bar.
  const size = pocketSize(strip, longestPiece(question) - BAR_ASIDE, question.look);
  if ("kind" in size) return { strip, made: size };
  return { strip, made: { scene: pocketScene(strip, size), cut: "own" } };
}

/** Imposed, and again without the pockets that are too high for a sheet, so that every sheet says all. */
function withNotes(
  question: StripsQuestion,
  pieces: readonly SheetPiece[],
  pockets: readonly Pocket[],
): StripSheets {
  const made = pockets.flatMap(({ made: one }) => ("kind" in one ? [] : [one]));
  const lacking = pockets.flatMap(({ strip, made: one }) =>
    "kind" in one ? [{ strip, note: one }] : [],
  );
  const notes = lacking.map(({ strip, note }) =>
    question.strips.length > 1 ? `${strip.title}: ${sayStripNote(note)}` : sayStripNote(note),
  );
  const imposed = impose({ ...question, pieces: [...pieces, ...made], notes });
  const tooHigh = made.filter((pocket) => imposed.leftOut.includes(pocket));
  if (tooHigh.length === 0) return { ...imposed, notes: lacking.map(({ note }) => note) };
  return withNotes(
    question,
    pieces,
    pockets.map(({ strip, made: one }) => ({
      strip,
      made: "kind" in one || !tooHigh.includes(one) ? one : noSheet(one, question),
    })),
  );
}

function noSheet({ scene }: SheetPiece, { paper, margin, printer }: StripsQuestion): NoPocket {
  const { height } = safeArea(
    sidewise(paperSize(paper)),
    margin ?? SAFE_MARGIN,
    printer ?? NO_STRETCH,
  );
  return { kind: "no-pocket", lacks: "sheet", needs: scene.frame.height, room: height };
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
