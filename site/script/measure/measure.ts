/** The measure page: puts its parts together. */
import { bookShelf } from "../../../src/view/catalogue.ts";
import { openDraw } from "../fit/draw.ts";
import { openDevice } from "../page/device.ts";
import { wakePart } from "../page/parts.ts";
import { openStatus } from "../page/status.ts";
import { bindPitch } from "./bind-pitch.ts";
import { bindPrinter } from "./bind-printer.ts";
import { bindScreen } from "./bind-screen.ts";

const shelf = bookShelf(window.spanbookContent);
const device = openDevice(() => localStorage);

wakePart(document, "measures");
bindScreen(document, { device, draw: openDraw(window), shelf });
bindPrinter(document, device, openStatus(document));
if (shelf.recipes.length > 0) bindPitch(document, { device, shelf });
