/** Which sheets the printer takes and how it is corrected: filled in once, and kept on the device. */
import type { PrinterCorrection } from "../../../src/print/printer-correction.ts";
import type { PrinterPaper } from "../../../src/print/sheets/printer-paper.ts";
import type { Device } from "../device/device.ts";
import { keepPrinter, keptPrinter, readPrinterCorrection } from "../device/kept-printer.ts";
import { fieldOf, fillForm, readForm, showErrors } from "../ui/form.ts";
import { theOne } from "../ui/parts.ts";
import type { FitStore } from "./fit-store.ts";

export interface Printer {
  readonly paper: PrinterPaper;
  readonly correction: PrinterCorrection;
}

/** Asks for the printer as it is filled in; of a field that will not do, what was there before. */
export function bindPrinterForm(page: ParentNode, store: FitStore, device: Device): () => Printer {
  const form = theOne(page, '[data-part="printer"]', HTMLFormElement);
  let correction = keptPrinter(device);
  fillForm(form, { x: `${correction.x}`, y: `${correction.y}` });
  device.subscribe("printer", () => {
    correction = keptPrinter(device);
    fillForm(form, { x: `${correction.x}`, y: `${correction.y}` });
    showErrors(form, []);
    store.setErrors("printer", []);
  });
  form.addEventListener("submit", (event) => event.preventDefault());
  form.addEventListener("input", () => {
    const reading = readPrinterCorrection(readForm(form, ["x", "y"]));
    const issues = "issues" in reading ? reading.issues : [];
    showErrors(form, issues);
    store.setErrors("printer", issues);
    if ("issues" in reading) return;
    correction = reading.correction;
    keepPrinter(device, correction);
  });
  return () => ({ paper: fieldOf(form, "sheet").value === "letter" ? "letter" : "A4", correction });
}
