/** Pieces on as few sheets as they need: turned to fit, with crop marks, and nothing nearer to an edge than a printer prints. */
import { cropMarks } from "../../draw/print-marks/crop-marks.ts";
import type { SheetPlace } from "../../draw/print-marks/placed-drawing.ts";
import { type PaperSize, paperSize, sidewise } from "../../notebook/paper.ts";
import { NO_STRETCH, type PrinterCorrection } from "../printer-correction.ts";
import { turned } from "./pack.ts";
import { type PiecePlaces, placePieces } from "./place-pieces.ts";
import { type PrinterMargin, type PrinterPaper, SAFE_MARGIN } from "./printer-paper.ts";
import type { Sheet, SheetPart, SheetPiece } from "./sheet.ts";
import { type SheetLayout, sheetLayout } from "./sheet-layout.ts";

export interface ImposeQuestion {
  readonly title: string;
  readonly pieces: readonly SheetPiece[];
  readonly paper: PrinterPaper;
  readonly margin?: PrinterMargin;
  readonly printer?: PrinterCorrection;
}

export interface Imposed {
  readonly sheets: readonly Sheet[];
  /** What is too large for a sheet, or was an extra without room. */
  readonly leftOut: readonly SheetPiece[];
}

/** The sheets: upright or on their side, whichever takes more, in fewer sheets, with fewer pieces turned. */
export function impose(question: ImposeQuestion): Imposed {
  const upright = paperSize(question.paper);
  const side = placedOn(sidewise(upright), question);
  const best = isPerfect(side) ? side : better(side, placedOn(upright, question));
  return {
    sheets: Array.from({ length: best.count }, (_, index) => sheetOf(best, question, index)),
    leftOut: question.pieces.filter((_, at) => best.places[at] === undefined),
  };
}

/** Places for all pieces on sheets of one kind. */
interface Imposition extends PiecePlaces {
  readonly paper: PaperSize;
  readonly layout: SheetLayout;
}

/** All on one sheet and none turned: nothing else could be better. */
function isPerfect(placed: Imposition): boolean {
  return placed.count <= 1 && placed.places.every(isPlaced) && !placed.places.some(isTurned);
}

/** Of equals the first. */
function better(first: Imposition, second: Imposition): Imposition {
  const order =
    countOf(first, isPlaced) - countOf(second, isPlaced) ||
    second.count - first.count ||
    countOf(second, isTurned) - countOf(first, isTurned);
  return order < 0 ? second : first;
}

function placedOn(paper: PaperSize, question: ImposeQuestion): Imposition {
  const { pieces, margin = SAFE_MARGIN, printer = NO_STRETCH } = question;
  const layout = sheetLayout({ paper, margin, printer, isCut: pieces.length > 0 });
  return { paper, layout, ...placePieces(pieces, layout) };
}

type PiecePlace = PiecePlaces["places"][number];

const isPlaced = (place: PiecePlace) => place !== undefined;
const isTurned = (place: PiecePlace) => place?.turn === 90;

function countOf({ places }: Imposition, isCounted: (place: PiecePlace) => boolean): number {
  return places.filter(isCounted).length;
}

function sheetOf(
  { paper, layout, places, count }: Imposition,
  question: ImposeQuestion,
  index: number,
): Sheet {
  const { title, pieces } = question;
  const heading = count === 1 ? title : `${title} (${index + 1} of ${count})`;
  const lying = pieces.flatMap((piece, at) => {
    const place = places[at];
    return place?.sheet === index ? [{ piece, place }] : [];
  });
  return {
    title: heading,
    ...paper,
    parts: [...layout.head(heading), ...lying.flatMap(pieceParts), ...layout.foot],
  };
}

function pieceParts({
  piece: { scene, cut },
  place,
}: {
  readonly piece: SheetPiece;
  readonly place: SheetPlace;
}): readonly SheetPart[] {
  const figure: SheetPart = {
    kind: "figure",
    description: `${scene.title}. ${scene.description}`,
    marks: scene.marks,
    lies: { frame: scene.frame, place },
    ...(scene.penScale === undefined ? {} : { penScale: scene.penScale }),
  };
  if (cut === "own") return [figure];
  const edge = { x: place.x, y: place.y, ...turned(scene.frame, place.turn) };
  return [figure, { kind: "artifact", marks: cropMarks([edge]) }];
}
