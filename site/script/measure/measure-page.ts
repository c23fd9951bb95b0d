/** The measure page: puts its parts together. */
import { bookShelf } from "../../../src/view/catalogue.ts";
import { openDevice } from "../device/device.ts";
import { wakePart } from "../ui/parts.ts";
import { openDraw } from "../ui/show-drawing.ts";
import { openStatus } from "../ui/status.ts";
import { bindPitch } from "./bind-pitch.ts";
import { bindPrinter } from "./bind-printer.ts";
import { bindScreen } from "./bind-screen.ts";

const shelf = bookShelf(window.spanbookContent);
const device = openDevice(() => localStorage);

wakePart(document, "measures");
bindScreen(document, { device, draw: openDraw(window), shelf });
bindPrinter(document, device, openStatus(document));
if (shelf.recipes.length > 0) bindPitch(document, { device, shelf });
