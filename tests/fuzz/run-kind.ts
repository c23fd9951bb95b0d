/** Runs the cases of a kind, and says what they met: every broken promise once, facts that were told, how far they came, and the slowest stretch of work. */
import { writeSync } from "node:fs";
import fc from "fast-check";
import type { Seen } from "./promises.ts";

export interface Kind<Case> {
  readonly name: string;
  readonly cases: fc.Arbitrary<Case>;
  /** Throws where a promise is broken. */
  readonly attempt: (of: Case, seen: Seen) => void;
  /** How many times the limit such a case may take; 1 where left out. */
  readonly slack?: number;
}

export interface Met {
  readonly codes: ReadonlyMap<string, number>;
  readonly depths: ReadonlyMap<string, number>;
  readonly slowest: Slowest;
  /** Each by what it says, with the case that broke it first. */
  readonly broken: ReadonlyMap<string, string>;
}

interface Slowest {
  /** Of the processor's time; 0 where it is not measured. */
  readonly ms: number;
  readonly of: string;
}

export interface Running {
  readonly seed: number;
  readonly runs: number;
  /** No stretch of work may take longer, in ms of processor time; left out: none is measured, for other tests run beside. */
  readonly limitMs?: number;
}

/** For cases of which nothing but the promises is asked. */
export const UNSEEN: Seen = {
  code: () => {},
  depth: () => {},
  run: (act) => act(),
  step: (act) => act(),
};

/** All cases are run, whatever breaks. */
export function runKind<Case>(kind: Kind<Case>, { seed, runs, limitMs }: Running): Met {
  const [codes, depths] = [new Map<string, number>(), new Map<string, number>()];
  const broken = new Map<string, string>();
  const count = (counts: Map<string, number>) => (name: string) =>
    counts.set(name, (counts.get(name) ?? 0) + 1);
  let slowest: Slowest = { ms: 0, of: "" };
  let [longest, done] = [0, 0];
  const { slack = 1 } = kind;
  const timed = (times: number) => {
    return <Result>(act: () => Result): Result => {
      const { result, ms } =
        limitMs === undefined ? untimed(act) : leastOf(act, limitMs * slack, times);
      longest = Math.max(longest, ms);
      return result;
    };
  };
  const seen: Seen = { code: count(codes), depth: count(depths), run: timed(5), step: timed(1) };
  const one = (of: Case) => {
    longest = 0;
    try {
      kind.attempt(of, seen);
      if (limitMs !== undefined && longest > limitMs * slack) throw new Error("it takes too long");
    } catch (error) {
      const words = wordsOf(error);
      if (!broken.has(words)) broken.set(words, `${fc.stringify(of)}\n${stackOf(error)}`);
    }
    if (longest > slowest.ms) slowest = { ms: longest, of: fc.stringify(of) };
    done += 1;
    if (limitMs !== undefined && done % 1_000 === 0)
      tellNow(`${kind.name}: ${done} of ${runs}, ${broken.size} broken`);
  };
  fc.assert(fc.property(kind.cases, one), { seed, numRuns: runs });
  return { codes, depths, slowest, broken };
}

/** At once: what a thread writes to its own stream is only shown when the thread rests. */
export function tellNow(line: string): void {
  writeSync(2, `${line}\n`);
}

function untimed<Result>(act: () => Result) {
  return { result: act(), ms: 0 };
}

/**
 * What took long is done again: only what takes long each time is its own doing, and not the machine's. On a busy one
 * everything takes more of the processor's time: it counts by what a fixed work takes now and took when it took least.
 */
function leastOf<Result>(act: () => Result, limitMs: number, times: number) {
  let best = workOf(act);
  for (let again = 1; again < times && best.ms > limitMs; again++) {
    const next = workOf(act);
    if (next.ms < best.ms) best = next;
  }
  if (best.ms <= limitMs) return best;
  const now = Math.min(yardstick(), yardstick());
  quietMs = Math.min(quietMs, now);
  return { ...best, ms: (best.ms * quietMs) / now };
}

let quietMs = Math.min(...Array.from({ length: 20 }, yardstick));

/** In ms; about as much of it is memory as in reading and planning. */
function yardstick(): number {
  const numbers = Array.from({ length: 20_000 }, (_, index) => ({ [`key ${index % 97}`]: index }));
  return workOf(() => JSON.parse(JSON.stringify(numbers))).ms;
}

function workOf<Result>(act: () => Result) {
  const start = process.cpuUsage();
  const result = act();
  const { user, system } = process.cpuUsage(start);
  return { result, ms: (user + system) / 1_000 };
}

/** Without what differs from case to case. */
function wordsOf(error: unknown): string {
  const text = error instanceof Error ? error.message : `${error}`;
  return text.replace(/: [[{"\d][\s\S]*$/, "").slice(0, 200);
}

function stackOf(error: unknown): string {
  return error instanceof Error ? `${error.message}\n${error.stack?.slice(0, 1_500)}` : "";
}
