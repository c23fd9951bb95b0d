/** An attempt with one written thing replaced, wherever a repeated track shares it. */
import { mapAreas } from "../../recipe/area-tree.ts";
import type { Attempt, Margin, SameSize, Split, Track } from "../../recipe/recipe.ts";

/** The attempt with every use of one split replaced. */
export function replaceSplit(attempt: Attempt, old: Split, replacement: Split): Attempt {
  return mapAreas(attempt, (area) => (area.split === old ? { ...area, split: replacement } : area));
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
  const changed = ({ size, area }: Track): Track =>
    size.kind === "same" && size.name === name ? { size: change(size), area } : { size, area };
  return mapAreas(attempt, (area) =>
    area.split
      ? { ...area, split: { ...area.split, tracks: area.split.tracks.map(changed) } }
      : area,
  );
}
