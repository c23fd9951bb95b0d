/** The page of the keeper's set-up: puts its parts together. */

import { layoutsInAddress } from "../../../src/view/address/carried-layouts.ts";
import { withoutPlaces } from "../../../src/view/address/setup-address.ts";
import { openCatalogue } from "../../../src/view/catalogue.ts";
import { eventLines } from "../../../src/view/events/event-lines.ts";
import { ownTicksName } from "../../../src/view/setup/ticks.ts";
import { bindFileField } from "../app/open-file-field.ts";
import { joined, openOwnLayouts } from "../app/own-layouts.ts";
import { bindPrinterForm } from "../app/printer-form.ts";
import { openDevice } from "../device/device.ts";
import { keptText } from "../device/kept-entry.ts";
import { subscribeFiles } from "../device/kept-files.ts";
import { bindOwnDates } from "../draw-along/own-dates.ts";
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
import type { Pictured } from "./show-spreads.ts";
import { startSetup } from "./start-setup.ts";

const own = ownAddress();
const load = scriptLoader(own);
const catalogue = openCatalogue(window.spanbookContent);
const device = openDevice(window, own);
const start = startSetup(location.hash, device, catalogue);
const queue = openQueue(window);
const kept = keptText(device, "setup") ?? "";
const packed = [location.hash, kept].flatMap(layoutsInAddress);
const store = openSetupStore(catalogue, { asked: start.asked, packed }, queue);
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
let drawn: Pictured | undefined;
bindSetup(document, store, {
  ...{ draw, queue, load, listed },
  drawn: (pictured) => {
    drawn = pictured;
  },
});
const dates = bindOwnDates(window, {
  ...{ device, load },
  changed: () => store.setEvents((range) => dates.eventsIn(range)),
});
store.subscribe(({ recipe, when, events }) =>
  queue.put("own-dates", () => {
    dates.show({ when: { span: recipe.dates }, events: eventLines(events, when.rule) });
    return false;
  }),
);
bindCopyContents(document, say);
bindRoute(partOf(document, "spreads"), device, () => location.href);
bindSaving(document, store, {
  ...{ device, draw, queue, printer, load, say },
  isDrawn: ({ setup, events }) => setup === drawn?.setup && events === drawn?.events,
});
bindFileField(document, {
  ...{ load, say, carried: () => catalogue.carried, kind: "setup" },
  take: ({ setup: { fillPlace: _, datesPlace: __, pagesPlace: ___, ...setup } }) =>
    store.update({ setup: { ...setup, pages: setup.pages.map(withoutPlaces) } }),
});
const layouts = openOwnLayouts(window, { device, catalogue, load });
let address = location.hash;
const showLayouts = () =>
  Promise.all([layouts.carriedBy(address), layouts.kept()]).then(
    ([carried, kept]) => store.addLayouts(joined(carried, kept)),
    () => say("Your own layouts could not be read: a part of this page is missing."),
  );
void showLayouts();
subscribeFiles(device, () => void showLayouts());
keepParts(window, own, [
  "print.js",
  "reader.js",
  "setup-strip.js",
  "search.js",
  "calendar.js",
  "../patterns/search-index.js",
]);
bindSetupAddress(window, store, {
  ...{ device, start },
  bring: (hash) => {
    if (layoutsInAddress(hash).length === 0) return;
    address = hash;
    void showLayouts();
  },
});
