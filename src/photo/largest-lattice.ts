/** The largest lattice that grows from any of a photo's spots. */
import { findSeeds } from "./find-seeds.ts";
import type { SummedGrey } from "./grey.ts";
import { growLattice, type Node, regularNodes } from "./grow-lattice.ts";
import { nearSpots } from "./near-spots.ts";
import type { Spot } from "./spot.ts";

/** A lattice of so many of all spots is the one: half of them may be one with twice the step. */
const ENOUGH = 0.8;

/** Those of its nodes that lie halfway between their neighbours; lines and the like are left out from the start. */
export function largestLattice(grey: SummedGrey, found: readonly Spot[]): readonly Node[] {
  const spots = found.filter(({ kind }) => kind === "dot" || kind === "crossing");
  const nearest = nearSpots(spots);
  let best: readonly Node[] = [];
  let own = new Set<Spot>();
  for (const seed of findSeeds(spots, grey)) {
    // From a spot that a large lattice has, much the same one would grow.
    if (2 * best.length > spots.length && own.has(seed.spot)) continue;
    const nodes = regularNodes(growLattice(seed, nearest));
    if (nodes.length <= best.length) continue;
    best = nodes;
    own = new Set(nodes.map(({ spot }) => spot));
    if (best.length > ENOUGH * spots.length) break;
  }
  return best;
}
