/** Pieces on as few sheets as they need: turned to fit, with crop marks, and nothing nearer to an edge than a printer prints. */
import { cropMarks } from "../draw/sheet-crop-marks.ts";
import { marksOnSheet, type SheetPlace } from "../draw/sheet-place.ts";
import { turned } from "./pack.ts";
import { placePieces } from "./place-pieces.ts";
import type { Sheet, SheetPart } from "./sheet.ts";
import { sheetLayout } from "./sheet-layout.ts";
import {
  type PaperName,
  type PrinterMargin,
  SAFE_MARGIN,
  SHEET_PAPERS,
  sidewise,
} from "./sheet-paper.ts";
import type { SheetPiece } from "./sheet-piece.ts";
import { NO_STRETCH, type PaperSize, type Stretch } from "./stretch.ts";

export interface ImposeQuestion {
  readonly title: string;
  readonly pieces: readonly SheetPiece[];
  readonly paper: PaperName;
  readonly margin?: PrinterMargin;
  readonly printer?: Stretch;
}

export interface Imposed {
  readonly sheets: readonly Sheet[];
  /** What is too large for a sheet, or was an extra without room. */
  readonly leftOut: readonly SheetPiece[];
}

/** The sheets: on their side, so that long pieces read upright, unless upright sheets take more or are fewer. */
export function impose(question: ImposeQuestion): Imposed {
  const upright = SHEET_PAPERS[question.paper];
  const [best] = [sidewise(upright), upright]
    .map((paper) => imposeOn(paper, question))
    .toSorted((a, b) => a.leftOut.length - b.leftOut.length || a.sheets.length - b.sheets.length);
  return best ?? { sheets: [], leftOut: question.pieces };
}

function imposeOn(paper: PaperSize, question: ImposeQuestion): Imposed {
  const { title, pieces, margin = SAFE_MARGIN, printer = NO_STRETCH } = question;
  const layout = sheetLayout({ paper, margin, printer, isCut: pieces.length > 0 });
  const { places, count } = placePieces(pieces, layout);
  const sheets = Array.from({ length: count }, (_, index): Sheet => {
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
  });
  return { sheets, leftOut: pieces.filter((_, at) => places[at] === undefined) };
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
    marks: marksOnSheet(scene, place),
    ...(scene.penScale === undefined ? {} : { penScale: scene.penScale }),
  };
  if (cut === "own") return [figure];
  const edge = { x: place.x, y: place.y, ...turned(scene.frame, place.turn) };
  return [figure, { kind: "furniture", marks: cropMarks([edge]) }];
}
