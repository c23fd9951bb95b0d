/** The spacing of a lined page and its first line's place in millimetres, from where the paper's corners are seen. */
import { medianOf, type PhotoPoint } from "./grey.ts";
import type { PaperCorners, PaperSize, Unmeasured } from "./measure-paper.ts";
import type { LinedPage } from "./photo-count.ts";
import { frameOf, straightAt } from "./plane-view.ts";
import { solveLinear } from "./solve-linear.ts";

/** Lengths in mm. */
export interface MeasuredLines {
  readonly pitch: number;
  /** From the paper's top to the first line. */
  readonly top: number;
  /** By how much of the paper's height a line runs askew, at most: what the corners are off, at least. */
  readonly spread: number;
}

export type MeasuringLines =
  | { readonly ok: true; readonly lines: MeasuredLines }
  | { readonly ok: false; readonly kind: Unmeasured };

/** A lens bends no more than this. */
const MOST_LENS = 0.1;
const LENS_ROUNDS = 30;
const GOLDEN = (Math.sqrt(5) - 1) / 2;
/** More than this is no slip of a finger. */
const MOST_SPREAD = 0.03;
/** Half of a flat page's lines lie no farther from an even distance than so many steps, if its corners are right. */
const MOST_UNEVEN = 0.004;
/** Half of the places on lines of a flat page lie no farther from straight than so many steps, or pixels. */
const MOST_BENT = 0.01;
const LEAST_BENT_PX = 0.35;

type Size = Readonly<Record<"width" | "height", number>>;
type Line = readonly PhotoPoint[];

export function measureLines(
  { lines, step }: LinedPage,
  photo: Size,
  corners: PaperCorners,
  paper: PaperSize,
): MeasuringLines {
  const { middle, scale } = frameOf(photo);
  const parts = ({ x, y }: PhotoPoint) => ({
    x: (x - middle.x) / scale,
    y: (y - middle.y) / scale,
  });
  const seen = lines.map((line) => line.map(parts));
  const lens = straightest(seen);
  const toPaper = planeFrom(
    corners.map(parts).map((at) => straightened(at, lens)),
    paper,
  );
  if (!toPaper) return { ok: false, kind: "no-sheet" };
  const heights = seen.map((line) =>
    line.map((at) => {
      const { x, y } = straightened(at, lens);
      return straightAt(toPaper, x, y).y;
    }),
  );
  const means = heights.map((line) => line.reduce((sum, one) => sum + one, 0) / line.length);
  const { start: top, slope: pitch } = straightThrough(means.map((y, x) => ({ x, y })));
  const askew = heights.map((line) =>
    Math.abs(straightThrough(line.map((y, x) => ({ x, y }))).slope * (line.length - 1)),
  );
  const spread = Math.max(...askew) / paper.height;
  const uneven = medianOf(means.map((mean, at) => Math.abs(mean - top - at * pitch)));
  const isInside = top > 0 && pitch > 0 && top + (lines.length - 1) * pitch < paper.height;
  if (!isInside || !(spread <= MOST_SPREAD)) return { ok: false, kind: "no-sheet" };
  const bent = scale * medianOf(seen.flatMap((line) => offStraight(line, lens)));
  if (bent > Math.max(LEAST_BENT_PX, MOST_BENT * step)) return { ok: false, kind: "curled" };
  if (uneven > MOST_UNEVEN * pitch) return { ok: false, kind: "uneven" };
  return { ok: true, lines: { pitch, top, spread } };
}

/** What a lens has moved, moved back: by one radial term, which is undone here and not done as in a view. */
function straightened({ x, y }: PhotoPoint, lens: number): PhotoPoint {
  const stretch = 1 + lens * (x * x + y * y);
  return { x: x * stretch, y: y * stretch };
}

/** The lens that lines are straightest without (Devernay & Faugeras 2001, from memory): by golden sections. */
function straightest(lines: readonly Line[]): number {
  const bend = (lens: number) =>
    lines.reduce(
      (sum, line) => sum + offStraight(line, lens).reduce((all, off) => all + off * off, 0),
      0,
    );
  let [least, most] = [-MOST_LENS, MOST_LENS];
  for (let round = 0; round < LENS_ROUNDS; round++) {
    const [low, high] = [most - GOLDEN * (most - least), least + GOLDEN * (most - least)];
    if (bend(low) < bend(high)) most = high;
    else least = low;
  }
  return (least + most) / 2;
}

/** How far each place lies from the straight line through all of them; lines run about level. */
function offStraight(line: Line, lens: number): readonly number[] {
  const straight = line.map((at) => straightened(at, lens));
  const { start, slope } = straightThrough(straight);
  return straight.map(({ x, y }) => Math.abs(y - start - slope * x));
}

/** The straight line that fits best: where it starts, at x of nought, and how it rises. */
function straightThrough(points: Line): { readonly start: number; readonly slope: number } {
  let [sumX, sumY, sumXX, sumXY] = [0, 0, 0, 0];
  for (const { x, y } of points) {
    sumX += x;
    sumY += y;
    sumXX += x * x;
    sumXY += x * y;
  }
  const count = points.length;
  const slope = (count * sumXY - sumX * sumY) / (count * sumXX - sumX * sumX);
  return { slope, start: (sumY - slope * sumX) / count };
}

/** From the photo to the paper in mm, by four corners. */
function planeFrom(corners: Line, { width, height }: PaperSize): readonly number[] | undefined {
  const places = [
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
  ] as const;
  return solveLinear(
    places.flatMap(([toX, toY], index) => {
      const { x, y } = corners[index] ?? { x: 0, y: 0 };
      return [
        [x, y, 1, 0, 0, 0, -x * toX, -y * toX, toX],
        [0, 0, 0, x, y, 1, -x * toY, -y * toY, toY],
      ];
    }),
  );
}
