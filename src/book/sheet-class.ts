/** On which sheet of paper a drawing is printed in true size; the style sheet has a page size for each. */

/** In millimetres. */
interface Size {
  readonly width: number;
  readonly height: number;
}

/** `portrait` and `landscape` are whatever the printer holds: their size is what A4 and letter have in common. */
const SHEETS = [
  { name: "portrait", width: 210, height: 279.4 },
  { name: "landscape", width: 279.4, height: 210 },
  { name: "letter", width: 215.9, height: 279.4 },
  { name: "a4", width: 210, height: 297 },
  { name: "a4-landscape", width: 297, height: 210 },
  { name: "a3", width: 297, height: 420 },
  { name: "a3-landscape", width: 420, height: 297 },
  { name: "a2-landscape", width: 594, height: 420 },
] as const;

/** Printers leave the edge of a sheet bare. In millimetres, as is the line above a drawing that names it. */
const EDGE = 6;
const HEADING = 9;

/**
 * The classes of a page that prints a drawing: its sheet, and `cropped` where only the paper itself fits on it and
 * the counts beside it do not. `paper` is all pages side by side, `frame` is that with the counts.
 */
export function sheetClass(paper: Size, frame: Size): string {
  const whole = { width: frame.width + 2 * EDGE, height: frame.height + HEADING + 2 * EDGE };
  const sheet = SHEETS.find(
    (each) => holds(each, whole) || (hasOwnSize(each.name) && holds(each, paper)),
  );
  if (!sheet) return "sheet-a2-landscape cropped";
  return holds(sheet, whole) ? `sheet-${sheet.name}` : `sheet-${sheet.name} cropped`;
}

function hasOwnSize(name: (typeof SHEETS)[number]["name"]): boolean {
  return name !== "portrait" && name !== "landscape";
}

function holds(sheet: Size, size: Size): boolean {
  return size.width <= sheet.width && size.height <= sheet.height;
}
