/** One split over whole steps: the sizes and the gap that a hand would choose, or how much is lacking. */
import { type Kind, kindsOf } from "./alike-tracks.ts";
import { largestSums } from "./largest-sums.ts";
import { nearestToShares } from "./least-squares.ts";
import type { Division, Question, Shortage } from "./question.ts";

/**
 * Solves one split. All numbers are steps. Of all sizes within their limits it takes, in this order: the fewest
 * leftover steps; the smallest Σ(sᵢ − qᵢ)² to the exact shares; the narrowest gap; the larger track first.
 * Tracks with the same share, min and max get the same size.
 *
 * The phases: (1) alike tracks become one unknown (`alike-tracks.ts`); (2) one table of reachable sums tells, for every gap,
 * how few steps can be left (`largest-sums.ts`); (3) for the gaps that leave fewest, the nearest sizes
 * (`least-squares.ts`). Nothing is enumerated: the cost is kinds · gaps · length · log length.
 */
export function divide(question: Question): Division | Shortage {
  const kinds = kindsOf(question.tracks);
  const fixed = sum(question.tracks.map((size) => (size.kind === "steps" ? size.steps : 0)));
  const least = sum(kinds.map((kind) => kind.min * kind.count));
  const gaps = question.tracks.length - 1;
  const needs = fixed + least + gaps * question.gap.min;
  if (needs > question.length) return { needs, has: question.length };

  const widest =
    gaps === 0 ? question.gap.min : Math.min(question.gap.max, widestGap(question, fixed + least));
  const sums = largestSums(kinds, question.length - needs);
  const candidates: Candidate[] = [];
  for (let gap = question.gap.min; gap <= widest; gap++) {
    const free = question.length - fixed - gaps * gap;
    const total = least + (sums[free - least] ?? 0);
    candidates.push({ gap, free, total });
  }
  return nearest(question, kinds, candidates);
}

/** Did the split find no room? */
export function isShortage(result: Division | Shortage): result is Shortage {
  return "needs" in result;
}

/** For one gap: the steps for share tracks, and the most that they can take of them. */
interface Candidate {
  readonly gap: number;
  readonly free: number;
  readonly total: number;
}

function widestGap(question: Question, taken: number): number {
  return Math.floor((question.length - taken) / (question.tracks.length - 1));
}

function nearest(
  question: Question,
  kinds: readonly Kind[],
  candidates: readonly Candidate[],
): Division {
  const leftover = Math.min(...candidates.map(({ free, total }) => free - total));
  let best: { gap: number; sizes: readonly number[]; distance: bigint } | undefined;
  for (const { gap, free, total } of candidates) {
    if (free - total !== leftover) continue;
    const found = nearestToShares({ kinds, free, total });
    if (best === undefined || found.distance < best.distance) best = { gap, ...found };
  }
  if (best === undefined) throw new RangeError("a gap range holds at least one gap");
  return { gap: best.gap, leftover, sizes: sizesOf(question, kinds, best.sizes) };
}

function sizesOf(
  question: Question,
  kinds: readonly Kind[],
  kindSizes: readonly number[],
): readonly number[] {
  const sizes = question.tracks.map((size) => (size.kind === "steps" ? size.steps : 0));
  kinds.forEach((kind, k) => {
    for (const track of kind.tracks) sizes[track] = kindSizes[k] ?? 0;
  });
  return sizes;
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((so, each) => so + each, 0);
}
