/** On which sheet of paper a drawing is printed in true size; the style sheet has a page size for each. */

/** In millimetres. */
interface Size {
  readonly width: number;
  readonly height: number;
}

/** A sheet, and whether it must hold the counts beside the paper as well or only the paper itself. */
interface Sheet extends Size {
  readonly name: string;
  readonly isCropped: boolean;
}

const whole = (name: string, width: number, height: number): Sheet => {
  return { name, width, height, isCropped: false };
};
const cropped = (name: string, width: number, height: number): Sheet => {
  return { name, width, height, isCropped: true };
};

/**
 * In the order in which they are tried: common sheets with the counts, common sheets without, then large ones.
 * `portrait` and `landscape` are whatever the printer holds: their size is what A4 and letter have in common.
 */
const SHEETS: readonly Sheet[] = [
  whole("portrait", 210, 279.4),
  whole("landscape", 279.4, 210),
  whole("a4", 210, 297),
  whole("a4-landscape", 297, 210),
  cropped("a4", 210, 297),
  cropped("a4-landscape", 297, 210),
  cropped("letter", 215.9, 279.4),
  whole("a3", 297, 420),
  whole("a3-landscape", 420, 297),
  cropped("a3", 297, 420),
  cropped("a3-landscape", 420, 297),
  cropped("ledger-landscape", 431.8, 279.4),
  whole("a2-landscape", 594, 420),
];

/** Printers leave the edge of a sheet bare. In millimetres, as is the line above a drawing that names it. */
const EDGE = 6;
const HEADING = 9;

/**
 * The classes of a page that prints a drawing: its sheet, and `cropped` where the counts beside the paper fall off.
 * `paper` is all pages side by side, `frame` is that with the counts. What no sheet holds is cropped to the largest.
 */
export function sheetClass(paper: Size, frame: Size): string {
  const framed = { width: frame.width + 2 * EDGE, height: frame.height + HEADING + 2 * EDGE };
  const sheet = SHEETS.find((each) => holds(each, each.isCropped ? paper : framed));
  if (!sheet) return "sheet-a2-landscape cropped";
  return sheet.isCropped ? `sheet-${sheet.name} cropped` : `sheet-${sheet.name}`;
}

function holds(sheet: Size, size: Size): boolean {
  return size.width <= sheet.width && size.height <= sheet.height;
}
