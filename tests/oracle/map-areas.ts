/** An attempt with every area changed; unlike the engine's own walk it makes each use of a repeated area anew. */
import type { Area, Attempt } from "../../src/recipe/recipe.ts";

/** The change sees each area before those inside it. */
export function mapAreas(attempt: Attempt, change: (area: Area) => Area): Attempt {
  const mapped = (area: Area): Area => {
    const changed = change(area);
    if (!changed.split) return changed;
    const tracks = changed.split.tracks.map((track) => ({ ...track, area: mapped(track.area) }));
    return { ...changed, split: { ...changed.split, tracks } };
  };
  if (attempt.kind === "page") return { ...attempt, page: mapped(attempt.page) };
  return { ...attempt, left: mapped(attempt.left), right: mapped(attempt.right) };
}
