/** Finds how a sheet is seen from its dots, by least squares: a linear start, then Gauss–Newton, without outliers. */
import { type Grey, medianOf, numberAt, type PhotoPoint } from "./grey.ts";
import {
  frameOf,
  LATTICE_SCALE,
  type LatticePoint,
  type PlaneView,
  seenAt,
  straightAt,
} from "./plane-view.ts";
import { leastSquares } from "./solve-linear.ts";

/** A dot of the lattice where it was found. */
export type Sighting = LatticePoint & PhotoPoint;

/** What lies more than so many medians off, and more than half a pixel, has no say. */
const OUTLIER = 4;
const LEAST_OUTLIER_PX = 0.5;
const OUTLIER_ROUNDS = 3;
const NEWTON_ROUNDS = 2;
const DAMPING = 1e-9;
/** The lens is believed where it takes away so much of the squared distances. */
const LENS_GAIN = 0.85;

/** The view that fits best, with a lens where the distances ask for one; nothing where there are too few dots. */
export function fitView(sightings: readonly Sighting[], photo: Grey): PlaneView | undefined {
  const start = linearFit(sightings, photo);
  const plain = start && fitRobust(start, sightings, false);
  const bent = plain && fitRobust(plain, sightings, true);
  if (!bent) return plain;
  const spread = (view: PlaneView) => medianOf(distances(view, sightings).map((one) => one ** 2));
  return spread(bent) < LENS_GAIN * spread(plain) ? bent : plain;
}

/** How far each dot lies from where the view says, in pixels. */
export function distances(view: PlaneView, sightings: readonly Sighting[]): readonly number[] {
  return sightings.map((one) => {
    const { x, y } = seenAt(view, one);
    return Math.hypot(x - one.x, y - one.y);
  });
}

function fitRobust(
  start: PlaneView,
  all: readonly Sighting[],
  bent: boolean,
): PlaneView | undefined {
  let kept = all;
  let view: PlaneView | undefined = start;
  for (let round = 0; round < OUTLIER_ROUNDS; round++) {
    for (let step = 0; view && step < NEWTON_ROUNDS; step++) view = newtonStep(view, kept, bent);
    if (!view) return undefined;
    const off = distances(view, all);
    const most = Math.max(LEAST_OUTLIER_PX, OUTLIER * medianOf(off));
    const before = kept;
    kept = all.filter((_, index) => numberAt(off, index) <= most);
    if (kept.length === before.length && kept.every((one, index) => one === before[index])) break;
  }
  return view;
}

/** Direct linear transformation with the last number held at 1. */
function linearFit(sightings: readonly Sighting[], photo: Grey): PlaneView | undefined {
  const frame = frameOf(photo);
  const equations = leastSquares(8);
  const [alongX, alongY] = [new Float64Array(8), new Float64Array(8)];
  for (const one of sightings) {
    const [a, b] = [one.across / LATTICE_SCALE, one.down / LATTICE_SCALE];
    const x = (one.x - frame.middle.x) / frame.scale;
    const y = (one.y - frame.middle.y) / frame.scale;
    alongX.set([a, b, 1, 0, 0, 0, -a * x, -b * x]);
    alongY.set([0, 0, 0, a, b, 1, -a * y, -b * y]);
    equations.add(alongX, x);
    equations.add(alongY, y);
  }
  const plane = equations.solve();
  return plane && { ...frame, plane, lens: 0 };
}

function newtonStep(
  view: PlaneView,
  sightings: readonly Sighting[],
  bent: boolean,
): PlaneView | undefined {
  const equations = leastSquares(bent ? 9 : 8);
  const slopes = { x: new Float64Array(9), y: new Float64Array(9) };
  for (const one of sightings) {
    const seen = seenAt(view, one);
    fillSlopes(slopes, view, one);
    equations.add(slopes.x, (one.x - seen.x) / view.scale);
    equations.add(slopes.y, (one.y - seen.y) / view.scale);
  }
  const change = equations.solve(DAMPING);
  if (!change) return undefined;
  const plane = view.plane.map((part, index) => part + numberAt(change, index));
  return { ...view, plane, lens: bent ? view.lens + numberAt(change, 8) : 0 };
}

/** How a seen point moves with each number of the view: across the photo, and down it. */
function fillSlopes(
  slopes: { readonly x: Float64Array; readonly y: Float64Array },
  { plane, lens }: PlaneView,
  { across, down }: LatticePoint,
): void {
  const [a, b] = [across / LATTICE_SCALE, down / LATTICE_SCALE];
  const { x, y } = straightAt(plane, a, b);
  const depth = (plane[6] ?? 0) * a + (plane[7] ?? 0) * b + 1;
  const square = x * x + y * y;
  const stretch = 1 + lens * square;
  const [own, shared] = [stretch + 2 * lens * x * x, 2 * lens * x * y];
  const ownDown = stretch + 2 * lens * y * y;
  // Without a lens a number of the first row moves x alone, one of the second row y alone, the last two both.
  for (let at = 0; at < 8; at++) {
    const by = (at % 3 === 0 ? a : at % 3 === 1 ? b : 1) / depth;
    const alongX = at < 3 ? by : at < 6 ? 0 : -by * x;
    const alongY = at < 3 ? 0 : at < 6 ? by : -by * y;
    slopes.x[at] = own * alongX + shared * alongY;
    slopes.y[at] = shared * alongX + ownDown * alongY;
  }
  slopes.x[8] = x * square;
  slopes.y[8] = y * square;
}
