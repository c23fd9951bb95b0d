/** Which sheets the printer takes and how it is corrected: filled in once, and kept on the device. */
import type { FieldIssue } from "../../../src/issue/facts/field-issue.ts";
import type { Device } from "../device/device.ts";
import {
  keepPaper,
  keepPrinter,
  keptPaper,
  keptPrinter,
  readPrinterCorrection,
} from "../device/kept-printer.ts";
import { fillForm, readForm, showErrors } from "../ui/form.ts";
import type { Printer } from "../ui/paper-page.ts";
import { theOne } from "../ui/parts.ts";

/** Asks for the printer as it is filled in; of a field that is not valid, what was there before. */
export function bindPrinterForm(
  page: ParentNode,
  device: Device,
  setErrors: (issues: readonly FieldIssue[]) => void,
): () => Printer {
  const form = theOne(page, '[data-part="printer"]', HTMLFormElement);
  const sheet = theOne(form, "#sheet", HTMLSelectElement);
  const paper = () => (sheet.value === "letter" ? "letter" : "A4");
  let correction = keptPrinter(device);
  const fill = () => {
    fillForm(form, { x: `${correction.x}`, y: `${correction.y}` });
    sheet.value = keptPaper(device);
  };
  fill();
  sheet.addEventListener("change", () => keepPaper(device, paper()));
  device.subscribe("printer", () => {
    correction = keptPrinter(device);
    fill();
    showErrors(form, []);
    setErrors([]);
  });
  form.addEventListener("submit", (event) => event.preventDefault());
  form.addEventListener("input", () => {
    const reading = readPrinterCorrection(readForm(form, ["x", "y"]));
    const issues = "issues" in reading ? reading.issues : [];
    showErrors(form, issues);
    setErrors(issues);
    if ("issues" in reading) return;
    correction = reading.correction;
    keepPrinter(device, correction);
  });
  return () => ({ paper: paper(), correction });
}
