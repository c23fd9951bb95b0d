/** Finds the test sheet in a photo by its dots: how it lies, and how it is seen. */
import { findSpots } from "./find-spots.ts";
import { distances, fitView, type Sighting } from "./fit-view.ts";
import { type Grey, medianOf, type PhotoPoint, type SummedGrey, sumUp } from "./grey.ts";
import { placeKey } from "./grow-lattice.ts";
import { largestLattice } from "./largest-lattice.ts";
import { type LatticePoint, latticeAt, type PlaneView, seenAt } from "./plane-view.ts";
import { shrunk } from "./shrink-photo.ts";
import type { Spot } from "./spot.ts";
import { hasDot, SHEET_DOTS } from "./test-sheet.ts";

/** A sheet as it is seen. Lengths are pixels of the photo. */
export interface FoundSheet {
  /** From dots across and down to pixels. */
  readonly view: PlaneView;
  readonly dots: readonly PhotoPoint[];
  /** Half of the dots lie no farther from where the view says, in parts of a step. */
  readonly residual: number;
  /** The part of the sheet's dots that are seen. */
  readonly seen: number;
}

/** Dots that may be the sheet's, where it is not found. */
export interface NoSheet {
  readonly found: readonly PhotoPoint[];
}

/** Photos with more pixels are looked at in a copy of half their size. */
const LONGEST = 1_600;
const HALF = 0.5;
const REACHES = [1, 2, 3, 4] as const;
const LEAST_NODES = 40;
/** So many of the sheet's dots are enough for the first size of spots; and the fewest that tell where it lies. */
const ENOUGH = 0.9;
const LEAST_SEEN = 0.6;
/** A dot lies so near to its place of the lattice, in steps. */
const NEAR = 0.2;
/** Any other way of laying the sheet has fewer dots in place, by this part. */
const CLEARER = 0.05;
/** The sheet may lie so many steps farther off than the dots that are seen tell. */
const SLACK = 3;

/** Gives now and then what part of the work is done. */
export function* findSheet(photo: Grey): Generator<number, FoundSheet | NoSheet> {
  const isHalf = Math.max(photo.width, photo.height) > LONGEST;
  yield 0;
  const grey = sumUp(isHalf ? shrunk(photo, HALF) : photo);
  let best: FoundSheet | undefined;
  let found: readonly PhotoPoint[] = [];
  for (const reach of REACHES) {
    yield reach / (REACHES.length + 1);
    const spots = findSpots(grey, reach).filter(({ kind }) => kind !== "line" && kind !== "other");
    const nodes = largestLattice(grey, spots);
    if (nodes.length > found.length) found = nodes.map(({ spot }) => spot);
    if (nodes.length < LEAST_NODES) continue;
    const sightings = nodes.map(({ across, down, spot: { x, y } }) => ({ across, down, x, y }));
    const sheet = sheetFrom(sightings, spots, grey);
    if (sheet && sheet.seen > (best?.seen ?? 0)) best = sheet;
    if (best && best.seen > ENOUGH) break;
  }
  if (best) best = sharper(best, grey) ?? best;
  if (!best || best.seen < LEAST_SEEN)
    return { found: isHalf ? found.map((point) => enlargedPoint(point)) : found };
  return isHalf ? enlargedSheet(best) : best;
}

function enlargedPoint({ x, y }: PhotoPoint): PhotoPoint {
  return { x: (x + 0.5) / HALF - 0.5, y: (y + 0.5) / HALF - 0.5 };
}

function enlargedSheet({ view, dots, ...sheet }: FoundSheet): FoundSheet {
  const { middle, scale } = view;
  return {
    ...sheet,
    dots: dots.map(enlargedPoint),
    view: { ...view, middle: enlargedPoint(middle), scale: scale / HALF },
  };
}

/** From some dots of the lattice to all, and to the way in which the sheet lies. */
function sheetFrom(
  nodes: readonly Sighting[],
  spots: readonly Spot[],
  grey: Grey,
): FoundSheet | undefined {
  const start = fitView(nodes, grey);
  const lies = start && layingOf(spotsInPlace(start, spots));
  if (!lies) return undefined;
  const view = fitView(lies.filter(isDot), grey);
  return view && seenThrough(view, spots, grey);
}

