/** Finds spots whose nearest neighbours form a cross: a lattice can begin there. */
import type { Grey, PhotoPoint } from "./grey.ts";
import type { Seed } from "./grow-lattice.ts";
import type { Spot } from "./spot.ts";

const MOST_SEEDS = 12;
/** So many spots around the middle are tried. */
const TRIED = 300;
const NEIGHBOURS = 10;
/** Opposite neighbours may differ by this part of their distance. */
const UNLIKE = 0.2;
/** The least sine between the two steps of a grid: one step and a diagonal come to 0.87 at most, a tilted photo to more. */
const SQUARE = 0.87;
/** One pitch is at most so many times the other. */
const LONGEST_RATIO = 1.8;

/** Up to twelve seeds; those nearest to the middle of the photo, and spread over what is tried. */
export function findSeeds(spots: readonly Spot[], { width, height }: Grey): readonly Seed[] {
  const middle = { x: width / 2, y: height / 2 };
  const tried = byDistance(spots, middle).slice(0, TRIED);
  const seeds = tried.flatMap((spot) => seedAt(spot, spots) ?? []);
  const each = Math.max(1, Math.floor(seeds.length / MOST_SEEDS));
  return seeds.filter((_, index) => index % each === 0).slice(0, MOST_SEEDS);
}

function byDistance(spots: readonly Spot[], { x, y }: PhotoPoint): readonly Spot[] {
  return spots
    .map((spot) => ({ spot, distance: (spot.x - x) ** 2 + (spot.y - y) ** 2 }))
    .sort((a, b) => a.distance - b.distance)
    .map(({ spot }) => spot);
}

function seedAt(spot: Spot, spots: readonly Spot[]): Seed | undefined {
  const near = nearestOnes(spot, spots).map(({ x, y }) => ({ x: x - spot.x, y: y - spot.y }));
  const arms = near.filter((arm) => near.some((other) => isOpposite(arm, other)));
  const [first] = arms;
  if (!first) return undefined;
  const second = arms.find((arm) => isAcross(first, arm));
  if (!second) return undefined;
  const isFirstRight = Math.abs(first.x) > Math.abs(second.x);
  const [right, below] = isFirstRight ? [first, second] : [second, first];
  return { spot, right: turned(right, right.x), below: turned(below, below.y) };
}

/** The nearest, without sorting them all. */
function nearestOnes(spot: Spot, spots: readonly Spot[]): readonly Spot[] {
  const best: { readonly other: Spot; readonly distance: number }[] = [];
  for (const other of spots) {
    const distance = (other.x - spot.x) ** 2 + (other.y - spot.y) ** 2;
    const last = best.length < NEIGHBOURS ? undefined : best.at(-1);
    if (other === spot || (last && distance >= last.distance)) continue;
    if (last) best.pop();
    const place = best.findIndex((one) => one.distance > distance);
    best.splice(place < 0 ? best.length : place, 0, { other, distance });
  }
  return best.map(({ other }) => other);
}

function isOpposite(one: PhotoPoint, other: PhotoPoint): boolean {
  return Math.hypot(one.x + other.x, one.y + other.y) < UNLIKE * Math.hypot(one.x, one.y);
}

/** About at right angles, and not much longer or shorter. */
function isAcross(one: PhotoPoint, other: PhotoPoint): boolean {
  const [a, b] = [Math.hypot(one.x, one.y), Math.hypot(other.x, other.y)];
  const sine = Math.abs(one.x * other.y - one.y * other.x) / (a * b);
  return sine > SQUARE && Math.max(a, b) < LONGEST_RATIO * Math.min(a, b);
}

function turned(step: PhotoPoint, along: number): PhotoPoint {
  return along < 0 ? { x: -step.x, y: -step.y } : step;
}
