/** The measure page: puts its parts together. */
import { openCatalogue } from "../../../src/view/catalogue.ts";
import { openDevice } from "../device/device.ts";
import { keepParts } from "../offline/prefetch-scripts.ts";
import { ownAddress, scriptLoader } from "../ui/load-script.ts";
import { enhancePart } from "../ui/parts.ts";
import { openDraw } from "../ui/show-drawing.ts";
import { openStatus } from "../ui/status.ts";
import { bindBarsPhoto } from "./bind-bars-photo.ts";
import { bindPitch } from "./bind-pitch.ts";
import { bindPrinter } from "./bind-printer.ts";
import { bindScreen } from "./bind-screen.ts";

const catalogue = openCatalogue(window.spanbookContent);
const own = ownAddress();
const device = openDevice(window, own);
const say = openStatus(document);

enhancePart(document, "measures");
bindScreen(document, { device, draw: openDraw(window), catalogue });
bindPrinter(document, device, say);
bindBarsPhoto(window, { device, load: scriptLoader(own), say });
if (catalogue.recipes.length > 0) bindPitch(document, { device, catalogue });
keepParts(window, own, ["print.js", "bars.js", "bars-measure.js"]);
