/** Marks on a photo what was seen in it: a ring around each dot and the grid's border, or a stroke along each line. */
import type { PhotoPoint } from "../../../../src/photo/grey.ts";
import type { PhotoCount } from "../../../../src/photo/photo-count.ts";

/** Seen on paper of any colour; the rim keeps it visible on one like it. */
const RING = "#cf0066";
const RIM = "#fdfaf3";
/** A ring's radius where the step is not known, in pixels. */
const USUAL_RADIUS = 6;

/** In pixels. */
const LINE_ASIDE = 4;

/** Draws over the photo that the canvas has. */
export function markDots(canvas: HTMLCanvasElement, count: PhotoCount): void {
  const path = new Path2D();
  if (count.ok && count.of === "lines") for (const line of count.page.lines) addLine(path, line);
  else {
    const { dots, radius } = count.ok
      ? { dots: count.grid.dots, radius: Math.max(3, count.grid.step * 0.3) }
      : { dots: count.found, radius: USUAL_RADIUS };
    for (const dot of dots) addRing(path, dot, radius);
  }
  if (count.ok && count.of === "grid") path.addPath(border(count.grid.corners));
  inkTwice(canvas, path);
}

/** Seen on bright and on dark: with a rim. */
export function inkTwice(canvas: HTMLCanvasElement, path: Path2D): void {
  const context = canvas.getContext("2d");
  const thin = Math.max(1.5, canvas.width / 800);
  for (const [strokeStyle, lineWidth] of [
    [RIM, 2 * thin],
    [RING, thin],
  ] as const)
    if (context) {
      Object.assign(context, { strokeStyle, lineWidth });
      context.stroke(path);
    }
}

/** Along a line of lined paper, a little beside it so that it is still seen. */
function addLine(path: Path2D, line: readonly PhotoPoint[]): void {
  line.forEach(({ x, y }, index) => {
    if (index === 0) path.moveTo(x + 0.5, y + LINE_ASIDE);
    else path.lineTo(x + 0.5, y + LINE_ASIDE);
  });
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
