/** A line of text on paper: at its anchor, turned, in as many fonts as its characters need. */
import type { Ink } from "../draw/ink.ts";
import type { TextMark } from "../draw/scene.ts";
import { type FontRun, fontRuns } from "./font-runs.ts";
import type { PaperPen } from "./paper-pen.ts";
import type { Weight } from "./print-fonts.ts";

/** Writes a mark in its look. Characters that no font has become boxes. */
export function drawText(pen: PaperPen, mark: TextMark, { text: colour, weight }: Ink): void {
  const { pdf, fonts } = pen;
  const runs = fontRuns(mark.text, weight, fonts).map((run) => placedRun(pen, run, mark, weight));
  const width = runs.reduce((sum, run) => sum + run.width, 0);
  let x = mark.x - width * anchorShare(mark.anchor);
  const turn = mark.turn ?? 0;
  if (turn !== 0) pdf.save().rotate(turn, { origin: [mark.x, mark.y] });
  pdf.fillColor(colour);
  for (const run of runs) {
    run.write(x);
    x += run.width;
  }
  if (turn !== 0) pdf.restore();
}

/** Which part of the width lies before the anchor. */
function anchorShare(anchor: TextMark["anchor"]): number {
  if (anchor === "middle") return 0.5;
  return anchor === "end" ? 1 : 0;
}

interface PlacedRun {
  readonly width: number;
  readonly write: (x: number) => void;
}

function placedRun(pen: PaperPen, run: FontRun, mark: TextMark, weight: Weight): PlacedRun {
  if (run.font === undefined) return missingRun(pen, run, mark);
  const { pdf } = pen;
  const name = fontName(weight, run.font);
  const { size, y } = mark;
  const select = () => pdf.font(name).fontSize(size);
  return {
    width: select().widthOfString(run.text),
    write(x) {
      select().text(run.text, x, y, { lineBreak: false, baseline: "alphabetic" });
    },
  };
}

/** The name under which a document knows a font. */
export function fontName(weight: Weight, index: number): string {
  return `${weight}-${index}`;
}

/** Boxes, from the right where the text runs that way. The page counts downwards, so each is turned over. */
function missingRun({ pdf, missing }: PaperPen, run: FontRun, { size, y }: TextMark): PlacedRun {
  const parts = [...missing.parts(run.text)];
  if (run.isRightToLeft) parts.reverse();
  return {
    width: parts.reduce((sum, part) => sum + part.width * size, 0),
    write(start) {
      let x = start;
      for (const { font, name, codes, width } of parts) {
        pdf.page.fonts[name] = font;
        pdf.save().transform(1, 0, 0, -1, x, y);
        pdf.addContent(`BT /${name} ${size} Tf ${codes} Tj ET`).restore();
        x += width * size;
      }
    },
  };
}
