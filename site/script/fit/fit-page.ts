/** The fit page: puts its parts together. */
import { openCatalogue } from "../../../src/view/catalogue.ts";
import { eventLines } from "../../../src/view/events/event-lines.ts";
import { bindAddToStrip } from "../app/add-to-strip.ts";
import { bindDates } from "../app/bind-dates.ts";
import { startFit } from "../app/initial-state.ts";
import { bindPrinterForm } from "../app/printer-form.ts";
import { type Device, openDevice } from "../device/device.ts";
import { bindDrawAlong } from "../draw-along/along-plan.ts";
import { bindOwnDates } from "../draw-along/own-dates.ts";
import { keepParts } from "../offline/prefetch-scripts.ts";
import { openQueue } from "../ui/idle-queue.ts";
import { ownAddress, scriptLoader } from "../ui/load-script.ts";
import { enhancePart, partOf } from "../ui/parts.ts";
import { openDraw } from "../ui/show-drawing.ts";
import { openStatus } from "../ui/status.ts";
import { bindKeeping } from "./bind-files.ts";
import { bindFitAddress } from "./bind-fit-address.ts";
import { bindPhoto } from "./bind-photo.ts";
import { bindDisabling, bindSaving } from "./bind-saving.ts";
import { openCarried } from "./carried-patterns.ts";
import { datesOf, type FitStore, openFitStore, plansOf } from "./fit-store.ts";
import { bindNotebookForm } from "./notebook-form.ts";
import { bindCards } from "./show-cards.ts";
import { bindProposal } from "./show-counting.ts";
import { bindNotebookPicture } from "./show-notebook.ts";
import { bindNotebookTables } from "./show-notebook-tables.ts";
import { bindPage } from "./show-pattern.ts";

const own = ownAddress();
const load = scriptLoader(own);
const catalogue = openCatalogue(window.spanbookContent);
if (catalogue.recipes.length > 0) openPage();
else partOf(document, "fit").hidden = true;

function openPage(): void {
  const device = openDevice(window, own);
  const start = startFit(location.hash, device, catalogue);
  const store = openFitStore(catalogue, start.fit);
  const [draw, queue] = [openDraw(window), openQueue(window)];
  enhancePart(document, "fit");
  for (const name of ["jumps", "cards-part", "printer-part", "keep-part"]) {
    partOf(document, name).hidden = false;
  }
  bindNotebookForm(document, store);
  bindNotebookPicture(document, store, { draw, queue });
  bindProposal(document, store, device);
  const say = openStatus(document);
  bindNotebookTables(window, store, { queue, load, say });
  bindPhoto(window, { load, say });
  bindDates(window, datesOf(store), { load, say });
  bindEvents(store, device);
  bindPage(document, store, { draw, queue });
  bindDrawAlong(window, plansOf(store), { queue, device });
  const strip = openCarried(device);
  bindAddToStrip(document, () => strip.add(store.state().fit.pattern));
  bindCards(document, store, { draw, queue, strip, say, toDrawing });
  bindDisabling(document, store, say);
  const printer = bindPrinterForm(document, device, (issues) => store.setErrors("printer", issues));
  bindSaving(document, store, { draw, printer, load, say });
  bindKeeping(document, store, { load, say });
  keepParts(window, own, [
    "print.js",
    "reader.js",
    "names.js",
    "notebook.js",
    "moon.js",
    "calendar.js",
    "photo.js",
    "photo-count.js",
  ]);
  bindFitAddress(window, store, { device, start });
}

/** The keeper's own dates, for any pattern that has days: what opened calendar files have goes into the store. */
function bindEvents(store: FitStore, device: Device): void {
  const place = partOf(document, "own-dates");
  const changed = () => store.setEvents((range) => dates.eventsIn(range));
  const dates = bindOwnDates(window, { device, load, changed });
  store.subscribe(({ when, events, recipe }) => {
    place.hidden = recipe.dates === undefined;
    dates.show({ when, events: eventLines(events, when.rule) });
  });
}

/** The chosen pattern's field, with the drawing below it. */
function toDrawing(): void {
  const field = document.getElementById("pattern");
  field?.scrollIntoView({ block: "start" });
  field?.focus({ preventScroll: true });
}
