/** The written margins of a page, as bands of tint along its sides. */
import { AXES, type Axis, otherAxis } from "../../measure/axis.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import type { FittingPlan, PlanPage } from "../../plan/plan.ts";
import { areaAt, attemptOf } from "../../recipe/area-tree.ts";
import { type MarginSides, marginSides } from "../../recipe/margin-sides.ts";
import type { Recipe } from "../../recipe/recipe.ts";
import type { PagePlace } from "../geometry/page-place.ts";
import { rectData } from "../geometry/path-data.ts";
import { type Interval, intervalAlong, type Rect, rectOf } from "../geometry/rect.ts";
import type { PathMark } from "../scene.ts";
import { ROLE_STYLES } from "../style/role-style.ts";

/** The bands of one page in one path, each from outline to outline of the paper; nothing where its recipe writes no margin. */
export function marginMarks(
  { lines, paper: sheet }: PagePlace,
  { steps }: PlanPage,
  sides: MarginSides | undefined,
): readonly PathMark[] {
  if (!sides) return [];
  const paper = insideOutline(sheet);
  const bands = AXES.flatMap((axis) => {
    const [before, after] =
      axis === "across" ? [sides.left, sides.right] : [sides.top, sides.bottom];
    const { from, to } = intervalAlong(paper, axis);
    const last = lines[axis][steps[axis] - after] ?? to;
    return [
      { axis, isWanted: before > 0, interval: { from, to: lines[axis][before] ?? from } },
      { axis, isWanted: after > 0, interval: { from: last, to } },
    ];
  });
  const d = bands
    .filter(({ isWanted }) => isWanted)
    .map(({ axis, interval }) => bandData(paper, axis, interval))
    .join("");
  return d === "" ? [] : [{ kind: "path", role: "margin", d }];
}

/** The tint leaves the outline of the sheet as it is. */
function insideOutline({ x, y, width, height }: Rect): Rect {
  const pen = ROLE_STYLES.paper.width;
  return { x: x + pen / 2, y: y + pen / 2, width: width - pen, height: height - pen };
}

function bandData(paper: Rect, axis: Axis, interval: Interval): string {
  const whole = intervalAlong(paper, otherAxis(axis));
  const { x, y, width, height } =
    axis === "across" ? rectOf(interval, whole) : rectOf(whole, interval);
  return rectData(x, y, width, height);
}

/** The margins of a plan's page, in steps. */
export function marginsOf(
  plan: FittingPlan,
  recipe: Recipe,
  notebook: Notebook,
  page: PlanPage,
): MarginSides | undefined {
  const area = areaAt(attemptOf(recipe, plan.used), { side: page.side, path: "" });
  if (!area) return undefined;
  const sides = marginSides(area.margin, notebook.binding, page.side);
  return sides.kind === "sides" ? sides : undefined;
}
