/** What the part that makes the strip of a set-up gives to its page, once it is loaded. */
import type { Scene } from "../../../../src/draw/scene.ts";
import type { Notebook } from "../../../../src/notebook/notebook.ts";
import type { Setup } from "../../../../src/setup/setup.ts";
import type { Strip } from "../../../../src/strip/strip.ts";
import type { LeftOutLine } from "../../../../src/view/setup/setup-view.ts";
import type { stripPrintOut, stripTitle } from "../../ui/strip-print-out.ts";

export interface SetupStripPart {
  setupStrip(setup: Setup, notebook: Notebook): Strip;
  stripScene(strip: Strip): Scene;
  stripLeftOutLines(strip: Strip): readonly LeftOutLine[];
  readonly stripPrintOut: typeof stripPrintOut;
  readonly stripTitle: typeof stripTitle;
}

declare global {
  interface Window {
    readonly spanbookSetupStrip?: SetupStripPart;
  }
}

/** The part, loaded if it is not there yet. Rejects where its script cannot be loaded. */
export async function setupStripPart(
  window: Window,
  load: (name: string) => Promise<void>,
): Promise<SetupStripPart> {
  await load("setup-strip.js");
  if (window.spanbookSetupStrip) return window.spanbookSetupStrip;
  throw new Error("the part that makes the strip is not what was expected");
}
