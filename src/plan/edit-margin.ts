/** Smaller margins of one area along one axis, one step less each time. */
import type { Axis } from "../measure/axis.ts";
import type { Binding } from "../notebook/notebook.ts";
import { type PageSide, sideOfKey } from "../recipe/margin-conflict.ts";
import { MARGIN_KEYS, type Margin, type MarginKey } from "../recipe/recipe.ts";
import type { Edit } from "./edit.ts";

/** The series down to no margin along the axis: a step is always taken from the widest, of equals the last written. */
export function smallerMargin(
  margin: Margin,
  axis: Axis,
  page: { readonly binding: Binding; readonly side: PageSide },
): readonly Edit<Margin>[] {
  const keys = MARGIN_KEYS.filter((key) => {
    const side = sideOfKey(key, page.binding, page.side);
    return (side === "left" || side === "right") === (axis === "across");
  });
  const total = keys.reduce((sum, key) => sum + (margin.steps[key] ?? 0), 0);
  let steps = margin.steps;
  return Array.from({ length: total }, (_, i) => {
    const widest = widestOf(keys, steps);
    steps = { ...steps, [widest]: (steps[widest] ?? 0) - 1 };
    return { replacement: { ...margin, steps }, from: total, to: total - 1 - i, freed: i + 1 };
  });
}

function widestOf(keys: readonly MarginKey[], steps: Margin["steps"]): MarginKey {
  return keys.reduce((widest, key) => ((steps[key] ?? 0) >= (steps[widest] ?? 0) ? key : widest));
}
