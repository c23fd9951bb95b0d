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
const NEWTON_ROUNDS = 3;
const DAMPING = 1e-9;
/** The lens is believed where it takes away so much of the squared distances. */
const LENS_GAIN = 0.85;

/** The view that fits best, with a lens where the distances ask for one; nothing where there are too few dots. */
export function fitView(sightings: readonly Sighting[], photo: Grey): PlaneView | undefined {
  const plain = fitRobust(sightings, photo, false);
  if (!plain) return undefined;
  const bent = fitRobust(sightings, photo, true);
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

function fitRobust(all: readonly Sighting[], photo: Grey, bent: boolean): PlaneView | undefined {
  let kept = all;
  let view: PlaneView | undefined;
  for (let round = 0; round < OUTLIER_ROUNDS; round++) {
    view = fitOnce(kept, photo, bent);
    if (!view) return undefined;
    const off = distances(view, all);
    const most = Math.max(LEAST_OUTLIER_PX, OUTLIER * medianOf(off));
    kept = all.filter((_, index) => numberAt(off, index) <= most);
  }
  return view;
}

function fitOnce(kept: readonly Sighting[], photo: Grey, bent: boolean): PlaneView | undefined {
  let view = linearFit(kept, photo);
  for (let round = 0; view && round < NEWTON_ROUNDS; round++) view = newtonStep(view, kept, bent);
  return view;
}

/** Direct linear transformation with the last number held at 1. */
function linearFit(sightings: readonly Sighting[], photo: Grey): PlaneView | undefined {
  const frame = frameOf(photo);
  const equations = leastSquares(8);
  for (const one of sightings) {
    const [a, b] = [one.across / LATTICE_SCALE, one.down / LATTICE_SCALE];
    const x = (one.x - frame.middle.x) / frame.scale;
    const y = (one.y - frame.middle.y) / frame.scale;
    equations.add([a, b, 1, 0, 0, 0, -a * x, -b * x], x);
    equations.add([0, 0, 0, a, b, 1, -a * y, -b * y], y);
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
  for (const one of sightings) {
    const seen = seenAt(view, one);
    const [alongX, alongY] = slopes(view, one);
    equations.add(alongX, (one.x - seen.x) / view.scale);
    equations.add(alongY, (one.y - seen.y) / view.scale);
  }
  const change = equations.solve(DAMPING);
  if (!change) return undefined;
  const plane = view.plane.map((part, index) => part + numberAt(change, index));
  return { ...view, plane, lens: bent ? view.lens + numberAt(change, 8) : 0 };
}

/** How a seen point moves with each number of the view: across the photo, and down it. */
function slopes(
  { plane, lens }: PlaneView,
  { across, down }: LatticePoint,
): readonly [readonly number[], readonly number[]] {
  const [a, b] = [across / LATTICE_SCALE, down / LATTICE_SCALE];
  const { x, y } = straightAt(plane, a, b);
  const depth = numberAt(plane, 6) * a + numberAt(plane, 7) * b + 1;
  const straightX = [a, b, 1, 0, 0, 0, -a * x, -b * x].map((part) => part / depth);
  const straightY = [0, 0, 0, a, b, 1, -a * y, -b * y].map((part) => part / depth);
  const square = x * x + y * y;
  const stretch = 1 + lens * square;
  const through = (own: number, alongX: number, alongY: number, straight: number) =>
    stretch * straight + 2 * lens * own * (x * alongX + y * alongY);
  return [
    [
      ...straightX.map((along, at) => through(x, along, numberAt(straightY, at), along)),
      x * square,
    ],
    [
      ...straightY.map((along, at) => through(y, numberAt(straightX, at), along, along)),
      y * square,
    ],
  ];
}
