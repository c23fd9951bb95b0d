/** The sentence for each reason why a pattern does not fit a notebook. */
import type { Misfit } from "../facts/misfit.ts";
import type { SearchStop } from "../facts/near-fit.ts";
import { asSentence, sayCount, sayList } from "./say-count.ts";
import { type LabelAt, sayArea, saySplit } from "./say-path.ts";

/** Why nothing of a recipe fits, and that the search for changes ended early, where it did. */
export function sayReason(
  { misfit, stop }: { readonly misfit: Misfit; readonly stop?: SearchStop },
  labelAt?: LabelAt,
): string {
  const why = sayMisfit(misfit, labelAt);
  return stop ? `${why} ${saySearchStop(stop)}` : why;
}

/** What a keeper may still find, and what an author can do. */
function saySearchStop({ tries }: SearchStop): string {
  const after = tries === 1 ? "the first try" : `${tries} tries`;
  return `The search for changes that would make it fit ended after ${after}, so there may be others: with fewer areas or names in the recipe it gets further.`;
}

/** One plain sentence for a keeper. Areas are called by their labels where a lookup is given. */
export function sayMisfit(misfit: Misfit, labelAt?: LabelAt): string {
  switch (misfit.kind) {
    case "split-too-short":
      return shortSplit(misfit, labelAt);
    case "area-too-small":
      return smallArea(misfit, labelAt);
    case "same-impossible":
      return `No one size suits all parts named “${misfit.name}”: ${limitWords(misfit)}.`;
    case "margin-clash": {
      const area = sayArea(misfit, labelAt);
      const keys = sayList(misfit.keys, "and");
      return `Two margins of ${area} land on its ${misfit.paperSide} side with this binding: ${keys}.`;
    }
    case "beyond-years":
      return misfit.needs === "day"
        ? `A ${misfit.span} of these dates has a day outside the years 1 to 9999.`
        : `A week of these dates is counted in a year outside 1 to 9999.`;
    case "too-much":
      return misfit.what === "boxes"
        ? `The pattern has more than ${sayCount(misfit.limit, "box")}, more than a page can carry.`
        : "The pattern is too complicated to be worked out for one page.";
  }
}

function shortSplit(
  misfit: Extract<Misfit, { kind: "split-too-short" }>,
  labelAt: LabelAt | undefined,
): string {
  const { needs, has } = misfit;
  const split = asSentence(saySplit(misfit, labelAt));
  return `${split} need ${sayCount(needs, "step")} and have ${has}: ${needs - has} too few.`;
}

function smallArea(
  misfit: Extract<Misfit, { kind: "area-too-small" }>,
  labelAt: LabelAt | undefined,
): string {
  const { margins, has, axis } = misfit;
  const area = asSentence(sayArea(misfit, labelAt));
  const size = `${area} has ${sayCount(has, "step")} ${axis}`;
  if (margins === 0) return `${size}: too few to draw in.`;
  return `${size} and its margins take ${margins}: no step is left to draw in.`;
}

function limitWords({ min, max }: Extract<Misfit, { kind: "same-impossible" }>): string {
  if (min > max) {
    return `one needs at least ${sayCount(min, "step")} and one takes at most ${max}`;
  }
  if (!Number.isFinite(max)) return `at ${sayCount(min, "step")} or more the pattern does not fit`;
  if (min === max) return `at ${sayCount(min, "step")} the pattern does not fit`;
  return `from ${min} to ${sayCount(max, "step")} the pattern does not fit`;
}
