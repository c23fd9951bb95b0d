/** Which `same` names an attempt uses, in order of first appearance, and the limits that all their tracks set. */
import type { Area, Attempt, SameSize, Split } from "../../recipe/recipe.ts";

export interface SameName {
  readonly name: string;
  /** The largest min and the smallest max of all its tracks, in steps. */
  readonly min: number;
  readonly max: number;
}

/** The names depth first, the left page before the right. */
export function sameNames(attempt: Attempt): readonly SameName[] {
  const found = new Map<string, SameName>();
  const seen = new Set<Area>();
  for (const area of areasOf(attempt)) collect(area, found, seen);
  return [...found.values()];
}

/** The areas of an attempt's pages, in order. */
export function areasOf(attempt: Attempt): readonly Area[] {
  return attempt.kind === "page" ? [attempt.page] : [attempt.left, attempt.right];
}

/** The splits with a track of the name, each once however often its area is repeated. */
export function splitsNaming(attempt: Attempt, name: string): readonly Split[] {
  const found = new Set<Split>();
  const seen = new Set<Area>();
  const look = (area: Area): void => {
    if (seen.has(area) || !area.split) return;
    seen.add(area);
    const { tracks } = area.split;
    if (tracks.some(({ size }) => size.kind === "same" && size.name === name))
      found.add(area.split);
    for (const track of tracks) look(track.area);
  };
  for (const area of areasOf(attempt)) look(area);
  return [...found];
}

function collect(area: Area, found: Map<string, SameName>, seen: Set<Area>): void {
  if (seen.has(area)) return;
  seen.add(area);
  for (const { size, area: inner } of area.split?.tracks ?? []) {
    if (size.kind === "same") found.set(size.name, narrowed(found.get(size.name), size));
    collect(inner, found, seen);
  }
}

function narrowed(so: SameName | undefined, { name, min, max }: SameSize): SameName {
  if (!so) return { name, min, max };
  return { name, min: Math.max(so.min, min), max: Math.min(so.max, max) };
}
