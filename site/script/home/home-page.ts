/** The front page: asks for a notebook's numbers once, and answers how it divides. */
import { sayAddressIssue } from "../../../src/issue/words/say-address-issue.ts";
import { entrySource } from "../../../src/recipe/strip-entry-source.ts";
import {
  type Asked,
  readDivisionAddress,
  writeDivisionAddress,
} from "../../../src/view/address/division-address.ts";
import { writeAddress } from "../../../src/view/address/hash-params.ts";
import { notebookEntries } from "../../../src/view/address/notebook-address.ts";
import { USUAL_DIVISION } from "../../../src/view/division/division.ts";
import { USUAL_FIELDS } from "../../../src/view/fields/notebook-fields.ts";
import { readFields } from "../../../src/view/fields/read-notebook-fields.ts";
import { plainDivision } from "../../../src/view/strip/plain-division.ts";
import { bindAddToStrip } from "../app/add-to-strip.ts";
import { bindAddress, TYPING_REST_MS } from "../app/bind-address.ts";
import { pagePrintOut } from "../app/print.ts";
import { openDevice } from "../device/device.ts";
import { keptText } from "../device/kept-entry.ts";
import { keptPaper, keptPrinter } from "../device/kept-printer.ts";
import { keepMine } from "../device/my-notebook.ts";
import { addToMyStrip } from "../device/my-strip.ts";
import { openQueue } from "../ui/idle-queue.ts";
import { ownAddress, scriptLoader } from "../ui/load-script.ts";
import { openNotice } from "../ui/notice.ts";
import { onPress, partOf, theOne } from "../ui/parts.ts";
import { openPrinting } from "../ui/print-drawings.ts";
import { openDraw } from "../ui/show-drawing.ts";
import { bindDivisionTable } from "./division-table.ts";
import { bindHomeForm } from "./home-form.ts";
import { openHomeStore } from "./home-store.ts";
import { bindHomeCards } from "./own-cards.ts";
import { bindDivision } from "./show-division.ts";
import { bindToday } from "./show-today.ts";

const own = ownAddress();
const device = openDevice(window, own);
const part = partOf(document, "division");
const moreAsked = theOne(document, '[data-part="more-asked"]', HTMLDetailsElement);
const notice = openNotice(document);
const store = openHomeStore({ notebook: firstNotebook(), division: USUAL_DIVISION });
const draw = openDraw(window);

bindHomeForm(part, store);
bindDivisionTable(document, store);
bindDivision(document, store, draw);
bindToday(window, store, { draw, queue: openQueue(window) });
for (const one of document.querySelectorAll("[data-enhance]")) one.removeAttribute("data-enhance");

const followCards = bindHomeCards(window, device, scriptLoader(own));
const print = openPrinting(window);
onPress(document, "print-division", () => {
  const { worked, notebook } = store.state();
  const printer = { paper: keptPaper(device), correction: keptPrinter(device) };
  print(pagePrintOut({ ...worked, notebook }, printer, draw));
});

bindAddToStrip(document, () => {
  const { axis, ...division } = store.state().asked.division;
  return addToMyStrip(device, { [axis]: entrySource(plainDivision(axis, division), axis) });
});

const readAddress = bindAddress(window, store, {
  restMs: TYPING_REST_MS,
  write: ({ asked }, before) => (asked === before.asked ? undefined : writeDivisionAddress(asked)),
  written: ({ asked: { notebook } }, before) => {
    notice.clear();
    if (notebook === before.asked.notebook) return;
    keepMine(document, device, writeAddress(notebookEntries(notebook)));
    followCards();
  },
  read: (hash, take) => {
    const reading = readDivisionAddress(hash);
    if (!reading.ok) notice.broken(sayAddressIssue(reading.issue), "What was shown before stays.");
    else if (Object.keys(reading.value).length > 0) take(() => store.update(reading.value));
    // What an address asks is to be seen, and can be changed there.
    if (reading.ok && reading.value.division) moreAsked.open = true;
  },
});
readAddress();

/** The kept notebook, else the book's first, else a usual one. */
function firstNotebook(): Asked["notebook"] {
  for (const address of [keptText(device, "notebook"), part.dataset.address]) {
    const reading = readDivisionAddress(address ?? "");
    if (reading.ok && reading.value.notebook) return reading.value.notebook;
  }
  const usual = readFields(USUAL_FIELDS);
  if (usual.ok) return usual.value;
  throw new Error("the usual notebook is not all right");
}
