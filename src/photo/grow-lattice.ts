/** Grows a lattice from one spot to its neighbours, with a step that follows the perspective from dot to dot. */
import type { PhotoPoint } from "./grey.ts";
import type { NearestSpot } from "./near-spots.ts";
import type { Spot } from "./spot.ts";

/** A spot with its place in the lattice: `across` grows to the right, `down` downwards. */
export interface Node {
  readonly across: number;
  readonly down: number;
  readonly spot: Spot;
}

/** A spot with the steps to its neighbours, in pixels. */
export interface Seed {
  readonly spot: Spot;
  readonly right: PhotoPoint;
  readonly below: PhotoPoint;
}

/** A dot is looked for so far from where it should be, in steps. */
const TOLERANCE = 0.22;
/** A dot of a grid lies halfway between its neighbours, to so many steps or pixels. */
const REGULAR = 0.08;
const LEAST_OFF_PX = 0.7;
/** Up to two dots in a line may be missing. */
const FARTHEST_HOP = 3;
const LEAST_STEP_PX = 5;
/** A page of the finest grid has fewer. */
const MOST_NODES = 20_000;

const DIRECTIONS = [
  [1, 0],
  [0, 1],
  [-1, 0],
  [0, -1],
] as const;

type Growing = Node & Seed;

/** All spots that are reached from a seed, breadth first. */
export function growLattice(seed: Seed, nearest: NearestSpot): readonly Node[] {
  const nodes: Growing[] = [{ ...seed, across: 0, down: 0 }];
  const places = new Set([placeKey(0, 0)]);
  const used = new Set([seed.spot]);
  for (let next = 0; next < nodes.length && nodes.length < MOST_NODES; next++) {
    const from = nodes[next];
    if (!from) break;
    for (const [di, dj] of DIRECTIONS) {
      if (places.has(placeKey(from.across + di, from.down + dj))) continue;
      const grown = neighbourOf(from, [di, dj], nearest);
      if (!grown || used.has(grown.spot)) continue;
      const key = placeKey(grown.across, grown.down);
      if (places.has(key)) continue;
      places.add(key);
      used.add(grown.spot);
      nodes.push(grown);
    }
  }
  return nodes;
}

/** A place of a lattice as one number. */
export function placeKey(across: number, down: number): number {
  return (down + 4_096) * 8_192 + across + 4_096;
}

/** Those that lie halfway between their neighbours both ways: what grew over noise does not. */
export function regularNodes(nodes: readonly Node[]): readonly Node[] {
  const spots = new Map(nodes.map((node) => [placeKey(node.across, node.down), node.spot]));
  const isHalfway = ({ across, down, spot }: Node, [di, dj]: readonly [number, number]) => {
    const before = spots.get(placeKey(across - di, down - dj));
    const after = spots.get(placeKey(across + di, down + dj));
    if (!before || !after) return false;
    const off = Math.hypot(spot.x - (before.x + after.x) / 2, spot.y - (before.y + after.y) / 2);
    const step = Math.hypot(after.x - before.x, after.y - before.y) / 2;
    return off <= Math.max(LEAST_OFF_PX, REGULAR * step);
  };
  return nodes.filter((node) => isHalfway(node, [1, 0]) && isHalfway(node, [0, 1]));
}

function neighbourOf(
  from: Growing,
  [di, dj]: readonly [number, number],
  nearest: NearestSpot,
): Growing | undefined {
  const step = di === 0 ? from.below : from.right;
  const sign = di + dj;
  const length = Math.hypot(step.x, step.y);
  if (length < LEAST_STEP_PX) return undefined;
  for (let hop = 1; hop <= FARTHEST_HOP; hop++) {
    const at = {
      x: from.spot.x + hop * sign * step.x,
      y: from.spot.y + hop * sign * step.y,
    };
    const spot = nearest(at, TOLERANCE * length);
    if (!spot) continue;
    const found = {
      x: (step.x + ((spot.x - from.spot.x) * sign) / hop) / 2,
      y: (step.y + ((spot.y - from.spot.y) * sign) / hop) / 2,
    };
    const steps =
      di === 0 ? { right: from.right, below: found } : { right: found, below: from.below };
    return { spot, across: from.across + hop * di, down: from.down + hop * dj, ...steps };
  }
  return undefined;
}
