/** A line of text on paper: at its anchor, turned, in as many fonts as its characters need. */
import type { TextMark } from "../../../draw/scene.ts";
import type { Style } from "../../../draw/style/role-style.ts";
import type { TextWeight } from "../../../draw/text-width.ts";
import { type FontRun, fontRuns } from "../font/font-runs.ts";
import { missingGlyphOf } from "../font/missing-shape.ts";
import { decimal } from "./operators.ts";
import type { PdfWriter } from "./pdf-writer.ts";

/** Writes a mark in the colour that holds. Characters that no font has become boxes. */
export function writeText(writer: PdfWriter, mark: TextMark, { weight }: Style): void {
  const { pdf, fonts } = writer;
  const { size, turn = 0 } = mark;
  const runs = fontRuns(mark.text, weight, fonts).map((run) => {
    return { ...run, width: widthOf(writer, run, { size, weight }) };
  });
  let x = -ANCHORS[mark.anchor] * runs.reduce((sum, { width }) => sum + width, 0);
  pdf.save().translate(mark.x, mark.y);
  if (turn !== 0) pdf.rotate(turn);
  for (const run of runs) {
    if (takeFont(writer, run, { size, weight })) pdf.text(run.text, x, 0, ON_BASELINE);
    else writeMissing(writer, run, { x, size });
    x += run.width;
  }
  pdf.restore();
}

/** Which part of the width lies before the anchor. */
const ANCHORS = { start: 0, middle: 0.5, end: 1 } as const;

const ON_BASELINE = { lineBreak: false, baseline: "alphabetic" } as const;

interface Type {
  readonly size: number;
  readonly weight: TextWeight;
}

/** Is there a font for the run? Then it is the document's from now on. */
function takeFont({ pdf, fonts }: PdfWriter, run: FontRun, { size, weight }: Type): boolean {
  const font = run.font === undefined ? undefined : fonts[weight][run.font];
  if (font) pdf.font(font.face(), `${weight} ${run.font}`, size);
  return font !== undefined;
}

function widthOf(writer: PdfWriter, run: FontRun, type: Type): number {
  if (takeFont(writer, run, type)) return writer.pdf.widthOfString(run.text);
  const widths = [...run.text].map((character) => missingGlyphOf(character).width);
  return (widths.reduce((sum, width) => sum + width, 0) / 1000) * type.size;
}

function writeMissing(
  { pdf, missing }: PdfWriter,
  { text, isRightToLeft }: FontRun,
  { x, size }: { readonly x: number; readonly size: number },
): void {
  const characters = [...text];
  if (isRightToLeft) characters.reverse();
  let along = x;
  for (const { name, codes, width } of missing.parts(characters.join(""))) {
    // The page counts downwards, so letters are turned over.
    const place = `1 0 0 -1 ${decimal(along)} 0 Tm`;
    pdf.addContent(`BT /${name} ${decimal(size)} Tf ${place} ${codes} Tj ET`);
    along += width * size;
  }
}
