/** Looser limits of all tracks of one `same` name, wherever they stand. */
import type { Attempt, SameSize } from "../../recipe/recipe.ts";
import { type SameName, splitsNaming } from "../layout/same-names.ts";
import type { Edit } from "./edit.ts";
import { replaceNamed } from "./replace-part.ts";

/** An edit of a whole attempt: made only when it is tried. */
export type NameEdit = Omit<Edit<unknown>, "replacement" | "only"> & {
  readonly edited: () => Attempt;
};

/** The name's largest minimum, one step less each time; not above its smallest maximum, which no size would reach. */
export function smallerNameMin(
  attempt: Attempt,
  { name, min: from, max }: SameName,
): readonly NameEdit[] {
  const sizes = sizesOf(attempt, name);
  const largest = Math.min(from - 1, max);
  return Array.from({ length: Math.max(0, largest) }, (_, i) => largest - i).map((to) => ({
    from,
    to,
    freed: sizes.reduce((sum, { min }) => sum + Math.max(0, min - to), 0),
    edited: () => replaceNamed(attempt, name, (size) => ({ ...size, min: Math.min(size.min, to) })),
  }));
}

/** The name's smallest maximum, one step more each time, up to its largest minimum: a larger one would fit no better. */
export function largerNameMax(
  attempt: Attempt,
  { name, min: most, max: from }: SameName,
): readonly NameEdit[] {
  const sizes = sizesOf(attempt, name);
  return Array.from({ length: Math.max(0, most - from) }, (_, i) => from + 1 + i).map((to) => ({
    from,
    to,
    freed: sizes.reduce((sum, { max }) => sum + Math.max(0, to - max), 0),
    edited: () => replaceNamed(attempt, name, (size) => ({ ...size, max: Math.max(size.max, to) })),
  }));
}

function sizesOf(attempt: Attempt, name: string): readonly SameSize[] {
  const tracks = splitsNaming(attempt, name).flatMap((split) => split.tracks);
  return tracks.flatMap(({ size }) => (size.kind === "same" && size.name === name ? [size] : []));
}
