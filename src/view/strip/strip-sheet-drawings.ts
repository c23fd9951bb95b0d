/** The sheets of a strip's PDF file as drawings, so that a page shows what will be printed and prints the same. */
import { formatNumber } from "../../draw/geometry/path-data.ts";
import { finishedSize } from "../../draw/strip/strip-body.ts";
import type { WriteSvg } from "../../draw/svg/write-svg.ts";
import { sayStripNote } from "../../issue/words/say-strip-note.ts";
import {
  correctionFor,
  NO_STRETCH,
  type PrinterCorrection,
} from "../../print/printer-correction.ts";
import type { Sheet } from "../../print/sheets/sheet.ts";
import { sheetScene } from "../../print/sheets/sheet-scene.ts";
import { longestPiece, stripSheets } from "../../print/sheets/strip-sheets.ts";
import type { Strip } from "../../strip/strip.ts";
import type { StripSheetsView } from "./strip-view.ts";

/** The sheets on A4. */
export function stripPictures(
  strip: Strip,
  {
    write,
    printer = NO_STRETCH,
  }: { readonly write: WriteSvg; readonly printer?: PrinterCorrection },
): StripSheetsView {
  const question = { title: strip.title, strips: [strip], paper: "A4", printer } as const;
  const { sheets, notes } = stripSheets(question);
  const id = `sheet-${strip.slug}-${strip.notebook.slug}`;
  return {
    svgs: sheets.map((sheet, index) =>
      stretched(write(sheetScene(sheet, `${id}-${index + 1}`), "inline"), sheet, printer),
    ),
    isWide: sheets.some(({ width, height }) => width > height),
    isJoined: finishedSize(strip).length > longestPiece(question),
    hasPocket: notes.length === 0,
    notes: notes.map(sayStripNote),
  };
}

/** A printer's error is corrected by the size in which the drawing is printed; its own millimetres stay. */
function stretched(svg: string, sheet: Sheet, printer: PrinterCorrection): string {
  const { x, y } = correctionFor(sheet, printer);
  if (x === 1 && y === 1) return svg;
  const [width, height] = [sheet.width * x, sheet.height * y].map(formatNumber);
  const size = `width="${width}mm" height="${height}mm"`;
  return svg.replace(/width="[\d.]+mm" height="[\d.]+mm"/, `${size} preserveAspectRatio="none"`);
}
