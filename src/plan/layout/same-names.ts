/** Which `same` names an attempt uses, in order of first appearance, and the limits that all their tracks set. */
import { areasOf, pagesOf, tracksIn } from "../../recipe/area-tree.ts";
import type { Attempt, SameSize, Split } from "../../recipe/recipe.ts";

export interface SameName {
  readonly name: string;
  /** The largest min and the smallest max of all its tracks, in steps. */
  readonly min: number;
  readonly max: number;
}

/** The names depth first, the left page before the right. */
export function sameNames(attempt: Attempt): readonly SameName[] {
  const found = new Map<string, SameName>();
  for (const { size } of pagesOf(attempt).flatMap(({ area }) => tracksIn(area))) {
    if (size.kind === "same") found.set(size.name, narrowed(found.get(size.name), size));
  }
  return [...found.values()];
}

/** The splits with a track of the name, each once however often its area is repeated. */
export function splitsNaming(attempt: Attempt, name: string): readonly Split[] {
  const splits = areasOf(attempt).flatMap(({ split }) => (split ? [split] : []));
  return [...new Set(splits)].filter(({ tracks }) =>
    tracks.some(({ size }) => size.kind === "same" && size.name === name),
  );
}

function narrowed(so: SameName | undefined, { name, min, max }: SameSize): SameName {
  if (!so) return { name, min, max };
  return { name, min: Math.max(so.min, min), max: Math.min(so.max, max) };
}
