/** The two lists of a strip, most used first, and what can be done with them. */
import type { Axis } from "../../../src/measure/axis.ts";
import { STRIP_BOUNDS } from "../../../src/recipe/strip-bounds.ts";
import type { StripChoice } from "../../../src/view/fields/strip-fields.ts";

/** Does the strip carry the pattern on either side? */
export function isCarried({ across, down }: StripChoice, slug: string): boolean {
  return across.includes(slug) || down.includes(slug);
}

/** Put on both sides as the least used, or taken off both. */
export function toggleCarried(strip: StripChoice, slug: string): StripChoice {
  const change = isCarried(strip, slug) ? without : withLast;
  return { ...strip, across: change(strip.across, slug), down: change(strip.down, slug) };
}

/** One side with the pattern as the least used of it. */
export function carryOn(strip: StripChoice, axis: Axis, slug: string): StripChoice {
  return { ...strip, [axis]: withLast(strip[axis], slug) };
}

/** One side without the pattern. */
export function dropFrom(strip: StripChoice, axis: Axis, slug: string): StripChoice {
  return { ...strip, [axis]: without(strip[axis], slug) };
}

/** One side with the pattern moved by so many places, as far as the list goes. */
export function moveOn(
  strip: StripChoice,
  axis: Axis,
  { slug, by }: { readonly slug: string; readonly by: number },
): StripChoice {
  const from = strip[axis].indexOf(slug);
  if (from < 0) return strip;
  const rest = without(strip[axis], slug);
  const to = Math.min(Math.max(from + by, 0), rest.length);
  return { ...strip, [axis]: [...rest.slice(0, to), slug, ...rest.slice(to)] };
}

/** A full list stays as it is. */
function withLast(slugs: readonly string[], slug: string): readonly string[] {
  if (slugs.includes(slug) || slugs.length >= STRIP_BOUNDS.patterns) return slugs;
  return [...slugs, slug];
}

function without(slugs: readonly string[], slug: string): readonly string[] {
  return slugs.filter((one) => one !== slug);
}
