/** Marks on a photo what was seen in it: a ring around each dot, and the grid's border. */
import type { PhotoPoint } from "../../../../src/photo/grey.ts";
import type { PhotoCount } from "../../../../src/photo/photo-count.ts";

/** Seen on paper of any colour; the rim keeps it visible on one like it. */
const RING = "#cf0066";
const RIM = "#fdfaf3";
/** A ring's radius where the step is not known, in pixels. */
const USUAL_RADIUS = 6;

/** Draws over the photo that the canvas has. */
export function markDots(canvas: HTMLCanvasElement, count: PhotoCount): void {
  const context = canvas.getContext("2d");
  if (!context) return;
  const thin = Math.max(1.5, canvas.width / 800);
  const radius = count.ok ? Math.max(3, count.grid.step * 0.3) : USUAL_RADIUS;
  const path = new Path2D();
  for (const { x, y } of count.ok ? count.grid.dots : count.found) addRing(path, { x, y }, radius);
  if (count.ok) path.addPath(border(count.grid.corners));
  for (const [strokeStyle, lineWidth] of [
    [RIM, 2 * thin],
    [RING, thin],
  ] as const) {
    Object.assign(context, { strokeStyle, lineWidth });
    context.stroke(path);
  }
}

/** A photo's points are middles of pixels, a canvas's their corners. */
function addRing(path: Path2D, { x, y }: PhotoPoint, radius: number): void {
  path.moveTo(x + 0.5 + radius, y + 0.5);
  path.arc(x + 0.5, y + 0.5, radius, 0, 2 * Math.PI);
}

function border(corners: readonly PhotoPoint[]): Path2D {
  const path = new Path2D();
  for (const { x, y } of corners) path.lineTo(x + 0.5, y + 0.5);
  path.closePath();
  return path;
}
