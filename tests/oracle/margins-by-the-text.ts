/** Which side of a page a margin lies on, as the format's text says. */
import type { PageSide } from "../../src/measure/paper-side.ts";
import type { Binding } from "../../src/notebook/notebook.ts";
import type { Margin } from "../../src/recipe/recipe.ts";

interface Sides {
  readonly top: number;
  readonly bottom: number;
  readonly left: number;
  readonly right: number;
}

/**
 * `inner` is the bound side and `outer` the one across from it: left and right on a page bound at the left (which an unbound
 * one counts as), top and bottom on one bound at the top. The two pages of a spread have their inner sides where they
 * meet.
 */
export function marginsByTheText(
  { top = 0, bottom = 0, left = 0, right = 0, inner = 0, outer = 0 }: Margin["steps"],
  binding: Binding,
  side: PageSide,
): Sides {
  if (binding === "top") return { top: top + inner, bottom: bottom + outer, left, right };
  const isInnerLeft = side === "right" || (side === "single" && binding !== "right");
  return isInnerLeft
    ? { top, bottom, left: left + inner, right: right + outer }
    : { top, bottom, left: left + outer, right: right + inner };
}
