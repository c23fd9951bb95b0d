/** Marks on a photo of the test sheet what was measured in it: the card's sides, the bars with their ends, and the dots. */
import type { BarMarks } from "../../../../src/photo/bars-found.ts";
import type { PhotoPoint } from "../../../../src/photo/grey.ts";
import { inkTwice } from "../photo/mark-dots.ts";

/** A dot's ring and the cross of a bar's end, in parts of the photo's width. */
const DOT = 1 / 400;
const END = 1 / 60;

/** Draws over the photo that the canvas has. */
export function markBars(
  canvas: HTMLCanvasElement,
  { dots, sides, bars }: Pick<BarMarks, "dots" | "sides"> & Partial<Pick<BarMarks, "bars">>,
): void {
  const path = new Path2D();
  const size = canvas.width;
  for (const dot of dots) {
    const { x, y } = corner(dot);
    path.moveTo(x + size * DOT, y);
    path.arc(x, y, size * DOT, 0, 2 * Math.PI);
  }
  for (const [from, to] of [...sides, ...Object.values(bars ?? {})]) addLine(path, from, to);
  for (const [from, to] of Object.values(bars ?? {}))
    for (const end of [from, to]) addEnd(path, end, { from, to, size: size * END });
  inkTwice(canvas, path);
}

/** A photo's points are middles of pixels, a canvas's their corners. */
function corner({ x, y }: PhotoPoint): PhotoPoint {
  return { x: x + 0.5, y: y + 0.5 };
}

function addLine(path: Path2D, from: PhotoPoint, to: PhotoPoint): void {
  const [start, end] = [corner(from), corner(to)];
  path.moveTo(start.x, start.y);
  path.lineTo(end.x, end.y);
}

/** A stroke across the bar. */
function addEnd(
  path: Path2D,
  at: PhotoPoint,
  { from, to, size }: { readonly from: PhotoPoint; readonly to: PhotoPoint; readonly size: number },
): void {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const [x, y] = [(size * (to.y - from.y)) / length, (size * (from.x - to.x)) / length];
  addLine(path, { x: at.x - x, y: at.y - y }, { x: at.x + x, y: at.y + y });
}
