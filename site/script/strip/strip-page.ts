/** A strip's page in the book: prints its sheets for the keeper's own printer, whichever way it is told to print. */
import { sayPrinting } from "../../../src/issue/words/sheet-words.ts";
import type { Strip } from "../../../src/strip/strip.ts";
import { openDevice } from "../device/device.ts";
import { keepPaper, keptPaper, keptPrinter } from "../device/kept-printer.ts";
import { ownAddress } from "../ui/load-script.ts";
import { partOf, theOne } from "../ui/parts.ts";
import { openPrinting } from "../ui/print-drawings.ts";
import { openDraw } from "../ui/show-drawing.ts";
import { stripPrintOut } from "../ui/strip-print-out.ts";

const device = openDevice(window, ownAddress());
const draw = openDraw(window);
const strip: Strip = JSON.parse(theOne(document, "#strip-parts", HTMLScriptElement).text);
const select = theOne(document, "#sheet", HTMLSelectElement);
const words = partOf(document, "printing-words");
const paper = () => (select.value === "letter" ? "letter" : "A4");
const show = () => {
  words.textContent = sayPrinting(paper(), keptPrinter(device));
};

select.value = keptPaper(device);
select.addEventListener("change", () => {
  keepPaper(device, paper());
  show();
});
device.subscribe("printer", show);
show();
partOf(document, "printing").hidden = false;
openPrinting(window, () =>
  stripPrintOut(strip, { paper: paper(), correction: keptPrinter(device) }, draw),
);
