/** Lines and outlines on paper. */
import type { Ink } from "../draw/ink.ts";
import type { PathMark } from "../draw/scene.ts";
import type { PaperPen } from "./paper-pen.ts";

/** Draws a mark in its look: fill below, stroke on top. */
export function drawPath({ pdf }: PaperPen, { d }: PathMark, ink: Ink): void {
  const { stroke, fill, width, cap, join, dash = [] } = ink;
  const hasStroke = stroke !== "none" && width > 0;
  if (hasStroke) pdf.lineWidth(width).lineCap(cap).lineJoin(join).addContent(dashOperator(dash));
  if (hasStroke && fill !== "none") pdf.path(d).fillAndStroke(fill, stroke);
  else if (hasStroke) pdf.path(d).stroke(stroke);
  else if (fill !== "none") pdf.path(d).fill(fill);
}

/** PDFKit's own `dash` refuses the length 0 with which a round cap makes a dot (ISO 32000-1, 8.4.3.6). */
function dashOperator(dash: readonly number[]): string {
  return `[${dash.join(" ")}] 0 d`;
}
