/** The one way through a recipe: its attempts, their pages, and the areas in these, by their paths in a plan. */
import type { LabelAt, PlanPath } from "../issue/words/say-path.ts";
import type { Axis } from "../measure/axis.ts";
import type { FacingSide, PageSide } from "../measure/paper-side.ts";
import type { Area, Attempt, Recipe, Track } from "./recipe.ts";

/** The attempt that a plan used, or another one by its number from 0; throws where the recipe has none of it. */
export function attemptOf(
  { slug, attempts }: Pick<Recipe, "slug" | "attempts">,
  index: number,
): Attempt {
  const attempt = attempts[index];
  if (!attempt) throw new RangeError(`the recipe ${slug} has no attempt ${index}`);
  return attempt;
}

/** One page of an attempt, with the area that is the whole of it. */
export interface AttemptPage {
  readonly side: PageSide;
  readonly area: Area;
}

/** The pages of an attempt, the left one of a spread first. */
export function pagesOf(attempt: Attempt): readonly AttemptPage[] {
  if (attempt.kind === "page") return [{ side: attempt.side ?? "single", area: attempt.page }];
  return [
    { side: "left", area: attempt.left },
    { side: "right", area: attempt.right },
  ];
}

/** The areas of an attempt depth first, each once however often a repeated track uses it. */
export function areasOf(attempt: Attempt): readonly Area[] {
  const areas = pagesOf(attempt).flatMap(({ area }) => [
    area,
    ...tracksIn(area).map((track) => track.area),
  ]);
  return [...new Set(areas)];
}

/** The tracks in an area depth first, each before those inside it; what repeated tracks share is looked at once. */
export function tracksIn(area: Area): readonly Track[] {
  const found: Track[] = [];
  const seen = new Set<Area>();
  const visit = (around: Area): void => {
    if (seen.has(around)) return;
    seen.add(around);
    for (const track of around.split?.tracks ?? []) {
      found.push(track);
      visit(track.area);
    }
  };
  visit(area);
  return found;
}

/** The areas of an attempt that are not split, depth first, each as often as the page has it. */
export function leavesOf(attempt: Attempt): readonly Area[] {
  const leaves = (area: Area): readonly Area[] =>
    area.split ? area.split.tracks.flatMap((track) => leaves(track.area)) : [area];
  return pagesOf(attempt).flatMap(({ area }) => leaves(area));
}

/** An area with its path: "" for a whole page. */
export interface PlacedArea {
  readonly area: Area;
  readonly path: string;
}

/** The areas from the page in to the one that a path names, or whose split it names; none where there is no such area. */
export function areasAlong(attempt: Attempt, { side, path }: PlanPath): readonly PlacedArea[] {
  const page = pagesOf(attempt).find((one) => one.side === side);
  if (!page) return [];
  const found: PlacedArea[] = [{ area: page.area, path: "" }];
  const parts = path.split(".");
  for (let end = 2; end <= parts.length; end += 2) {
    const area = found.at(-1)?.area.split?.tracks[Number(parts[end - 1])]?.area;
    if (!area) return [];
    found.push({ area, path: parts.slice(0, end).join(".") });
  }
  return found;
}

/** The area at a place of one attempt, or the one whose split is there; undefined where the attempt has no such area. */
export function areaAt(attempt: Attempt, place: PlanPath): Area | undefined {
  return areasAlong(attempt, place).at(-1)?.area;
}

/** Looks up the label of the area at a place of one attempt; undefined where it has none. */
export function labelsOf(attempt: Attempt): LabelAt {
  return (place) => areaAt(attempt, place)?.label || undefined;
}

/** The path of an area's split: the area's path and `columns` or `rows`. Its tracks' areas have their index behind it. */
export function splitPath(areaPath: string, axis: Axis): string {
  const name = axis === "across" ? "columns" : "rows";
  return areaPath === "" ? name : `${areaPath}.${name}`;
}

/** A recipe whose single pages lie at one side of an open notebook; spreads stay as they are. */
export function onSide(recipe: Recipe, side: FacingSide): Recipe {
  const attempts = recipe.attempts.map((attempt) =>
    attempt.kind === "page" ? { ...attempt, side } : attempt,
  );
  return { ...recipe, attempts };
}

/** An attempt with the area of each page changed, the left one first. */
export function mapPages(attempt: Attempt, change: (page: Area) => Area): Attempt {
  if (attempt.kind === "page") return { ...attempt, page: change(attempt.page) };
  return { ...attempt, left: change(attempt.left), right: change(attempt.right) };
}

/**
 * An attempt with every area changed from the page in; areas that were one object stay one object, and one that nothing
 * changes in stays the very same.
 */
export function mapAreas(attempt: Attempt, change: (area: Area) => Area): Attempt {
  const done = new Map<Area, Area>();
  const mapped = (area: Area): Area => {
    const known = done.get(area) ?? withTracks(change(area), mapped);
    done.set(area, known);
    return known;
  };
  return mapPages(attempt, mapped);
}

function withTracks(area: Area, mapped: (area: Area) => Area): Area {
  const { split } = area;
  if (!split) return area;
  const tracks = split.tracks.map((track) => {
    const inner = mapped(track.area);
    return inner === track.area ? track : { ...track, area: inner };
  });
  const isSame = tracks.every((track, index) => track === split.tracks[index]);
  return isSame ? area : { ...area, split: { ...split, tracks } };
}
