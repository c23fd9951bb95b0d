/** The sheets of a strip, as pages print them: true, on the paper of the keeper's printer. */
import { correctionFor } from "../../../src/print/printer-correction.ts";
import { sheetScene } from "../../../src/print/sheets/sheet-scene.ts";
import { stripSheets } from "../../../src/print/sheets/strip-sheets.ts";
import type { Strip } from "../../../src/strip/strip.ts";
import { type Printer, paperPage } from "./paper-page.ts";
import type { PrintOut } from "./print-drawings.ts";
import type { Draw } from "./show-drawing.ts";

/** The sheets of `strip.pdf`, as drawings. */
export function stripPrintOut(strip: Strip, { paper, correction }: Printer, draw: Draw): PrintOut {
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
