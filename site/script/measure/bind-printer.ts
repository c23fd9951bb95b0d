/** The printer's correction from the bars that it printed, kept on the device and told for `book.yaml`. */
import { NO_STRETCH, type PrinterCorrection } from "../../../src/print/printer-correction.ts";
import { printerLine, readBars } from "../../../src/view/fields/printed-bars.ts";
import { showPersistence } from "../app/show-persistence.ts";
import type { Device } from "../device/device.ts";
import { keepPrinter, keptPrinter } from "../device/kept-printer.ts";
import { disableButtons } from "../ui/disable-buttons.ts";
import { readForm, showErrors } from "../ui/form.ts";
import { onPress, partOf, theOne } from "../ui/parts.ts";

/** Follows the two lengths; the numbers are kept when that is asked for. */
export function bindPrinter(page: Document, device: Device, say: (words: string) => void): void {
  const form = theOne(page, '[data-part="bars"]', HTMLFormElement);
  const disable = disableButtons(page, say);
  const corrected = theOne(form, "#corrected", HTMLInputElement);
  const [line, kept] = [partOf(page, "printer-line"), partOf(page, "kept-printer")];
  let found: PrinterCorrection = keptPrinter(device);
  const showKept = () => {
    const { x, y } = keptPrinter(device);
    const isTrue = x === 1 && y === 1;
    kept.textContent = isTrue
      ? "On this device no correction is kept: pages print without one."
      : `On this device x ${x} and y ${y} are kept, and pages print with them.`;
    showPersistence(page, device);
    partOf(page, "corrected-field").hidden = isTrue;
    if (isTrue) corrected.checked = false;
  };
  const show = () => {
    const printedWith = corrected.checked ? keptPrinter(device) : NO_STRETCH;
    const reading = readBars(readForm(form, ["x", "y"]), printedWith);
    const issues = reading.ok ? [] : reading.issues;
    showErrors(form, issues);
    disable(form, issues);
    if (reading.ok) found = reading.value;
    line.textContent = reading.ok ? printerLine(found) : "–";
  };
  form.addEventListener("submit", (event) => event.preventDefault());
  form.addEventListener("input", show);
  onPress(page, "keep-printer", () => {
    keepPrinter(device, found);
    if (device.persists()) say(`Kept: pages print with x ${found.x} and y ${found.y} from now on.`);
    showKept();
  });
  onPress(page, "forget-printer", () => {
    keepPrinter(device, NO_STRETCH);
    say("Removed: pages print without a correction.");
    showKept();
  });
  const showAll = () => {
    showKept();
    show();
  };
  device.subscribe("printer", showAll);
  showAll();
}
