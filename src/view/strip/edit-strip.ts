/** The two lists of a strip, most used first, and what can be done with them. */
import { AXES, type Axis } from "../../measure/axis.ts";
import { STRIP_BOUNDS } from "../../recipe/strip-bounds.ts";
import type { StripEntry } from "../../recipe/strip-recipe.ts";
import type { StripChoice, StripLists } from "../fields/strip-fields.ts";

/** Which sides something is put on. */
export const PLACES = ["both", ...AXES] as const;
export type Place = (typeof PLACES)[number];

/** The sides that a place stands for. */
export function axesOf(place: Place): readonly Axis[] {
  return place === "both" ? AXES : [place];
}

/** How many layouts lie on it, each counted once. */
export function countOf({ across, down }: StripLists): number {
  return new Set([...across, ...down].map(({ slug }) => slug)).size;
}

/** One side with the entry as the last of it; a side that has it, or is full, stays as it is. */
export function carryOn(strip: StripChoice, axis: Axis, entry: StripEntry): StripChoice {
  const entries = strip[axis];
  const isThere = entries.some(({ slug }) => slug === entry.slug);
  if (isThere || entries.length >= STRIP_BOUNDS.patterns) return strip;
  return { ...strip, [axis]: [...entries, entry] };
}

/** One side without the entry. */
export function dropFrom(strip: StripChoice, axis: Axis, slug: string): StripChoice {
  return { ...strip, [axis]: strip[axis].filter((entry) => entry.slug !== slug) };
}

/** One side with the entry moved by so many places, as far as the list goes. */
export function moveOn(
  strip: StripChoice,
  axis: Axis,
  { slug, by }: { readonly slug: string; readonly by: number },
): StripChoice {
  const moved = strip[axis].find((entry) => entry.slug === slug);
  if (!moved) return strip;
  const from = strip[axis].indexOf(moved);
  const rest = strip[axis].filter((entry) => entry !== moved);
  const to = Math.min(Math.max(from + by, 0), rest.length);
  return { ...strip, [axis]: [...rest.slice(0, to), moved, ...rest.slice(to)] };
}

/** One side with the uses of an entry; none where nothing is said. */
export function useOn(
  strip: StripChoice,
  axis: Axis,
  { slug, uses }: { readonly slug: string; readonly uses: number | undefined },
): StripChoice {
  const entries = strip[axis].map((entry): StripEntry => {
    if (entry.slug !== slug) return entry;
    const { uses: _, ...plain } = entry;
    return uses === undefined ? plain : { ...plain, uses };
  });
  return { ...strip, [axis]: entries };
}
