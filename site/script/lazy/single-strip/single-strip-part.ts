/** What the part that makes the strip of one layout gives to its page, once it is loaded. */
import type { stripScene } from "../../../../src/draw/strip/strip-scene.ts";
import type { buildSingleStrip } from "../../../../src/strip/single-strip.ts";
import type { stripPrintOut, stripTitle } from "../../ui/strip-print-out.ts";

export interface SingleStripPart {
  readonly buildSingleStrip: typeof buildSingleStrip;
  readonly stripScene: typeof stripScene;
  readonly stripPrintOut: typeof stripPrintOut;
  readonly stripTitle: typeof stripTitle;
}

declare global {
  interface Window {
    readonly spanbookSingleStrip?: SingleStripPart;
  }
}

/** The part, loaded if it is not there yet. Rejects where its script cannot be loaded. */
export async function singleStripPart(
  window: Window,
  load: (name: string) => Promise<void>,
): Promise<SingleStripPart> {
  await load("single-strip.js");
  if (window.spanbookSingleStrip) return window.spanbookSingleStrip;
  throw new Error("the part that makes the strip is not what was expected");
}
