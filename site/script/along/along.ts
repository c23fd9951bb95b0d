/** The script of a pattern's page: its drawing stroke by stroke, what the drawing shows, and its marks to copy. */
import { openDevice } from "../page/device.ts";
import { bindCopying } from "./copy-marks.ts";
import { startAlong } from "./start-along.ts";
import { bindSwitches } from "./switches.ts";

const device = openDevice(() => localStorage);
bindSwitches(document, device);
bindCopying(document);
startAlong(window, device);
