/** Grows a lattice from one spot to its neighbours, with a step that follows the perspective from dot to dot. */
import type { Look, Steps } from "./look.ts";
import type { Spot } from "./spot.ts";

/** A spot with its place in the lattice: `across` grows to the right, `down` downwards. */
export interface Node extends Steps {
  readonly across: number;
  readonly down: number;
  readonly spot: Spot;
}

/** A spot with the steps to its neighbours. */
export interface Seed extends Steps {
  readonly spot: Spot;
}

/** A dot is looked for so far from where it should be, in steps. */
const TOLERANCE = 0.22;
/** A dot of a grid lies halfway between its neighbours, to so many steps or pixels. */
const REGULAR = 0.08;
const LEAST_OFF_PX = 0.7;
/** Neighbours lie at least so many steps apart. */
const CROWDED = 0.5;
/** Up to two dots in a line may be missing. */
const FARTHEST_HOP = 3;
const LEAST_STEP_PX = 5;
/** Paper a step farther on is about as bright; what is left of it at a shadow's edge. */
const ALIKE = 0.75;
/** A page of the finest grid has fewer. */
const MOST_NODES = 20_000;

const DIRECTIONS = [
  [1, 0],
  [0, 1],
  [-1, 0],
  [0, -1],
] as const;

/** All spots that are reached from a seed, breadth first, each at most so many steps from the one before. */
export function growLattice(seed: Seed, look: Look, farthest = FARTHEST_HOP): readonly Node[] {
  const nodes: Node[] = [{ ...seed, across: 0, down: 0 }];
  const places = new Map(nodes.map((node) => [placeKey(0, 0), node]));
  const used = new Set([seed.spot]);
  for (let next = 0; next < nodes.length && nodes.length < MOST_NODES; next++) {
    const from = nodes[next];
    if (!from) break;
    for (const [di, dj] of DIRECTIONS) {
      if (places.has(placeKey(from.across + di, from.down + dj))) continue;
      const grown = neighbourOf(from, [di, dj], look, farthest);
      if (!grown || used.has(grown.spot)) continue;
      const key = placeKey(grown.across, grown.down);
      if (places.has(key) || crowds(grown, places)) continue;
      places.set(key, grown);
      used.add(grown.spot);
      nodes.push(grown);
    }
  }
  return nodes;
}

/** Does it lie where a neighbour lies already? Then the lattice has slipped from one line to the next. */
function crowds({ across, down, spot, right, below }: Node, places: ReadonlyMap<number, Node>) {
  const least = CROWDED * Math.min(Math.hypot(right.x, right.y), Math.hypot(below.x, below.y));
  return DIRECTIONS.some(([di, dj]) => {
    const next = places.get(placeKey(across + di, down + dj))?.spot;
    return next && Math.hypot(next.x - spot.x, next.y - spot.y) < least;
  });
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

/** Does the same paper lie around both? The grain of a table has lines as well. */
function isAlike({ ground: one = 1 }: Spot, { ground: other = 1 }: Spot): boolean {
  return Math.min(one, other) >= ALIKE * Math.max(one, other);
}

function neighbourOf(
  from: Node,
  [di, dj]: readonly [number, number],
  look: Look,
  farthest: number,
): Node | undefined {
  const step = di === 0 ? from.below : from.right;
  const sign = di + dj;
  const length = Math.hypot(step.x, step.y);
  if (length < LEAST_STEP_PX) return undefined;
  for (let hop = 1; hop <= farthest; hop++) {
    const at = {
      x: from.spot.x + hop * sign * step.x,
      y: from.spot.y + hop * sign * step.y,
    };
    const spot = look(at, TOLERANCE * length, from);
    if (!spot || !isAlike(spot, from.spot)) continue;
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
