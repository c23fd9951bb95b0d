/** What pages of patterns print, one way for all: true, on the paper of the keeper's printer, corrected as it needs, and said so. */
import { gridScene } from "../../../src/draw/page/grid-scene.ts";
import { pageScene } from "../../../src/draw/page/page-scene.ts";
import { thumbnailScene } from "../../../src/draw/page/thumbnail-scene.ts";
import type { DatedEvent } from "../../../src/events/events-in.ts";
import { sayPrintLine } from "../../../src/issue/words/sheet-words.ts";
import { toMm } from "../../../src/measure/length.ts";
import type { Notebook } from "../../../src/notebook/notebook.ts";
import { type PaperSize, paperSize, sidewise } from "../../../src/notebook/paper.ts";
import type { Plan } from "../../../src/plan/plan.ts";
import { correctionFor } from "../../../src/print/printer-correction.ts";
import { sheetClass } from "../../../src/print/sheets/css-page.ts";
import type { Recipe } from "../../../src/recipe/recipe.ts";
import { makeElement } from "../ui/make-element.ts";
import { type Printer, paperPage } from "../ui/paper-page.ts";
import type { PrintOut } from "../ui/print-drawings.ts";
import type { Draw } from "../ui/show-drawing.ts";

/** A pattern on a notebook; where it does not fit, the notebook's grid is printed. */
interface PrintedPage {
  readonly plan: Plan;
  readonly recipe: Recipe;
  readonly notebook: Notebook;
  /** On its days, from calendar files. */
  readonly events?: readonly DatedEvent[];
}

/** The drawing with its counts, below a line of 100 mm to check it with. */
export function pagePrintOut(
  { plan, recipe, notebook, events = [] }: PrintedPage,
  { paper, correction }: Printer,
  draw: Draw,
): PrintOut {
  const drawing = { plan, recipe, notebook, events };
  const scene = plan.fits ? pageScene({ ...drawing, plan }) : gridScene(notebook);
  const size: PaperSize = plan.fits
    ? thumbnailScene({ ...drawing, plan }).frame
    : { width: toMm(notebook.axes.across.paper), height: toMm(notebook.axes.down.paper) };
  const sheet = sheetClass(size, scene.frame, paper);
  const factors = correctionFor(sizeOfSheet(sheet), correction);
  const line = makeElement("span", { class: "hundred" }, "100 mm");
  line.style.width = `${100 * factors.x}mm`;
  const said = sayPrintLine(`${recipe.title} · ${notebook.title}`, {
    correction,
    isCropped: sheet.includes("cropped"),
  });
  const page = paperPage(scene, factors, draw);
  page.prepend(makeElement("div", { class: "print-line" }, makeElement("span", {}, said), line));
  page.className = "out-page";
  return { sheet, pages: [page] };
}

/** Only its shape counts: whether it lies on its side in the printer. */
function sizeOfSheet(sheet: string): PaperSize {
  const upright = paperSize("A4");
  return sheet.includes("landscape") ? sidewise(upright) : upright;
}
