/** Which margins of a pattern land on one side in a notebook that the book has. */
import type { Issue } from "../issue/facts/issue.ts";
import type { PageSide } from "../measure/paper-side.ts";
import type { Binding, Notebook } from "../notebook/notebook.ts";
import { pagesOf, tracksIn } from "./area-tree.ts";
import { marginSides } from "./margin-sides.ts";
import type { Area, Margin, Recipe } from "./recipe.ts";

/**
 * One problem for each margin and binding; a margin that was written once is told once. `inner` beside `top` is usual
 * and clashes on a pad bound at the top: beside other notebooks that is no mistake of the recipe, and the pad's own
 * page says why the pattern does not fit there.
 */
export function marginClashes(recipe: Recipe, notebooks: readonly Notebook[]): readonly Issue[] {
  const all = new Set(notebooks.map(({ binding }) => binding));
  const atSide = [...all].filter((binding) => binding !== "top");
  const bindings = atSide.length > 0 ? atSide : all;
  const pages = recipe.attempts.flatMap(pagesOf);
  return [...bindings].flatMap((binding) => {
    const bound = notebooks.filter((one) => one.binding === binding).map(({ slug }) => slug);
    return pages.flatMap(({ side, area }) =>
      [...marginsIn(area)].flatMap((margin) => clashesOf(margin, side, { binding, bound })),
    );
  });
}

function clashesOf(
  margin: Margin,
  page: PageSide,
  { binding, bound }: { readonly binding: Binding; readonly bound: readonly string[] },
): readonly Issue[] {
  const sides = marginSides(margin, binding, page);
  const at = margin.place;
  if (sides.kind === "sides" || !at) return [];
  return sides.clashes.map(({ side, keys }) => ({
    about: "book",
    kind: "margin-clash",
    side,
    keys,
    page,
    binding,
    notebooks: bound,
    at,
  }));
}

/** All margins of a page's area and the areas in it, each once. */
function marginsIn(area: Area): ReadonlySet<Margin> {
  return new Set([area.margin, ...tracksIn(area).map((track) => track.area.margin)]);
}
