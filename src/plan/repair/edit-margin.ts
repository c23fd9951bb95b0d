/** Smaller margins of one area along one axis, one step less each time; and a margin that is left out. */
import type { Axis } from "../../measure/axis.ts";
import type { PageSide, PaperSide } from "../../measure/paper-side.ts";
import type { Binding } from "../../notebook/notebook.ts";
import { sideOfKey } from "../../recipe/margin-sides.ts";
import { MARGIN_KEYS, type Margin, type MarginKey } from "../../recipe/recipe.ts";
import type { Edit } from "./edit.ts";

/** A step of such a series, with the sides of the paper that had a margin before it. */
export interface MarginEdit extends Edit<Margin> {
  readonly sides: readonly PaperSide[];
}

/** The series down to no margin along the axis: a step is always taken from the widest, of equals the last written. */
export function smallerMargin(
  margin: Margin,
  axis: Axis,
  page: { readonly binding: Binding; readonly side: PageSide },
): readonly MarginEdit[] {
  const sideOf = (key: MarginKey) => sideOfKey(key, page.binding, page.side);
  const keys = MARGIN_KEYS.filter((key) => SIDES[axis].includes(sideOf(key)));
  const isWide = (side: PaperSide) =>
    keys.some((key) => sideOf(key) === side && (margin.steps[key] ?? 0) > 0);
  const sides = SIDES[axis].filter(isWide);
  const total = keys.reduce((sum, key) => sum + (margin.steps[key] ?? 0), 0);
  let steps = margin.steps;
  return Array.from({ length: total }, (_, i) => {
    const widest = widestOf(keys, steps);
    steps = { ...steps, [widest]: (steps[widest] ?? 0) - 1 };
    const taken = steps;
    const replacement = () => ({ ...margin, steps: taken });
    return { replacement, from: total, to: total - 1 - i, freed: i + 1, sides };
  });
}

/** The margin without one of its keys. */
export function withoutMargin(margin: Margin, key: MarginKey): Margin {
  const { [key]: _, ...steps } = margin.steps;
  return { ...margin, steps };
}

const SIDES: Readonly<Record<Axis, readonly PaperSide[]>> = {
  across: ["left", "right"],
  down: ["top", "bottom"],
};

function widestOf(keys: readonly MarginKey[], steps: Margin["steps"]): MarginKey {
  return keys.reduce((widest, key) => ((steps[key] ?? 0) >= (steps[widest] ?? 0) ? key : widest));
}
