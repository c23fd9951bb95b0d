/** Why each split of a plan came out as it did. */

import { kindsOf } from "../../divide/alike-tracks.ts";
import { isShortage } from "../../divide/divide.ts";
import type { Division, TrackSize } from "../../divide/question.ts";
import { type WithoutLeftover, withoutLeftover } from "../../divide/without-leftover.ts";
import type { SplitReason } from "../../issue/facts/split-reason.ts";
import { areaAt, attemptOf } from "../../recipe/area-tree.ts";
import type { Recipe, Split } from "../../recipe/recipe.ts";
import { openSolving, type SplitQuery } from "../layout/solve-split.ts";
import type { FittingPlan, PlanPage, PlanSplit } from "../plan.ts";

/** One reason for each split, page by page, in the order of the plan's splits. */
export function splitReasons(recipe: Recipe, plan: FittingPlan): readonly SplitReason[] {
  const attempt = attemptOf(recipe, plan.used);
  const solve = openReasoning(plan.same);
  return plan.pages.flatMap((page) =>
    page.splits.map((split) => {
      const written = areaAt(attempt, { side: page.side, path: split.path })?.split;
      if (!written) throw new RangeError(`the plan is not one of the recipe ${recipe.slug}`);
      return reasonOf(page, split, written, solve(written, split));
    }),
  );
}

/** A split solved again, with what else would leave nothing over. */
interface Answer {
  readonly tracks: readonly TrackSize[];
  readonly division: Division;
  readonly even: WithoutLeftover;
}

/** Answers each question once: repeated areas share the very same split. */
function openReasoning(
  same: ReadonlyMap<string, number>,
): (split: Split, planned: PlanSplit) => Answer {
  const ask = openSolving();
  const known = new Map<SplitQuery, Answer>();
  return (split, planned) => {
    const asked = ask(split, planned.length, same);
    const answer = known.get(asked) ?? answerFor(asked, split, planned);
    known.set(asked, answer);
    return answer;
  };
}

function answerFor(
  { tracks, answer }: SplitQuery,
  { gap }: Split,
  { length, path }: PlanSplit,
): Answer {
  const division = answer();
  if (isShortage(division)) throw new RangeError(`${path} does not fit its own plan`);
  const isEven = division.leftover === 0;
  const even = isEven ? { gaps: [], counts: [] } : withoutLeftover({ length, tracks, gap });
  return { tracks, division, even };
}

function reasonOf(
  page: PlanPage,
  planned: PlanSplit,
  split: Split,
  { tracks, division, even }: Answer,
): SplitReason {
  const fixed = tracks.reduce((sum, size) => sum + (size.kind === "steps" ? size.steps : 0), 0);
  const { leftover: placing } = split;
  return {
    side: page.side,
    path: planned.path,
    axis: planned.axis,
    length: planned.length,
    tracks: tracks.length,
    gap: division.gap,
    gapRange: split.gap,
    fixed,
    shared: planned.length - fixed - (tracks.length - 1) * division.gap,
    kinds: kindsOf(tracks).map(({ count, tracks: [first = 0] }) => {
      const size = tracks[first];
      return {
        count,
        weight: size?.kind === "share" ? size.weight : 0,
        size: division.sizes[first] ?? 0,
      };
    }),
    leftover: division.leftover,
    placing: placing.kind,
    taker: placing.kind === "track" ? (split.tracks[placing.index]?.area.label ?? "") : "",
    evenGaps: even.gaps,
    evenCounts: even.counts,
  };
}
