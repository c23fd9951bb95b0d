/** An attempt with one written thing replaced, wherever a repeated track shares it. */
import type { Area, Attempt, Margin, SameSize, Split, Track } from "../../recipe/recipe.ts";

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
  const isNamed = ({ size }: Track) => size.kind === "same" && size.name === name;
  const changed = ({ size, area }: Track): Track =>
    size.kind === "same" && size.name === name ? { size: change(size), area } : { size, area };
  return mapAreas(attempt, (area) =>
    area.split?.tracks.some(isNamed)
      ? { ...area, split: { ...area.split, tracks: area.split.tracks.map(changed) } }
      : area,
  );
}

/**
 * Every area changed from the page in; areas that were one object stay one object, and what nothing changes in stays the
 * very same: a split that was solved before is known again.
 */
function mapAreas(attempt: Attempt, change: (area: Area) => Area): Attempt {
  const done = new Map<Area, Area>();
  const mapped = (area: Area): Area => {
    const known = done.get(area);
    if (known) return known;
    const result = withInner(change(area), mapped);
    done.set(area, result);
    return result;
  };
  if (attempt.kind === "page") return { ...attempt, page: mapped(attempt.page) };
  return { ...attempt, left: mapped(attempt.left), right: mapped(attempt.right) };
}

function withInner(area: Area, mapped: (inner: Area) => Area): Area {
  const { split } = area;
  if (!split) return area;
  const tracks = split.tracks.map((track) => {
    const inner = mapped(track.area);
    return inner === track.area ? track : { ...track, area: inner };
  });
  const isSame = tracks.every((track, index) => track === split.tracks[index]);
  return isSame ? area : { ...area, split: { ...split, tracks } };
}
