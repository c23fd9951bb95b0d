/** Which margins of a pattern land on one side in a notebook that the book has. */
import type { Issue } from "../issue/facts/issue.ts";
import type { PageSide } from "../measure/paper-side.ts";
import type { Binding, Notebook } from "../notebook/notebook.ts";
import { marginSides } from "./margin-sides.ts";
import type { Area, Attempt, Margin, Recipe } from "./recipe.ts";

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
    return pages.flatMap(({ page, area }) =>
      [...marginsOf(area)].flatMap((margin) => clashesOf(margin, page, { binding, bound })),
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

function pagesOf(attempt: Attempt): readonly { readonly page: PageSide; readonly area: Area }[] {
  return attempt.kind === "page"
    ? [{ page: "single", area: attempt.page }]
    : [
        { page: "left", area: attempt.left },
        { page: "right", area: attempt.right },
      ];
}

/** All margins of an area and the areas in it, each once however often its track is repeated. */
function marginsOf(area: Area, seen: Set<Margin | Area> = new Set()): ReadonlySet<Margin> {
  const margins = new Set<Margin>();
  if (seen.has(area)) return margins;
  seen.add(area);
  if (!seen.has(area.margin)) margins.add(area.margin);
  seen.add(area.margin);
  for (const track of area.split?.tracks ?? []) {
    for (const margin of marginsOf(track.area, seen)) margins.add(margin);
  }
  return margins;
}
