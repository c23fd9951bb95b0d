/** A plain division as an entry of a strip: equal parts of the page, called by what they are. */
import { sayPlainTitle } from "../../issue/words/say-division.ts";
import type { Axis } from "../../measure/axis.ts";
import type { DivisionEntry } from "../../recipe/strip-recipe.ts";
import { plainSlug } from "../../source/slug.ts";
import { type DivisionChoice, equalSplit } from "../division/division.ts";

/** The entry for one side. */
export function plainDivision(
  axis: Axis,
  { parts, gap, margin }: Omit<DivisionChoice, "axis">,
): DivisionEntry {
  const title = sayPlainTitle({ parts, gap }, margin);
  const [start, end] = margin;
  return {
    kind: "division",
    title,
    slug: plainSlug(title),
    split: equalSplit(axis, parts, gap),
    margin: { start, end },
  };
}
