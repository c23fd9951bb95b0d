/** An attempt with one written thing replaced, wherever a repeated track shares it. */
import { mapAreas } from "../../recipe/area-tree.ts";
import type { Attempt, Margin, SameSize, Split, Track } from "../../recipe/recipe.ts";

/** The attempt with every use of one written split changed: those of a dated pattern have tracks of their own. */
export function replaceSplit(
  attempt: Attempt,
  old: Split,
  change: (split: Split) => Split,
): Attempt {
  const isOld = (split: Split) => split === old || (split.origin && split.origin === old.origin);
  return mapAreas(attempt, (area) =>
    area.split && isOld(area.split) ? { ...area, split: change(area.split) } : area,
  );
}

/** The attempt with every use of one margin replaced. */
export function replaceMargin(attempt: Attempt, old: Margin, replacement: Margin): Attempt {
  return mapAreas(attempt, (area) =>
    area.margin === old ? { ...area, margin: replacement } : area,
  );
}

/** The attempt with the size of every track of one name changed. */
export function replaceNamed(
  attempt: Attempt,
  name: string,
  change: (size: SameSize) => SameSize,
): Attempt {
  const isNamed = ({ size }: Track) => size.kind === "same" && size.name === name;
  const changed = (track: Track): Track =>
    track.size.kind === "same" && track.size.name === name
      ? { ...track, size: change(track.size) }
      : track;
  return mapAreas(attempt, (area) =>
    area.split?.tracks.some(isNamed)
      ? { ...area, split: { ...area.split, tracks: area.split.tracks.map(changed) } }
      : area,
  );
}
