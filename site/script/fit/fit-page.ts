/** The fit page: puts its parts together. */

import { bookShelf } from "../../../src/view/catalogue.ts";
import { startFit } from "../app/initial-state.ts";
import { openDevice } from "../device/device.ts";
import { keepParts } from "../offline/prefetch-scripts.ts";
import { openQueue } from "../ui/idle-queue.ts";
import { ownAddress, scriptLoader } from "../ui/load-script.ts";
import { partOf, wakePart } from "../ui/parts.ts";
import { openDraw } from "../ui/show-drawing.ts";
import { openStatus } from "../ui/status.ts";
import { bindKeeping } from "./bind-files.ts";
import { keepFit } from "./bind-fit-address.ts";
import { bindHolding, bindSaving } from "./bind-saving.ts";
import { openBench } from "./fit-store.ts";
import { bindNotebookForm } from "./notebook-form.ts";
import { bindPrinterForm } from "./printer-form.ts";
import { bindCards } from "./show-cards.ts";
import { bindProposal } from "./show-counting.ts";
import { bindDrawAlong } from "./show-draw-along.ts";
import { bindNotebookPicture } from "./show-notebook.ts";
import { bindPage } from "./show-pattern.ts";
import { bindStrip } from "./show-strip.ts";
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
