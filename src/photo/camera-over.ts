/** Where the camera was above the sheet, from how the sheet is seen (Hartley & Zisserman, ch. 8, from memory). */
import { numberAt } from "./grey.ts";
import type { PlaneView } from "./plane-view.ts";
import { LATTICE_SCALE } from "./plane-view.ts";
import { solveLinear } from "./solve-linear.ts";
import { SHEET_DOTS, type SheetPoint } from "./test-sheet.ts";

/** In millimetres of the paper, and degrees. */
export interface CameraOver {
  /** Straight below the camera. */
  readonly nadir: SheetPoint;
  readonly height: number;
  /** How far it looks askew. */
  readonly tilt: number;
}

/** What is printed is so many times its own size: along the short side and the long side of the paper. */
export interface Stretch {
  readonly x: number;
  readonly y: number;
}

/** The logarithm of a focal length in half the photo's longer side, with its standard deviation. */
export interface Focal {
  readonly log: number;
  readonly off: number;
}

/** Phones from wide to twice zoomed in: 1.4 to 2.8 (an estimate; 26 mm of a small film are 1.5 on a photo of 4 to 3). */
export const ANY_FOCAL: Focal = { log: Math.log(2), off: 0.33 };

/** Lengths and right angles of the sheet are believed to so much of themselves. */
const TRUE_TO = 0.004;
const LEAST = 0.6;
const MOST = 8;
const TRIED = 160;

type Triple = readonly [number, number, number];

/** How a millimetre to the right, one down, and the first dot are seen; the plane's last number is 1. */
function columnsOf({ plane }: PlaneView, { x, y }: Stretch): readonly [Triple, Triple, Triple] {
  const [h0 = 0, h1 = 0, h2 = 0, h3 = 0, h4 = 0, h5 = 0, h6 = 0, h7 = 0] = plane;
  const [a, b] = [x, y].map((stretch) => LATTICE_SCALE * SHEET_DOTS.pitch * stretch);
  const by = (all: Triple, length = 1): Triple => [
    all[0] / length,
    all[1] / length,
    all[2] / length,
  ];
  return [by([h0, h3, h6], a), by([h1, h4, h7], b), [h2, h5, 1]];
}

/**
 * A tilted view tells the focal length: both sides of a square millimetre are seen as long, and at right angles. From
 * straight above there is nothing but what was known before.
 */
export function focalFrom(view: PlaneView, stretch: Stretch, known: Focal): Focal {
  const [a, b] = columnsOf(view, stretch);
  const product = a[0] * b[0] + a[1] * b[1];
  const squares = a[0] ** 2 + a[1] ** 2 - b[0] ** 2 - b[1] ** 2;
  const size = Math.hypot(a[0], a[1]) * Math.hypot(b[0], b[1]);
  const cost = (log: number) => {
    const part = Math.exp(-2 * log);
    const off = TRUE_TO * part * size;
    const [angle, length] = [part * product + a[2] * b[2], part * squares + a[2] ** 2 - b[2] ** 2];
    return (angle / off) ** 2 + (length / off / 2) ** 2 + ((log - known.log) / known.off) ** 2;
  };
  const tried = Array.from(
    { length: TRIED },
    (_, index) => Math.log(LEAST) + (index / (TRIED - 1)) * Math.log(MOST / LEAST),
  );
  const costs = tried.map(cost);
  const least = Math.min(...costs);
  const weights = costs.map((one) => Math.exp((least - one) / 2));
  const total = weights.reduce((sum, one) => sum + one, 0);
  const mean = tried.reduce((sum, log, index) => sum + log * numberAt(weights, index), 0) / total;
  const spread = tried.reduce(
    (sum, log, index) => sum + (log - mean) ** 2 * numberAt(weights, index),
    0,
  );
  return { log: mean, off: Math.max(0.02, Math.sqrt(spread / total)) };
}

/** `focal` in half the photo's longer side; nothing for a view that no camera has. */
export function cameraOver(
  view: PlaneView,
  stretch: Stretch,
  focal: number,
): CameraOver | undefined {
  const seen = columnsOf(view, stretch).map(([x, y, z]): Triple => [x / focal, y / focal, z]);
  const [right, down, first] = seen;
  if (!right || !down || !first) return undefined;
  const size = Math.sqrt(Math.hypot(...right) * Math.hypot(...down));
  const scaled = ([x, y, z]: Triple): Triple => [x / size, y / size, z / size];
  const [r1, r2, t] = [scaled(right), scaled(down), scaled(first)];
  const r3: Triple = [
    r1[1] * r2[2] - r1[2] * r2[1],
    r1[2] * r2[0] - r1[0] * r2[2],
    r1[0] * r2[1] - r1[1] * r2[0],
  ];
  const rows = [0, 1, 2].map((row) => [r1, r2, r3, t].map((column) => numberAt(column, row)));
  const behind = solveLinear(rows);
  if (!behind) return undefined;
  const height = Math.abs(numberAt(behind, 2));
  const tilt = (180 / Math.PI) * Math.acos(Math.min(1, Math.abs(r3[2]) / Math.hypot(...r3)));
  return { nadir: { x: -numberAt(behind, 0), y: -numberAt(behind, 1) }, height, tilt };
}
