/** What a plan leaves over on one straight way across a page and on one down it: what repeats in rows counts once. */
import type { Leftovers } from "../../issue/facts/leftovers.ts";
import type { Axis } from "../../measure/axis.ts";
import type { FittingPlan, PlanPage, PlanSplit } from "../plan.ts";

/**
 * Of each axis the most that splits leave over on any line along it, wherever it was then placed: splits that lie
 * behind one another on the line add up, those beside it do not. Both are 0 where nothing is left over anywhere.
 */
export function leftoverOf({ pages }: FittingPlan): Leftovers {
  const most = (axis: Axis) => Math.max(0, ...pages.map((page) => leftoverOn(page, axis)));
  return { across: most("across"), down: most("down") };
}

/** Of a plan that does not fit, too. */
export const NO_LEFTOVER: Leftovers = { across: 0, down: 0 };

function leftoverOn({ splits }: PlanPage, axis: Axis): number {
  const splitOf = new Map(splits.map((split) => [areaPath(split), split]));
  const below = (path: string): number => {
    const split = splitOf.get(path);
    if (!split) return 0;
    const tracks = split.sizes.map((_, index) => below(`${split.path}.${index}`));
    if (split.axis !== axis) return Math.max(0, ...tracks);
    return tracks.reduce((sum, steps) => sum + steps, split.leftover);
  };
  return below("");
}

/** The area that a split divides: the path without its last part. */
function areaPath({ path }: PlanSplit): string {
  return path.split(".").slice(0, -1).join(".");
}
