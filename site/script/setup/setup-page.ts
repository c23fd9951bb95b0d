/** A set-up's page in the book: its list is ticked while one draws, and its contents are copied. */
import { openDevice } from "../device/device.ts";
import { ownAddress } from "../ui/load-script.ts";
import { partOf, theOne } from "../ui/parts.ts";
import { openStatus } from "../ui/status.ts";
import { bindRoute } from "./bind-route.ts";
import { bindTicks } from "./bind-ticks.ts";
import { bindCopyContents } from "./copy-contents.ts";

const device = openDevice(window, ownAddress());
const list = theOne(document, "[data-setup]", HTMLElement);
const drawn = partOf(document, "drawn");
bindTicks(device, { list, drawn, name: () => list.dataset.setup ?? "" })();
bindCopyContents(document, openStatus(document));
bindRoute(theOne(document, ".spreads", HTMLElement), device, () =>
  location.href.replace(/#.*$/, ""),
);
