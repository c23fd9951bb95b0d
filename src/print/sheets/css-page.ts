/** On which sheet of paper a drawing is printed in true size; the style sheet has a page size for each. */
import { type PaperSize, paperSize, sidewise } from "../../notebook/paper.ts";
import type { PrinterPaper } from "./printer-paper.ts";

/** A sheet, and whether it must hold the counts beside the paper as well or only the paper itself. */
interface PrintedPage extends PaperSize {
  readonly name: string;
  readonly isCropped: boolean;
}

const whole = (name: string, size: PaperSize): PrintedPage => ({ name, ...size, isCropped: false });
const cropped = (name: string, size: PaperSize): PrintedPage => ({
  name,
  ...size,
  isCropped: true,
});

const [A3, A4, LETTER] = [paperSize("A3"), paperSize("A4"), paperSize("letter")];
/** What both of them have room for. */
const COMMON = { width: A4.width, height: LETTER.height };
/** Two sheets of A3 side by side (ISO 216). */
const A2_WIDE = { width: 2 * A3.width, height: A3.height };

/**
 * In the order in which they are tried: common sheets with the counts, common sheets without, then large ones.
 * `portrait` and `landscape` are whatever the printer holds: their size is what A4 and letter have in common.
 */
const COMMON_SHEETS: readonly PrintedPage[] = [
  whole("portrait", COMMON),
  whole("landscape", sidewise(COMMON)),
];

const SHEETS: readonly PrintedPage[] = [
  ...COMMON_SHEETS,
  whole("a4", A4),
  whole("a4-landscape", sidewise(A4)),
  cropped("a4", A4),
  cropped("a4-landscape", sidewise(A4)),
  cropped("letter", LETTER),
  whole("a3", A3),
  whole("a3-landscape", sidewise(A3)),
  cropped("a3", A3),
  cropped("a3-landscape", sidewise(A3)),
  cropped("ledger-landscape", sidewise(paperSize("ledger"))),
  whole("a2-landscape", A2_WIDE),
];

/** Before the others where the printer holds letter paper. */
const LETTER_SHEETS: readonly PrintedPage[] = [
  whole("letter", LETTER),
  whole("letter-landscape", sidewise(LETTER)),
  cropped("letter", LETTER),
  cropped("letter-landscape", sidewise(LETTER)),
  cropped("ledger-landscape", sidewise(paperSize("ledger"))),
];

/** Printers leave the edge of a sheet bare. In millimetres, as is the line above a drawing that names it. */
const EDGE = 6;
const HEADING = 9;

/**
 * The classes of a page that prints a drawing: its sheet, and `cropped` where the counts beside the paper fall off.
 * `printer` is the paper that it holds. `paper` is all pages side by side, `frame` is that with the counts. What no sheet holds is cropped to the largest.
 */
export function sheetClass(
  paper: PaperSize,
  frame: PaperSize,
  printer: PrinterPaper = "A4",
): string {
  const framed = { width: frame.width + 2 * EDGE, height: frame.height + HEADING + 2 * EDGE };
  const sheets = printer === "letter" ? [...COMMON_SHEETS, ...LETTER_SHEETS, ...SHEETS] : SHEETS;
  const sheet = sheets.find((each) => holds(each, each.isCropped ? paper : framed));
  if (!sheet) return "sheet-a2-landscape cropped";
  return sheet.isCropped ? `sheet-${sheet.name} cropped` : `sheet-${sheet.name}`;
}

function holds(sheet: PaperSize, size: PaperSize): boolean {
  return size.width <= sheet.width && size.height <= sheet.height;
}
