/** Looser limits of all tracks of one `same` name, wherever they stand. */
import type { Attempt, SameSize } from "../../recipe/recipe.ts";
import { type SameName, splitsNaming } from "../layout/same-names.ts";
import { cutsOf, type Edit } from "./edit.ts";
import { replaceNamed } from "./replace-part.ts";

type NameEdit = Omit<Edit<Attempt>, "only">;

/** The name's largest minimum, one step less each time; not above its smallest maximum, which no size would reach. */
export function smallerNameMin(
  attempt: Attempt,
  { name, min: from, max }: SameName,
): readonly NameEdit[] {
  const largest = Math.min(from - 1, max);
  const limits = Array.from({ length: Math.max(0, largest) }, (_, i) => largest - i);
  const mins = sizesOf(attempt, name).map(({ min }) => min);
  return cutsOf(mins, limits).map(({ to, freed }) => ({
    from,
    to,
    freed,
    replacement: () =>
      replaceNamed(attempt, name, (size) => ({ ...size, min: Math.min(size.min, to) })),
  }));
}

/** The name's smallest maximum, one step more each time, up to its largest minimum: a larger one would fit no better. */
export function largerNameMax(
  attempt: Attempt,
  { name, min: most, max: from }: SameName,
): readonly NameEdit[] {
  // What a limit that rises adds is what one that falls takes away, both counted below zero.
  const limits = Array.from({ length: Math.max(0, most - from) }, (_, i) => -(from + 1 + i));
  const maxes = sizesOf(attempt, name).map(({ max }) => -max);
  return cutsOf(maxes, limits).map(({ to: below, freed }) => {
    const to = -below;
    const grown = (size: SameSize) => ({ ...size, max: Math.max(size.max, to) });
    return { from, to, freed, replacement: () => replaceNamed(attempt, name, grown) };
  });
}

function sizesOf(attempt: Attempt, name: string): readonly SameSize[] {
  const tracks = splitsNaming(attempt, name).flatMap((split) => split.tracks);
  return tracks.flatMap(({ size }) => (size.kind === "same" && size.name === name ? [size] : []));
}
