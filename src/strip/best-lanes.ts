/** The best use of few lanes: which runs to keep where uses are known, and the lanes that they take. */
import { type LaneInterval, rankedLanes } from "./partition-lanes.ts";

/** A stretch of steps, half-open, and how often it is used: a whole number of 1 or more. */
export interface UsedInterval extends LaneInterval {
  readonly uses: number;
}

/**
 * Of all choices with at most `limit` runs over any step the one whose uses add up to most; of equal sums the one that
 * keeps more runs; then, at the first run in the given order where they differ, the one that keeps it. The kept runs lie
 * in the fewest lanes, those with the most used run first; `prefers` is as for `partitionLanes`. Throws a RangeError for
 * a run that has no step or whose uses are not whole.
 */
export function bestLanes<T extends UsedInterval>(
  runs: readonly T[],
  limit: number,
  prefers?: (last: T, next: T) => boolean,
): { readonly lanes: readonly (readonly T[])[]; readonly refused: readonly T[] } {
  const isKept = keptBy(runs, limit);
  const kept = runs.filter((_, index) => isKept[index]);
  const refused = runs.filter((_, index) => !isKept[index]);
  return {
    lanes: rankedLanes(
      kept.toSorted((a, b) => b.uses - a.uses),
      prefers,
    ),
    refused,
  };
}

/** A point of the line on which some run begins or ends, and the best known way to it. */
interface Node {
  readonly at: number;
  gain: bigint | undefined;
  by: Edge | undefined;
}

/** A way from a point to a later one: along a run, or past the runs to the next point. */
interface Edge {
  readonly from: Node;
  readonly to: Node;
  readonly gain: bigint;
  readonly room: number;
  used: number;
}

/**
 * Every lane is a way from the first point to the last one, so the best choice is a flow of `limit` units of the greatest
 * gain, found by one longest path after another (Carlisle & Lloyd, On the k-coloring of intervals, Discrete Applied
 * Mathematics 59, 1995). All is whole numbers, so it is exact.
 */
function keptBy(runs: readonly UsedInterval[], limit: number): readonly boolean[] {
  const points = [...new Set(runs.flatMap(({ from, to }) => [from, to]))].sort((a, b) => a - b);
  const nodes = points.map((at): Node => ({ at, gain: undefined, by: undefined }));
  const known = new Map(nodes.map((node) => [node.at, node]));
  const along = runs.map(({ from, to }, index): Edge => {
    const [start, end] = [known.get(from), known.get(to)];
    if (!start || !end || from >= to) throw new RangeError(`a run from ${from} to ${to}`);
    return { from: start, to: end, gain: gainOf(runs, index), room: 1, used: 0 };
  });
  const past = nodes.slice(1).map((to, index): Edge => {
    return { from: nodes[index] ?? to, to, gain: 0n, room: limit, used: 0 };
  });
  const edges = [...past, ...along].sort((a, b) => a.from.at - b.from.at);
  for (let lane = 0; lane < limit && addLane(nodes, edges); lane++);
  return along.map(({ used }) => used === 1);
}

/**
 * The three wishes as one number: uses, then one for each run, then a bit that is worth more than those of all later
 * runs together. No two choices are worth the same.
 */
function gainOf(runs: readonly UsedInterval[], index: number): bigint {
  const count = runs.length;
  const uses = BigInt(runs[index]?.uses ?? 0);
  return ((uses * BigInt(count + 1) + 1n) << BigInt(count)) + (1n << BigInt(count - 1 - index));
}

/** Sends one unit more along the way of the greatest gain; false where none gains anything. */
function addLane(nodes: readonly Node[], edges: readonly Edge[]): boolean {
  for (const node of nodes) {
    node.gain = undefined;
    node.by = undefined;
  }
  const [first, last] = [nodes[0], nodes.at(-1)];
  if (!first || !last) return false;
  first.gain = 0n;
  while (isBettered(edges));
  if ((last.gain ?? 0n) <= 0n) return false;
  for (let node = last; node.by !== undefined; ) {
    const { by } = node;
    const isForward = by.to === node;
    by.used += isForward ? 1 : -1;
    node = isForward ? by.from : by.to;
  }
  return true;
}

/**
 * One round of Bellman and Ford's rule: along the line where there is room, then back where a unit could be taken away.
 * Rounds end, for no round trip gains: the flow before was the best of its size.
 */
function isBettered(edges: readonly Edge[]): boolean {
  let isBetter = false;
  const go = (by: Edge, from: Node, to: Node, gain: bigint): void => {
    if (from.gain === undefined) return;
    const found = from.gain + gain;
    if (to.gain !== undefined && found <= to.gain) return;
    to.gain = found;
    to.by = by;
    isBetter = true;
  };
  for (const edge of edges) if (edge.used < edge.room) go(edge, edge.from, edge.to, edge.gain);
  for (const edge of edges.toReversed())
    if (edge.used > 0) go(edge, edge.to, edge.from, -edge.gain);
  return isBetter;
}
