/**
 * One split solved by the plainest table there is: for every gap, every sum and every size of every kind in turn.
 * Slower than the engine and without its short cuts; for splits that are too large for brute force.
 */
import type { Division, Question, ShareSize } from "../../src/divide/question.ts";
import { isAlike } from "./brute-force.ts";

interface Kind {
  readonly size: ShareSize;
  readonly tracks: readonly number[];
}

/** The sizes of one gap: what is left, and the cost W·Σs² − 2·F·Σw·s, which orders as Σ(s − q)² does. */
interface Filled {
  readonly gap: number;
  readonly leftover: number;
  readonly distance: bigint;
  readonly sizes: readonly number[];
}

/** The best solution by the four rules, or undefined where there is none. */
export function bestByTable(question: Question): Division | undefined {
  const kinds = kindsIn(question);
  let best: Filled | undefined;
  for (let gap = question.gap.min; gap <= question.gap.max; gap++) {
    const filled = fill(question, kinds, gap);
    if (!filled) continue;
    const isBetter =
      best === undefined ||
      filled.leftover < best.leftover ||
      (filled.leftover === best.leftover && filled.distance < best.distance);
    if (isBetter) best = filled;
  }
  return best && { sizes: best.sizes, gap: best.gap, leftover: best.leftover };
}

function kindsIn({ tracks }: Question): readonly Kind[] {
  const kinds: { size: ShareSize; tracks: number[] }[] = [];
  tracks.forEach((track, i) => {
    if (track.kind !== "share") return;
    const alike = kinds.find(({ size }) => isAlike(size, track));
    if (alike) alike.tracks.push(i);
    else kinds.push({ size: track, tracks: [i] });
  });
  return kinds;
}

function fill(question: Question, kinds: readonly Kind[], gap: number): Filled | undefined {
  const { length, tracks } = question;
  const fixed = tracks.reduce((so, track) => so + (track.kind === "steps" ? track.steps : 0), 0);
  const free = length - fixed - gap * (tracks.length - 1);
  if (free < 0) return undefined;
  const weights = kinds.reduce((so, { size, tracks: alike }) => so + size.weight * alike.length, 0);
  const costs = kinds.map(
    ({ size, tracks: alike }) =>
      (steps: number) =>
        exact(alike.length * (weights * steps * steps - 2 * free * size.weight * steps)),
  );
  const tables = tablesOf(kinds, costs, free);
  const total = tables[0]?.findLastIndex((cost) => cost !== undefined) ?? -1;
  if (total < 0) return undefined;
  const squares = kinds.reduce(
    (so, { size, tracks: alike }) => so + BigInt(alike.length) * BigInt(size.weight) ** 2n,
    0n,
  );
  const cost = BigInt(tables[0]?.[total] ?? 0);
  return {
    gap,
    leftover: free - total,
    distance: BigInt(weights) * cost + BigInt(free) ** 2n * squares,
    sizes: readOff({ question, kinds, costs, tables }, total),
  };
}

type Table = readonly (number | undefined)[];
type Cost = (steps: number) => number;

/** `tables[k][sum]`: the least cost of kinds k and on with that sum; undefined where no sizes give it. */
function tablesOf(kinds: readonly Kind[], costs: readonly Cost[], free: number): readonly Table[] {
  const none: (number | undefined)[] = Array.from({ length: free + 1 });
  none[0] = 0;
  const tables: Table[] = [none];
  for (const [k, kind] of [...kinds.entries()].reverse()) {
    const after = tables[0] ?? [];
    tables.unshift(after.map((_, sum) => leastCost(kind, costs[k], after, sum)));
  }
  return tables;
}

function leastCost(
  kind: Kind,
  cost: Cost | undefined,
  after: Table,
  sum: number,
): number | undefined {
  let least: number | undefined;
  const { min, max } = kind.size;
  for (let steps = min; steps <= max && steps * kind.tracks.length <= sum; steps++) {
    const rest = after[sum - steps * kind.tracks.length];
    if (rest === undefined || !cost) continue;
    const whole = exact(rest + cost(steps));
    if (least === undefined || whole < least) least = whole;
  }
  return least;
}

interface Solved {
  readonly question: Question;
  readonly kinds: readonly Kind[];
  readonly costs: readonly Cost[];
  readonly tables: readonly Table[];
}

/** From the first kind on, the largest size with which the rest still reaches the least cost. */
function readOff({ question, kinds, costs, tables }: Solved, total: number): readonly number[] {
  const sizes = question.tracks.map((track) => (track.kind === "steps" ? track.steps : 0));
  let left = total;
  kinds.forEach(({ size, tracks }, k) => {
    let steps = Math.min(size.max, Math.floor(left / tracks.length));
    const reaches = () => {
      const rest = tables[k + 1]?.[left - steps * tracks.length];
      return rest !== undefined && rest + (costs[k]?.(steps) ?? 0) === tables[k]?.[left];
    };
    while (!reaches()) if (--steps < size.min) throw new Error("the table has no way back");
    for (const track of tracks) sizes[track] = steps;
    left -= steps * tracks.length;
  });
  return sizes;
}

function exact(cost: number): number {
  if (!Number.isSafeInteger(cost)) throw new RangeError("the table's costs left the exact range");
  return cost;
}
