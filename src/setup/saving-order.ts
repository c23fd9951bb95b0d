/** In which order the entries of a set-up leave the fewest pages free. */
import { beginsPlan, type Setup } from "./setup.ts";

/** Entries by their index, in the order that saves most, and how many pages then stay free before spreads. */
export interface SavingOrder {
  readonly entries: readonly number[];
  readonly free: number;
}

/**
 * What an entry does to the parity of the next page. One without a spread turns it round or not. One with a spread needs
 * a free page if it begins on the wrong parity, and ends on one that does not depend on where it began.
 */
type Turn =
  | { readonly kind: "pages"; readonly turns: boolean }
  | {
      readonly kind: "spreads";
      readonly wants: Parity;
      readonly ends: Parity;
      readonly free: number;
    };

/** Of the next page's number. */
type Parity = 0 | 1;

/** Is there an order of the outermost entries with fewer free pages? The first such in the written order of entries. */
export function savingOrder(setup: Setup): SavingOrder | undefined {
  const turns = turnsOf(setup);
  const start = parityOf(setup.recipe.first);
  const written = freeIn(turns, start);
  const best = fewestFree(tallyOf(turns), start, new Map());
  if (best >= written) return undefined;
  const inner = turns.reduce((sum, turn) => sum + (turn.kind === "spreads" ? turn.free : 0), 0);
  return { entries: firstBest(turns, start, best), free: best + inner };
}

/** Entries that take no page do nothing, and stay in their place. */
function turnsOf(setup: Setup): readonly Turn[] {
  const lengths = setup.recipe.pages.map((): (1 | 2)[] => []);
  for (const page of setup.pages) {
    const { drawn } = page;
    if (drawn?.entry === undefined || !beginsPlan(page, setup)) continue;
    lengths[drawn.entry]?.push(setup.plans[drawn.plan]?.pages.length === 2 ? 2 : 1);
  }
  return lengths.map(turnOf);
}

function turnOf(lengths: readonly (1 | 2)[]): Turn {
  const before = lengths.indexOf(2);
  if (before < 0) return { kind: "pages", turns: lengths.length % 2 === 1 };
  let [at, free]: [Parity, number] = [0, 0];
  for (const length of lengths.slice(before)) {
    if (length === 1) at = other(at);
    else if (at === 1) [at, free] = [0, free + 1];
  }
  return { kind: "spreads", wants: parityOf(before), ends: at, free };
}

function parityOf(number: number): Parity {
  return number % 2 === 0 ? 0 : 1;
}

function other(parity: Parity): Parity {
  return parity === 0 ? 1 : 0;
}

/** Where the next page is after an entry, and whether the entry began on the wrong parity. */
function after(turn: Turn, at: Parity): { readonly at: Parity; readonly cost: number } {
  if (turn.kind === "pages") return { at: turn.turns ? other(at) : at, cost: 0 };
  return { at: turn.ends, cost: turn.wants === at ? 0 : 1 };
}

function freeIn(turns: readonly Turn[], start: Parity): number {
  let [at, free]: [Parity, number] = [start, 0];
  for (const turn of turns) {
    const step = after(turn, at);
    [at, free] = [step.at, free + step.cost];
  }
  return free;
}

/** How many entries there are of each kind that matters: by what spreads want and where they end, and what turns round. */
interface Tally {
  readonly spreads: readonly [number, number, number, number];
  readonly turning: number;
}

const KINDS: readonly (readonly [wants: Parity, ends: Parity])[] = [
  [0, 0],
  [0, 1],
  [1, 0],
  [1, 1],
];

function tallyOf(turns: readonly Turn[]): Tally {
  const count = (index: number) => turns.filter((turn) => kindOf(turn) === index).length;
  return {
    spreads: [Math.min(1, count(0)), count(1), count(2), Math.min(1, count(3))],
    turning: turns.filter((turn) => turn.kind === "pages" && turn.turns).length,
  };
}

function kindOf(turn: Turn): number {
  if (turn.kind === "pages") return -1;
  return KINDS.findIndex(([wants, ends]) => wants === turn.wants && ends === turn.ends);
}

/**
 * The fewest wrong beginnings of all orders. Entries that end where they want to begin all follow one another at the cost
 * of one, so that one stands for all of them.
 */
function fewestFree(tally: Tally, at: Parity, known: Map<string, number>): number {
  const { spreads, turning } = tally;
  if (spreads.every((count) => count === 0)) return 0;
  const key = `${spreads.join()} ${turning} ${at}`;
  const before = known.get(key);
  if (before !== undefined) return before;
  let best =
    turning > 0 ? fewestFree({ spreads, turning: turning - 1 }, other(at), known) : Infinity;
  for (const [index, [wants, ends]] of KINDS.entries()) {
    if (!spreads[index]) continue;
    const [a, b, c, d] = spreads;
    const left = [a, b, c, d].map((count, one) => (one === index ? count - 1 : count));
    const rest = {
      spreads: [left[0] ?? 0, left[1] ?? 0, left[2] ?? 0, left[3] ?? 0],
      turning,
    } as const;
    best = Math.min(best, (wants === at ? 0 : 1) + fewestFree(rest, ends, known));
  }
  known.set(key, best);
  return best;
}

/** Takes, again and again, the first entry with which the rest can still come to the best. */
function firstBest(turns: readonly Turn[], start: Parity, best: number): readonly number[] {
  const left = turns.map((turn, index) => ({ turn, index }));
  const order: number[] = [];
  const known = new Map<string, number>();
  let [at, rest]: [Parity, number] = [start, best];
  while (left.length > 0) {
    const chosen = left.findIndex(({ turn }, position) => {
      const step = after(turn, at);
      const others = left.filter((_, one) => one !== position).map((one) => one.turn);
      return step.cost + fewestFree(tallyOf(others), step.at, known) <= rest;
    });
    const [taken] = left.splice(Math.max(chosen, 0), 1);
    if (!taken) break;
    const step = after(taken.turn, at);
    order.push(taken.index);
    [at, rest] = [step.at, rest - step.cost];
  }
  return order;
}
