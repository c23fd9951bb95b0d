/** The page of the keeper's strip: puts its parts together. */
import { AXES } from "../../../src/measure/axis.ts";
import { openCatalogue } from "../../../src/view/catalogue.ts";
import { bindFileField } from "../app/open-file-field.ts";
import { openOwnLayouts } from "../app/own-layouts.ts";
import { bindPrinterForm } from "../app/printer-form.ts";
import { namesWith, type StartLayouts, startStrip } from "../app/start-strip.ts";
import { openDevice } from "../device/device.ts";
import { keepParts } from "../offline/prefetch-scripts.ts";
import { openQueue } from "../ui/idle-queue.ts";
import { ownAddress, scriptLoader } from "../ui/load-script.ts";
import { enhancePart, partOf, theOne } from "../ui/parts.ts";
import { openDraw } from "../ui/show-drawing.ts";
import { openStatus } from "../ui/status.ts";
import { bindAddForm } from "./add-form.ts";
import { bindDisabling, bindSaving } from "./bind-saving.ts";
import { bindStripAddress } from "./bind-strip-address.ts";
import { bindMakingForm } from "./making-form.ts";
import { bindStrip } from "./show-strip.ts";
import { bindSideList } from "./side-list.ts";
import { openStripStore } from "./strip-store.ts";
import { bindUses } from "./uses-form.ts";

const own = ownAddress();
const load = scriptLoader(own);
const catalogue = openCatalogue(window.spanbookContent);
const device = openDevice(window, own);
const layouts = openOwnLayouts(window, { device, catalogue, load });
void openPage();

/** Without the part that reads them, the page goes on without layouts of one's own. */
async function startLayouts(): Promise<StartLayouts> {
  try {
    const [carried, kept] = await Promise.all([layouts.carriedBy(location.hash), layouts.kept()]);
    return { carried, kept };
  } catch (error) {
    console.error(error);
    return { carried: [], kept: [] };
  }
}

async function openPage(): Promise<void> {
  const found = await startLayouts();
  const start = startStrip(location.hash, device, catalogue, found);
  const store = openStripStore(catalogue, start.asked);
  const [draw, queue] = [openDraw(window), openQueue(window)];
  const say = openStatus(document);

  enhancePart(document, "strip-page");
  partOf(document, "keep-part").hidden = false;
  for (const axis of AXES)
    bindSideList(theOne(document, `[data-side="${axis}"]`, HTMLElement), axis, store);
  bindUses(document, store);
  bindMakingForm(document, store);
  bindAddForm(document, store, { say, load });
  bindDisabling(document, store, say);
  const printer = bindPrinterForm(document, device, (issues) => store.setErrors("printer", issues));
  bindStrip(document, store, { draw, queue, printer });
  bindSaving(document, store, { draw, printer, load, say });
  bindFileField(document, {
    load,
    say,
    carried: () => namesWith(catalogue, store.state().asked.own ?? []),
    kind: "strip",
    take: ({ strip }) => store.update({ strip }),
  });
  keepParts(window, own, ["print.js", "reader.js", "search.js", "../patterns/search-index.js"]);
  bindStripAddress(window, store, { device, start, layouts, kept: found.kept });
}
