/** Where the paper ends around a counted grid: a first guess at its corners, to be put right by hand. */
import { type Grey, isWithin, medianOf, numberAt, type PhotoPoint } from "./grey.ts";
import type { PaperCorners } from "./measure-paper.ts";
import { type CountedGrid, type LinedPage, PHOTO_SIDES, type PhotoSide } from "./photo-count.ts";
import { type LatticePoint, seenAt } from "./plane-view.ts";

/** Edges are looked for up to so many steps from the outermost dots. */
const FARTHEST = 7;
const NEAREST = 0.4;
const EACH = 0.05;
/** Brightness is compared so many steps apart. */
const APART = 0.15;
/** Changes of one edge differ by less than the rest of this. */
const SAME_EDGE = 0.85;
/** An edge that lies on a straight line is the paper's: half of what is seen lies so near to its middle, in steps. */
const STRAIGHT = 0.2;
/** Where no edge is seen. */
const USUAL = 2;

/** From the top left corner clockwise; each at least where the grid ends. */
export function guessCorners(grey: Grey, grid: CountedGrid): PaperCorners {
  const [left = 0, top = 0, right = 0, bottom = 0] = PHOTO_SIDES.map((side) =>
    edgeAt(grey, grid, side),
  );
  const { across, down } = grid.first;
  const [x0, x1] = [across - left, across + grid.across - 1 + right];
  const [y0, y1] = [down - top, down + grid.down - 1 + bottom];
  const at = (x: number, y: number) => seenAt(grid.view, { across: x, down: y });
  return [at(x0, y0), at(x1, y0), at(x1, y1), at(x0, y1)];
}

/** Around counted lines, which run from edge to edge as a rule; top and bottom are to be put right by hand. */
export function guessLinedCorners({ lines }: LinedPage): PaperCorners {
  const ends = (index: number) => {
    const line = lines.at(index) ?? [];
    return [line[0] ?? NOWHERE, line.at(-1) ?? NOWHERE] as const;
  };
  const beyond = (end: PhotoPoint, before: PhotoPoint): PhotoPoint => ({
    x: end.x + USUAL * (end.x - before.x),
    y: end.y + USUAL * (end.y - before.y),
  });
  const [[left, right], [leftBelow, rightBelow]] = [ends(0), ends(1)];
  const [[leftLast, rightLast], [leftBefore, rightBefore]] = [ends(-1), ends(-2)];
  return [
    beyond(left, leftBelow),
    beyond(right, rightBelow),
    beyond(rightLast, rightBefore),
    beyond(leftLast, leftBefore),
  ];
}

const NOWHERE: PhotoPoint = { x: 0, y: 0 };

/** How many steps the paper goes on beyond a side's outermost dots. */
function edgeAt(grey: Grey, grid: CountedGrid, side: PhotoSide): number {
  const lines = side === "left" || side === "right" ? grid.down : grid.across;
  const seen = Array.from({ length: lines }, (_, line) => steepest(grey, grid, { side, line }));
  const middle = medianOf(seen);
  const near = seen.filter((one) => Math.abs(one - middle) <= STRAIGHT);
  if (2 * near.length < lines) return USUAL;
  return near.reduce((sum, one) => sum + one, 0) / near.length;
}

/** Where brightness changes most on the way outward from the end of a line, in steps. */
function steepest(
  grey: Grey,
  grid: CountedGrid,
  { side, line }: { readonly side: PhotoSide; readonly line: number },
): number {
  const means: number[] = [];
  for (let far = NEAREST; far <= FARTHEST; far += EACH) {
    const { x, y } = seenAt(grid.view, outward(grid, { side, line, far }));
    const at = { x: Math.round(x), y: Math.round(y) };
    if (!isWithin(grey, at, 1)) break;
    means.push(meanAround(grey, at));
  }
  const gap = Math.round(APART / EACH);
  const changes = means.map((_, index) =>
    index < gap || index >= means.length - gap
      ? 0
      : Math.abs(numberAt(means, index + gap) - numberAt(means, index - gap)),
  );
  const most = Math.max(...changes);
  const first = changes.indexOf(most);
  // A sharp edge changes as much for each place that is looked at from both sides of it.
  const onEdge = changes.slice(first).findIndex((change) => change < SAME_EDGE * most);
  return NEAREST + (first + Math.max(0, onEdge - 1) / 2) * EACH;
}

/** Of a pixel and the eight around it. */
function meanAround({ width, at }: Grey, { x, y }: PhotoPoint): number {
  let sum = 0;
  for (let dy = -1; dy <= 1; dy++)
    for (let dx = -1; dx <= 1; dx++) sum += at[(y + dy) * width + x + dx] ?? 0;
  return sum / 9;
}

function outward(
  { first, across, down }: CountedGrid,
  { side, line, far }: { readonly side: PhotoSide; readonly line: number; readonly far: number },
): LatticePoint {
  switch (side) {
    case "left":
      return { across: first.across - far, down: first.down + line };
    case "right":
      return { across: first.across + across - 1 + far, down: first.down + line };
    case "top":
      return { across: first.across + line, down: first.down - far };
    case "bottom":
      return { across: first.across + line, down: first.down + down - 1 + far };
  }
}
