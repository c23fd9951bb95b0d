/** The printer's correction as it is kept on the device, and as it is typed. */
import type { FieldIssue } from "../../../src/issue/facts/field-issue.ts";
import { NO_STRETCH, type PrinterCorrection } from "../../../src/print/printer-correction.ts";
import { PRINTER_PAPERS, type PrinterPaper } from "../../../src/print/sheets/printer-paper.ts";
import { STRETCH } from "../../../src/recipe/limits.ts";
import { typedNumber } from "../../../src/view/fields/typed-length.ts";
import type { Device } from "./device.ts";

export type PrinterField = keyof PrinterCorrection;

/** More decimals than a ruler could tell. */
const MOST_DECIMALS = 5;

/** The kept correction, or none where none is kept or what is kept is spoilt. */
export function keptPrinter(device: Device): PrinterCorrection {
  const [x = "", y = ""] = (device.get("printer") ?? "").split(" ");
  const reading = readPrinterCorrection({ x, y });
  return "correction" in reading ? reading.correction : NO_STRETCH;
}

/** Keeps the correction for the next sheet that is printed on this device. */
export function keepPrinter(device: Device, { x, y }: PrinterCorrection): void {
  device.set("printer", `${x} ${y} ${keptPaper(device)}`);
}

/** The sheets that the printer took last; A4 where nobody has said. */
export function keptPaper(device: Device): PrinterPaper {
  const [, , paper] = (device.get("printer") ?? "").split(" ");
  return PRINTER_PAPERS.find((known) => known === paper) ?? "A4";
}

/** Keeps the paper beside the correction. */
export function keepPaper(device: Device, paper: PrinterPaper): void {
  const { x, y } = keptPrinter(device);
  device.set("printer", `${x} ${y} ${paper}`);
}

/** The correction from two fields, or what is wrong with them; an empty field is a printer that prints true. */
export function readPrinterCorrection(
  texts: Readonly<Record<PrinterField, string>>,
):
  | { readonly correction: PrinterCorrection }
  | { readonly issues: readonly FieldIssue<PrinterField>[] } {
  const issues: FieldIssue<PrinterField>[] = [];
  const read = (field: PrinterField): number => {
    const text = texts[field];
    const typed = typedNumber(text);
    if (text.trim() === "") return 1;
    if (typed.kind === "none" || typed.number < STRETCH.min || typed.number > STRETCH.max)
      issues.push({ field, kind: "no-stretch", ...STRETCH });
    else if (typed.decimals > MOST_DECIMALS)
      issues.push({ field, kind: "too-many-decimals", decimals: MOST_DECIMALS });
    return typed.kind === "number" ? typed.number : 1;
  };
  const correction = { x: read("x"), y: read("y") };
  return issues.length > 0 ? { issues } : { correction };
}