/** By spots as large as the dots are seen: those of another size lie less exactly. */
function sharper({ view }: FoundSheet, grey: SummedGrey): FoundSheet | undefined {
  const size = (SHEET_DOTS.size / SHEET_DOTS.pitch) * stepOf(view);
  const reach = REACHES.reduce((best, one) =>
    Math.abs(2 * one + 1 - size) < Math.abs(2 * best + 1 - size) ? one : best,
  );
  return seenThrough(view, findSpots(grey, reach), grey);
}

/** From how the sheet is about seen to how it is seen exactly. */
function seenThrough(about: PlaneView, spots: readonly Spot[], grey: Grey): FoundSheet | undefined {
  const dots = spotsInPlace(about, spots).filter(isDot);
  const view = fitView(dots, grey);
  return (
    view && {
      view,
      dots: dots.map(({ x, y }) => ({ x, y })),
      residual: medianOf(distances(view, dots)) / stepOf(view),
      seen: dots.length / DOTS,
    }
  );
}

/** In the middle of the sheet, in pixels. */
function stepOf(view: PlaneView): number {
  const middle = (SHEET_DOTS.count - 1) / 2;
  const here = seenAt(view, { across: middle, down: middle });
  const next = seenAt(view, { across: middle + 1, down: middle });
  return Math.hypot(next.x - here.x, next.y - here.y);
}

function isDot({ across, down }: LatticePoint): boolean {
  return hasDot(across, down);
}

const DOTS = Array.from({ length: SHEET_DOTS.count ** 2 }, (_, index) =>
  hasDot(index % SHEET_DOTS.count, Math.floor(index / SHEET_DOTS.count)),
).filter(Boolean).length;

/** The spots that lie on places of the lattice, one for each. */
function spotsInPlace(view: PlaneView, spots: readonly Spot[]): readonly Sighting[] {
  const places = new Map<number, Sighting>();
  for (const { x, y } of spots) {
    const at = latticeAt(view, { x, y });
    const [across, down] = [Math.round(at.across), Math.round(at.down)];
    const isNear = Math.hypot(at.across - across, at.down - down) < NEAR;
    const isClose =
      Math.abs(across) < 2 * SHEET_DOTS.count && Math.abs(down) < 2 * SHEET_DOTS.count;
    if (!isNear || !isClose || places.has(placeKey(across, down))) continue;
    places.set(placeKey(across, down), { across, down, x, y });
  }
  return [...places.values()];
}

/** The sightings by the sheet's own rows and columns; nothing where it could lie in two ways, or is seen in a mirror. */
function layingOf(sightings: readonly Sighting[]): readonly Sighting[] | undefined {
  const ways = WAYS.map((way) => ({ ...bestShift(sightings.map(way.turn)), ...way }));
  const [best, second] = ways.toSorted((a, b) => b.score - a.score);
  if (!best || best.score - (second?.score ?? 0) < CLEARER * DOTS) return undefined;
  return best.isMirrored ? undefined : best.sightings;
}

const TURNS: readonly ((sighting: Sighting) => Sighting)[] = [
  (one) => one,
  ({ across, down, x, y }) => ({ across: -down, down: across, x, y }),
  ({ across, down, x, y }) => ({ across: -across, down: -down, x, y }),
  ({ across, down, x, y }) => ({ across: down, down: -across, x, y }),
];

const WAYS = [false, true].flatMap((isMirrored) =>
  TURNS.map((turned) => ({
    isMirrored,
    turn: (one: Sighting) => turned(isMirrored ? { ...one, across: -one.across } : one),
  })),
);

interface Laying {
  readonly sightings: readonly Sighting[];
  /** Dots in place, less those where the sheet has none. */
  readonly score: number;
}

function bestShift(sightings: readonly Sighting[]): Laying {
  const shifts = (way: "across" | "down") => {
    const middle = medianOf(sightings.map((one) => one[way])) - (SHEET_DOTS.count - 1) / 2;
    return Array.from(
      { length: 4 * SLACK + 1 },
      (_, index) => Math.round(middle) + index - 2 * SLACK,
    );
  };
  let best: Laying = { sightings: [], score: Number.NEGATIVE_INFINITY };
  const downward = shifts("down");
  for (const right of shifts("across"))
    for (const below of downward) {
      const inPlace = sightings.filter(({ across, down }) => hasDot(across - right, down - below));
      const score = 2 * inPlace.length - sightings.length;
      if (score <= best.score) continue;
      const moved = ({ across, down, x, y }: Sighting): Sighting => ({
        ...{ across: across - right, down: down - below, x, y },
      });
      best = { sightings: inPlace.map(moved), score };
    }
  return best;
}
