/** Whatever is written, kept, opened or sent: no crash, only issues that can be said at their place, what the engine promises, and nothing that takes long. */
import { afterAll, expect, it } from "vitest";
import { fuzzRuns, IS_SWEEP, SWEEP_SEED } from "../sweep/sweep-size.ts";
import { CODES } from "./codes.ts";
import { type Kind, type Met, runKind, tellNow } from "./run-kind.ts";
import { openSources } from "./sources.ts";
import { addressKind } from "./try-address.ts";
import { bookKind } from "./try-book.ts";
import { calendarKind } from "./try-calendar.ts";
import { keptKind } from "./try-kept.ts";
import { notebookKind } from "./try-notebook.ts";
import { recipeKind } from "./try-recipe.ts";
import { setupKind } from "./try-setup.ts";
import { stripKind } from "./try-strip.ts";

const sources = await openSources();

/** No stretch of work of a page may take longer, in ms of processor time: then nobody waits for it. */
const LONGEST_MS = 200;
const LONG = 7_200_000;

/** How many facts a sample must meet, and how many of those that can be met a whole sweep may miss, which it names. */
const FACTS_OF_SAMPLE = 75;
const MISSED_BY_SWEEP = 20;

const codes = new Map<string, number>();

/** So many cases of the sweep are of this kind; of each, this share in a hundred must come as far as these depths. */
function tries<Case>(kind: Kind<Case>, all: number, share: number, deep: readonly string[]): void {
  it(kind.name, { timeout: LONG }, () => {
    const runs = fuzzRuns(all);
    const limit = IS_SWEEP ? { limitMs: LONGEST_MS } : {};
    const met = runKind(kind, { seed: SWEEP_SEED, runs, ...limit });
    for (const [code, count] of met.codes) codes.set(code, (codes.get(code) ?? 0) + count);
    if (IS_SWEEP) tell(kind.name, runs, met);
    expect([...met.broken].map(([words, of]) => `${words}\n${of}`)).toEqual([]);
    const reached = deep.reduce((sum, depth) => sum + (met.depths.get(depth) ?? 0), 0);
    expect(reached / runs).toBeGreaterThan(share / 100);
  });
}

function tell(name: string, runs: number, { depths, slowest }: Met): void {
  const shares = [...depths].map(
    ([depth, count]) => `${depth} ${Math.round((count / runs) * 100)}%`,
  );
  const { ms, of } = slowest;
  tellNow(
    `${name}: ${runs} cases; ${shares.join(", ")}; slowest ${Math.round(ms)} ms: ${of.slice(0, 400)}`,
  );
}

tries(recipeKind(sources), 25_000, 30, ["fits", "misfit"]);
tries(notebookKind(sources), 15_000, 30, ["read"]);
tries(stripKind(sources), 5_000, 25, ["carries"]);
tries(setupKind(sources), 9_000, 15, ["paged"]);
tries(addressKind(sources), 17_000, 15, ["read by 1", "read by 2", "read by 3", "read by 5"]);
tries(keptKind(sources), 6_000, 80, ["keeps"]);
tries(calendarKind(), 18_000, 60, ["events"]);
tries(bookKind(sources), 5_000, 20, ["read"]);

afterAll(() => {
  if (!IS_SWEEP) return;
  const missed = Object.entries(CODES).flatMap(([code, why]) =>
    why === "" && !codes.has(code) ? [code] : [],
  );
  tellNow(`${codes.size} facts were met; not: ${missed.join(", ") || "none"}`);
});

it("meets facts of every family, and in a whole sweep nearly all that can be met", () => {
  const known: Readonly<Record<string, string>> = CODES;
  expect([...codes.keys()].filter((code) => known[code] === undefined)).toEqual([]);
  expect(codes.size).toBeGreaterThan(FACTS_OF_SAMPLE);
  if (fuzzRuns(100_000) < 100_000) return;
  const open = Object.entries(CODES).flatMap(([code, why]) => (why === "" ? [code] : []));
  const missed = open.filter((code) => !codes.has(code));
  expect(missed.length, missed.join()).toBeLessThanOrEqual(MISSED_BY_SWEEP);
});
