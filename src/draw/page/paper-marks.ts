/** The sheet itself: its outline, its bound side and its margins. */
import { type Axis, otherAxis } from "../../measure/axis.ts";
import type { PageSide, PaperSide } from "../../measure/paper-side.ts";
import type { Binding } from "../../notebook/notebook.ts";
import { sideOfKey } from "../../recipe/margin-sides.ts";
import { lineAlong } from "../geometry/on-axis.ts";
import { rectData } from "../geometry/path-data.ts";
import { type Interval, intervalAlong, type Rect } from "../geometry/rect.ts";
import type { PathMark } from "../scene.ts";

/** From the bound edge to its stitches, and from a corner to the first of them, in millimetres. */
const STITCHES = { inset: 0.6, start: 3 };

/** A filled rectangle: the ground under the drawing, or a sheet. */
export function sheetMark(role: "ground" | "paper", rect: Rect): PathMark {
  return { kind: "path", role, d: rectData(rect.x, rect.y, rect.width, rect.height) };
}

/** Stitches along the bound side of a sheet; nothing for loose sheets. */
export function bindingMarks(paper: Rect, binding: Binding, side: PageSide): readonly PathMark[] {
  if (binding === "none") return [];
  const bound = sideOfKey("inner", binding, side);
  const axis: Axis = bound === "top" || bound === "bottom" ? "across" : "down";
  const { from, to } = intervalAlong(paper, axis);
  const seam: Interval = { from: from + STITCHES.start, to: to - STITCHES.start };
  return [{ kind: "path", role: "binding", d: lineAlong(axis, seam, seamAt(paper, bound)) }];
}

function seamAt(paper: Rect, bound: PaperSide): number {
  const axis = bound === "top" || bound === "bottom" ? "across" : "down";
  const { from, to } = intervalAlong(paper, otherAxis(axis));
  return bound === "left" || bound === "top" ? from + STITCHES.inset : to - STITCHES.inset;
}
