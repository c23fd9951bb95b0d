/** The part that makes, draws and lays out the strip of one layout: loaded when somebody asks for it. */
import { stripScene } from "../../../../src/draw/strip/strip-scene.ts";
import { buildSingleStrip } from "../../../../src/strip/single-strip.ts";
import { stripPrintOut, stripTitle } from "../../ui/strip-print-out.ts";
import type { SingleStripPart } from "./single-strip-part.ts";

const part: SingleStripPart = { buildSingleStrip, stripScene, stripPrintOut, stripTitle };

Object.assign(window, { spanbookSingleStrip: part });
