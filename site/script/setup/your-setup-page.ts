/** The page of the keeper's set-up: puts its parts together. */

import type { Setup } from "../../../src/setup/setup.ts";
import { withoutPlaces } from "../../../src/view/address/setup-address.ts";
import { openCatalogue } from "../../../src/view/catalogue.ts";
import { ownTicksName } from "../../../src/view/setup/ticks.ts";
import { keptLayouts } from "../app/kept-layouts.ts";
import { bindFileField } from "../app/open-file-field.ts";
import { bindPrinterForm } from "../app/printer-form.ts";
import { openDevice } from "../device/device.ts";
import { subscribeFiles } from "../device/kept-files.ts";
import { keepParts } from "../offline/prefetch-scripts.ts";
import { openQueue } from "../ui/idle-queue.ts";
import { ownAddress, scriptLoader } from "../ui/load-script.ts";
import { enhancePart, partOf } from "../ui/parts.ts";
import { openDraw } from "../ui/show-drawing.ts";
import { openStatus } from "../ui/status.ts";
import { bindAddForm } from "./add-form.ts";
import { bindRoute } from "./bind-route.ts";
import { bindDisabling, bindSaving } from "./bind-saving.ts";
import { bindSetupAddress } from "./bind-setup-address.ts";
import { bindTicks } from "./bind-ticks.ts";
import { bindCopyContents } from "./copy-contents.ts";
import { bindDaysForm } from "./days-form.ts";
import { bindFieldsForm } from "./fields-form.ts";
import { bindPageList } from "./page-list.ts";
import { openSetupStore } from "./setup-store.ts";
import { bindSetup } from "./show-setup.ts";
import { startSetup } from "./start-setup.ts";

const own = ownAddress();
const load = scriptLoader(own);
const catalogue = openCatalogue(window.spanbookContent);
const device = openDevice(window, own);
const start = startSetup(location.hash, device, catalogue);
const queue = openQueue(window);
const store = openSetupStore(catalogue, start.asked, queue);
const draw = openDraw(window);
const say = openStatus(document);

enhancePart(document, "setup-page");
partOf(document, "keep-part").hidden = false;
bindDaysForm(window, store, { device, load, say });
bindFieldsForm(document, store);
bindAddForm(document, store, { say, load });
bindPageList(document, store);
bindDisabling(document, store, say);
const printer = bindPrinterForm(document, device, (issues) => store.setErrors("printer", issues));
const listed = bindTicks(device, {
  list: partOf(document, "layouts"),
  drawn: partOf(document, "drawn"),
  name: () => ownTicksName(store.state().recipe),
});
let drawn: Setup | undefined;
bindSetup(document, store, {
  ...{ draw, queue, load, listed },
  drawn: (setup) => {
    drawn = setup;
  },
});
bindCopyContents(document, say);
bindRoute(partOf(document, "spreads"), device, () => location.href);
bindSaving(document, store, {
  ...{ device, draw, queue, printer, load, say },
  isDrawn: (setup) => setup === drawn,
});
bindFileField(document, {
  ...{ load, say, carried: () => catalogue.carried, kind: "setup" },
  take: ({ setup: { fillPlace: _, datesPlace: __, pagesPlace: ___, ...setup } }) =>
    store.update({ setup: { ...setup, pages: setup.pages.map(withoutPlaces) } }),
});
const showLayouts = () =>
  keptLayouts(window, device, load).then(store.addLayouts, () =>
    say("Your own layouts could not be read: a part of this page is missing."),
  );
void showLayouts();
subscribeFiles(device, () => void showLayouts());
keepParts(window, own, [
  "print.js",
  "reader.js",
  "setup-strip.js",
  "search.js",
  "../patterns/search-index.js",
]);
bindSetupAddress(window, store, { device, start });
