/** A drawing as a sheet of paper, corrected as the keeper's printer needs it. */
import type { Scene } from "../../../src/draw/scene.ts";
import type { PrinterCorrection } from "../../../src/print/printer-correction.ts";
import type { PrinterPaper } from "../../../src/print/sheets/printer-paper.ts";
import { makeElement } from "./make-element.ts";
import type { Draw } from "./show-drawing.ts";

/** The keeper's printer. */
export interface Printer {
  readonly paper: PrinterPaper;
  readonly correction: PrinterCorrection;
}

/** The sheet, in true size once it is printed. */
export function paperPage(scene: Scene, { x, y }: PrinterCorrection, draw: Draw): HTMLElement {
  const page = makeElement("div", { class: "out-sheet" });
  draw.show(page, scene);
  const svg = page.querySelector("svg");
  svg?.setAttribute("width", `${scene.frame.width * x}mm`);
  svg?.setAttribute("height", `${scene.frame.height * y}mm`);
  svg?.setAttribute("preserveAspectRatio", "none");
  return page;
}
