/** The file `page.pdf` of a pattern that does not fit: the notebook's bare page, and on it why. */
import { pagePlace } from "../../draw/geometry/page-place.ts";
import { breakLines, LINE_STEP, textBlockMarks } from "../../draw/label/text-block.ts";
import { gridMarks } from "../../draw/page/grid-marks.ts";
import type { TextMark } from "../../draw/scene.ts";
import { sayReason } from "../../issue/words/say-misfit.ts";
import { sayMisfitHeading } from "../../issue/words/sheet-words.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import type { MisfitPlan } from "../../plan/plan.ts";
import type { Recipe } from "../../recipe/recipe.ts";
import type { Sheet } from "../sheets/sheet.ts";
import type { PrintSettings } from "./pdf-files.ts";
import { writePdf } from "./write-pdf.ts";

export interface MisfitQuestion {
  readonly plan: MisfitPlan;
  readonly recipe: Recipe;
  readonly notebook: Notebook;
}

/** From the edges of the paper, in millimetres. */
const MARGIN = 12;
const HEADING = { size: 3.6, after: 2 };
const WORDS = { size: 2.9 };

/** One page of the paper's exact size, so that no link to it leads nowhere. */
export function misfitPdf(question: MisfitQuestion, settings: PrintSettings): Promise<Uint8Array> {
  const { recipe, notebook } = question;
  const title = `${recipe.title} · ${notebook.title}`;
  return writePdf({ ...settings, pages: [misfitSheet(question, title)], title });
}

function misfitSheet({ plan, recipe, notebook }: MisfitQuestion, title: string): Sheet {
  const place = pagePlace(notebook, 0);
  const { width, height } = place.paper;
  const room = width - 2 * MARGIN;
  const heading = sayMisfitHeading(recipe.title, notebook.title);
  const headingLines = breakLines(heading, HEADING.size, room);
  const headingEnd = MARGIN + headingLines.length * HEADING.size * LINE_STEP;
  const lines = breakLines(sayReason(plan), WORDS.size, room);
  const wordsTop = headingEnd + HEADING.after;
  const end = wordsTop + lines.length * WORDS.size * LINE_STEP;
  // Dots keep clear of the words.
  const written = { x: MARGIN - 1, y: MARGIN - 1, width: room + 2, height: end - MARGIN + 2 };
  const write = (texts: readonly string[], role: TextMark["role"], size: number, top: number) =>
    textBlockMarks({ lines: texts, role, size, x: MARGIN, y: top + size });
  return {
    title,
    width,
    height,
    parts: [
      { kind: "artifact", marks: gridMarks(place, notebook.ruling, [written]) },
      { kind: "heading", marks: write(headingLines, "heading", HEADING.size, MARGIN) },
      { kind: "line", marks: write(lines, "label", WORDS.size, wordsTop) },
    ],
  };
}
