/** Which patterns are near one another: the same purpose, shared tags, and pages built alike. */
import { attemptOf, leavesOf, pagesOf } from "../../recipe/area-tree.ts";
import type { Attempt, Fill, Recipe } from "../../recipe/recipe.ts";

/** What counts how much, in points; a measure of likeness counts in hundredths of its points. */
const POINTS = { purpose: 500, tag: 250, pages: 150, axis: 100, leaves: 200, fills: 200 };

/** Of each pattern, the slugs of all others, the nearest first; of equally near ones, the book's order holds. */
export function relatedPatterns(
  recipes: readonly Recipe[],
): ReadonlyMap<string, readonly string[]> {
  const all = recipes.map((recipe) => ({ slug: recipe.slug, traits: traitsOf(recipe) }));
  return new Map(
    all.map(({ slug, traits }) => {
      const others = all.filter((other) => other.slug !== slug);
      const nearest = others
        .map((other) => ({ slug: other.slug, points: likeness(traits, other.traits) }))
        .sort((a, b) => b.points - a.points);
      return [slug, nearest.map((other) => other.slug)];
    }),
  );
}

interface Traits {
  readonly purpose: string;
  readonly tags: ReadonlySet<string>;
  readonly kind: Attempt["kind"];
  /** The direction of the first division; none for an undivided page. */
  readonly axis: string;
  readonly leaves: number;
  readonly fills: ReadonlySet<Fill>;
}

/** Read off the first attempt: the page as it was meant. */
function traitsOf(recipe: Recipe): Traits {
  const { purpose, tags } = recipe;
  const meant = attemptOf(recipe, 0);
  const leaves = leavesOf(meant);
  return {
    purpose,
    tags: new Set(tags),
    kind: meant.kind,
    axis: pagesOf(meant)[0]?.area.split?.axis ?? "",
    leaves: leaves.length,
    fills: new Set(leaves.map(({ fill }) => fill)),
  };
}

function likeness(one: Traits, other: Traits): number {
  const shared = [...one.tags].filter((tag) => other.tags.has(tag)).length;
  const least = Math.min(one.leaves, other.leaves);
  return (
    (one.purpose === other.purpose ? POINTS.purpose : 0) +
    shared * POINTS.tag +
    (one.kind === other.kind ? POINTS.pages : 0) +
    (one.axis === other.axis ? POINTS.axis : 0) +
    part(POINTS.leaves, least, Math.max(one.leaves, other.leaves)) +
    part(POINTS.fills, shareOf(one.fills, other.fills), one.fills.size + other.fills.size)
  );
}

/** Whole points, so that no machine ranks otherwise. */
function part(points: number, some: number, all: number): number {
  return all === 0 ? 0 : Math.floor((points * some) / all);
}

/** Members of both, counted in both. */
function shareOf<Member>(one: ReadonlySet<Member>, other: ReadonlySet<Member>): number {
  return 2 * [...one].filter((member) => other.has(member)).length;
}
