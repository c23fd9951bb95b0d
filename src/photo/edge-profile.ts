/** How brightness changes along short lines across an edge on the test sheet. */

import { pixelsPerMm, seenOnSheet } from "./card-sides.ts";
import { brightnessAt, type Grey, isWithin, numberAt } from "./grey.ts";
import type { PlaneView } from "./plane-view.ts";
import type { SheetPoint } from "./test-sheet.ts";

/** Brightness is looked at so far apart, in millimetres. */
export const STEP = 0.1;
/** Edges are softened by so much before they are looked for: in millimetres, and in pixels. */
const SOFT = { mm: 0.12, px: 0.9 } as const;
/** How far to both sides of an edge its width is told, in millimetres: a dot is not larger. */
const AROUND = 0.6;

/** By how much edges are softened, as a standard deviation in millimetres. */
export function softness(view: PlaneView): number {
  return Math.max(SOFT.mm, SOFT.px / pixelsPerMm(view));
}

/** Brightness at so many places; nothing where one of them lies outside of the photo. */
export function profileAlong(
  grey: Grey,
  view: PlaneView,
  { count, place }: { readonly count: number; readonly place: (index: number) => SheetPoint },
): Float64Array | undefined {
  const profile = new Float64Array(count);
  for (let index = 0; index < count; index++) {
    const at = seenOnSheet(view, place(index));
    if (!isWithin(grey, { x: Math.floor(at.x), y: Math.floor(at.y) }, 2)) return undefined;
    profile[index] = brightnessAt(grey, at.x, at.y);
  }
  return profile;
}

/** By how much it gets brighter from place to place, softened: by a derivative of a Gaussian; nought near the ends. */
export function slopesOf(profile: Float64Array, soft: number): Float64Array {
  const deviation = soft / STEP;
  const reach = Math.ceil(3 * deviation);
  const scale = Math.sqrt(2 * Math.PI) * deviation ** 3;
  const weights = Array.from(
    { length: reach + 1 },
    (_, far) => (far * Math.exp(-((far / deviation) ** 2) / 2)) / scale,
  );
  const slopes = new Float64Array(profile.length);
  for (let at = reach; at < profile.length - reach; at++) {
    let sum = 0;
    for (let far = 1; far <= reach; far++)
      sum += numberAt(weights, far) * (numberAt(profile, at + far) - numberAt(profile, at - far));
    slopes[at] = sum;
  }
  return slopes;
}

/** The mean of many edges, each put with its middle onto the others', and dark to bright. */
export interface MeanEdge {
  add(slopes: Float64Array, middle: number): void;
  /** The standard deviation of where it gets brighter, in millimetres; nothing of no edge. */
  width(): number | undefined;
}

export function meanEdge(): MeanEdge {
  const reach = Math.round(AROUND / STEP);
  const sums = new Float64Array(2 * reach + 1);
  return {
    add: (slopes, middle) => {
      const sign = Math.sign(between(slopes, middle));
      for (let far = -reach; far <= reach; far++)
        sums[far + reach] = numberAt(sums, far + reach) + sign * between(slopes, middle + far);
    },
    width: () => {
      const parts = [...sums].map((one) => Math.max(0, one));
      const total = parts.reduce((sum, one) => sum + one, 0);
      if (!(total > 0)) return undefined;
      const mean = parts.reduce((sum, one, at) => sum + one * at, 0) / total;
      const square = parts.reduce((sum, one, at) => sum + one * (at - mean) ** 2, 0) / total;
      return STEP * Math.sqrt(square);
    },
  };
}

function between(list: Float64Array, at: number): number {
  const first = Math.floor(at);
  return numberAt(list, first) * (first + 1 - at) + numberAt(list, first + 1) * (at - first);
}
