/** The measure page: puts its parts together. */
import { openCatalogue } from "../../../src/view/catalogue.ts";
import { openDevice } from "../device/device.ts";
import { ownAddress } from "../ui/load-script.ts";
import { enhancePart } from "../ui/parts.ts";
import { openDraw } from "../ui/show-drawing.ts";
import { openStatus } from "../ui/status.ts";
import { bindPitch } from "./bind-pitch.ts";
import { bindPrinter } from "./bind-printer.ts";
import { bindScreen } from "./bind-screen.ts";

const catalogue = openCatalogue(window.spanbookContent);
const device = openDevice(window, ownAddress());

enhancePart(document, "measures");
bindScreen(document, { device, draw: openDraw(window), catalogue });
bindPrinter(document, device, openStatus(document));
if (catalogue.recipes.length > 0) bindPitch(document, { device, catalogue });
