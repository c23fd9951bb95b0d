/** The part that makes, draws and prints the strip of a set-up: loaded once there are pages, since it is a third of all that they need. */
import { stripScene } from "../../../../src/draw/strip/strip-scene.ts";
import { setupStrip } from "../../../../src/setup/setup-strip.ts";
import { stripLeftOutLines } from "../../../../src/view/setup/strip-left-out.ts";
import { stripPrintOut, stripTitle } from "../../ui/strip-print-out.ts";
import type { SetupStripPart } from "./setup-strip-part.ts";

const part: SetupStripPart = {
  setupStrip,
  stripScene,
  stripLeftOutLines,
  stripPrintOut,
  stripTitle,
};

Object.assign(window, { spanbookSetupStrip: part });
