/** The correction of a printer from what its printed bars of 100 mm measure. */
import { BAR } from "../../draw/print-marks/scale-bars.ts";
import type { FieldIssue } from "../../issue/facts/field-issue.ts";
import { NO_STRETCH, type PrinterCorrection } from "../../print/printer-correction.ts";
import { STRETCH } from "../../recipe/limits.ts";
import type { FieldReading } from "./read-notebook-fields.ts";
import { typedLength } from "./typed-length.ts";

/** Four decimals are a hundredth of a millimetre on a bar, finer than any eye. */
const DECIMALS = 4;

/**
 * The factors for `printer`: 100 divided by what a bar measures. On a sheet that was printed with a correction already,
 * times that correction. An empty field is a bar that is true.
 */
export function readBars(
  measured: Readonly<Record<keyof PrinterCorrection, string>>,
  printedWith: PrinterCorrection = NO_STRETCH,
): FieldReading<PrinterCorrection, keyof PrinterCorrection> {
  const issues: FieldIssue<keyof PrinterCorrection>[] = [];
  const read = (side: keyof PrinterCorrection): number => {
    const text = measured[side];
    if (text.trim() === "") return printedWith[side];
    const typed = typedLength(text);
    const mm = typed.kind === "length" ? typed.mm : Number.NaN;
    const factor = Number(((printedWith[side] * BAR) / mm).toFixed(DECIMALS));
    if (factor >= STRETCH.min && factor <= STRETCH.max) return factor;
    issues.push({ field: side, kind: "unsuitable", expected: barLength(printedWith[side]) });
    return 1;
  };
  const value = { x: read("x"), y: read("y") };
  return issues.length > 0 ? { ok: false, issues } : { ok: true, value };
}

/** Lengths of a bar that a correction can still make true, to a tenth of a millimetre. */
function barLength(printedWith: number) {
  const tenths = (mm: number, round: (value: number) => number) => round(mm * 10) / 10;
  return {
    kind: "millimetres",
    min: tenths((printedWith * BAR) / STRETCH.max, Math.ceil),
    max: tenths((printedWith * BAR) / STRETCH.min, Math.floor),
  } as const;
}

/** The line of `book.yaml`. */
export function printerLine({ x, y }: PrinterCorrection): string {
  return `printer: {x: ${x}, y: ${y}}`;
}
