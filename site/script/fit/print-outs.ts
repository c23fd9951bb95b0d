/** What is printed from the page: the strip on its sheets, or the drawn pattern, stretched as the printer needs it. */
import { gridScene } from "../../../src/draw/page/grid-scene.ts";
import { pageScene } from "../../../src/draw/page/page-scene.ts";
import { thumbnailScene } from "../../../src/draw/page/thumbnail-scene.ts";
import type { Scene } from "../../../src/draw/scene.ts";
import { toMm } from "../../../src/measure/length.ts";
import { type PaperSize, paperSize, sidewise } from "../../../src/notebook/paper.ts";
import { correctionFor, type PrinterCorrection } from "../../../src/print/printer-correction.ts";
import { sheetClass } from "../../../src/print/sheets/css-page.ts";
import { sheetScene } from "../../../src/print/sheets/sheet-scene.ts";
import { stripSheets } from "../../../src/print/sheets/strip-sheets.ts";
import type { Strip } from "../../../src/strip/strip.ts";
import { makeElement } from "../ui/make-element.ts";
import type { PrintOut } from "../ui/print-drawings.ts";
import type { Draw } from "../ui/show-drawing.ts";
import type { FitPageState } from "./fit-store.ts";
import type { Printer } from "./printer-form.ts";

/** The sheets of `strip.pdf`, as drawings. */
export function stripPrintOut(
  { strip }: FitPageState,
  { paper, correction }: Printer,
  draw: Draw,
): PrintOut {
  const title = stripTitle(strip);
  const { sheets } = stripSheets({ title, strips: [strip], paper, printer: correction });
  const isWide = sheets.some(({ width, height }) => width > height);
  return {
    sheet: `sheet-${paper.toLowerCase()}${isWide ? "-landscape" : ""}`,
    pages: sheets.map((sheet, index) => {
      const scene = sheetScene(sheet, `sheet-${index + 1}`);
      return paperPage(scene, correctionFor(sheet, correction), draw);
    }),
  };
}

/** What stands above a strip on its sheet, as in the book's own files. */
export function stripTitle({ title, notebook }: Strip): string {
  return `${title} · ${notebook.title}`;
}

/** The drawing with its counts, below a line of 100 mm to check it with. */
export function pagePrintOut(state: FitPageState, { correction }: Printer, draw: Draw): PrintOut {
  const { plan, recipe, notebook } = state;
  const drawing = { plan, recipe, notebook };
  const scene = plan.fits ? pageScene({ ...drawing, plan }) : gridScene(notebook);
  const size: PaperSize = plan.fits
    ? thumbnailScene({ ...drawing, plan }).frame
    : { width: toMm(notebook.axes.across.paper), height: toMm(notebook.axes.down.paper) };
  const sheet = sheetClass(size, scene.frame);
  const factors = correctionFor(sizeOfSheet(sheet), correction);
  const line = makeElement("span", { class: "hundred" }, "100 mm");
  line.style.width = `${100 * factors.x}mm`;
  const heading = makeElement(
    "div",
    { class: "print-line" },
    makeElement("span", {}, `${recipe.title} · ${notebook.title}`),
    line,
  );
  const page = paperPage(scene, factors, draw);
  page.prepend(heading);
  page.className = "out-page";
  return { sheet, pages: [page] };
}

/** Only its shape counts: whether it lies on its side in the printer. */
function sizeOfSheet(sheet: string): PaperSize {
  const upright = paperSize("A4");
  return sheet.includes("landscape") ? sidewise(upright) : upright;
}

function paperPage(scene: Scene, { x, y }: PrinterCorrection, draw: Draw): HTMLElement {
  const page = makeElement("div", { class: "out-sheet" });
  draw.show(page, scene);
  const svg = page.querySelector("svg");
  svg?.setAttribute("width", `${scene.frame.width * x}mm`);
  svg?.setAttribute("height", `${scene.frame.height * y}mm`);
  svg?.setAttribute("preserveAspectRatio", "none");
  return page;
}
