/** What a sheet says about itself: how it is printed, checked, corrected and cut. */
import { BAR } from "../../draw/print-marks/scale-bars.ts";
import { CUTTING_CAUTION } from "../../issue/words/cutting-caution.ts";
import type { PaperSize } from "../../notebook/paper.ts";
import type { PrinterCorrection } from "../printer-correction.ts";

/** The one thing that must not be missed. */
export const ACTUAL_SIZE = "Print at 100 % (actual size)";

/** What the bars along the bottom and the left of a sheet run along, as `printer` in book.yaml names it. */
export function barNames({ width, height }: PaperSize): {
  readonly across: string;
  readonly down: string;
} {
  const [short, long] = ["short side: x", "long side: y"];
  return width > height ? { across: long, down: short } : { across: short, down: long };
}

/** The notes beside the bars, a paragraph each. */
export function sheetNotes(printer: PrinterCorrection, isCut: boolean): readonly string[] {
  return [
    `Measure both bars first: each is ${BAR} mm long. A bank card laid into their corner reaches to the long ticks.`,
    `Where a bar is off, enter its length on the measure page; a host writes ${BAR} divided by it into book.yaml. ${correction(printer)}`,
    ...(isCut ? [CUTTING_CAUTION.words] : []),
  ];
}

function correction({ x, y }: PrinterCorrection): string {
  if (x === 1 && y === 1) return "Now x and y are 1.";
  return `This sheet is stretched by x ${x} and y ${y}: multiply by these.`;
}
