/** The fit page: puts its parts together. */

import { bookShelf } from "../../../src/view/catalogue.ts";
import { openDevice } from "../page/device.ts";
import { keepParts } from "../page/keep-parts.ts";
import { ownAddress, scriptLoader } from "../page/load-script.ts";
import { partOf, wakePart } from "../page/parts.ts";
import { openQueue } from "../page/queue.ts";
import { openStatus } from "../page/status.ts";
import { openBench } from "./bench.ts";
import { bindHolding } from "./bind-holding.ts";
import { bindKeeping } from "./bind-keeping.ts";
import { bindSaving } from "./bind-saving.ts";
import { openDraw } from "./draw.ts";
import { keepFit } from "./keep-fit.ts";
import { bindNotebookForm } from "./notebook-form.ts";
import { bindPrinterForm } from "./printer-form.ts";
import { bindDrawAlong } from "./show-along.ts";
import { bindCards } from "./show-cards.ts";
import { bindNotebookPicture } from "./show-notebook.ts";
import { bindPage } from "./show-page.ts";
import { bindProposal } from "./show-proposal.ts";
import { bindStrip } from "./show-strip.ts";
import { startFit } from "./start-fit.ts";
import { bindStripForm } from "./strip-form.ts";

const own = ownAddress();
const load = scriptLoader(own);
const shelf = bookShelf(window.spanbookContent);
if (shelf.recipes.length > 0) openPage();
else partOf(document, "bench").hidden = true;

function openPage(): void {
  const device = openDevice(() => localStorage);
  const start = startFit(location.hash, device, shelf);
  const bench = openBench(shelf, start.fit);
  const [draw, queue] = [openDraw(window), openQueue(window)];
  wakePart(document, "bench");
  for (const name of ["cards-part", "strip-part", "keep-part"]) {
    partOf(document, name).hidden = false;
  }
  bindNotebookForm(document, bench);
  bindNotebookPicture(document, bench, { draw, queue });
  bindProposal(document, bench);
  bindPage(document, bench, { draw, queue });
  bindDrawAlong(window, bench, { queue, device });
  bindStrip(document, bench, { draw, queue });
  bindStripForm(document, bench);
  bindCards(document, bench, { draw, queue, toDrawing });
  const say = openStatus(document);
  bindHolding(document, bench, say);
  const printer = bindPrinterForm(document, bench, device);
  bindSaving(document, bench, { draw, printer, load, say });
  bindKeeping(document, bench, { device, load, say });
  keepParts(window, own, ["print.js", "reader.js"]);
  keepFit(window, bench, { device, start });
}

/** The chosen pattern's field, with the drawing below it. */
function toDrawing(): void {
  const field = document.getElementById("pattern");
  field?.scrollIntoView({ block: "start" });
  field?.focus({ preventScroll: true });
}
