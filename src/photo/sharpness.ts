/** Is a photo sharp enough for fine things to be seen in it? */
import { type Grey, numberAt } from "./grey.ts";

/** One of so many rows is looked at. */
const EACH_ROW = 8;
/** Of the steepest places. */
const PART = 0.999;
/** How far apart pixels are that tell how strong an edge is, whatever its sharpness. */
const FAR = 8;
/** Of a blur with a deviation of 2 pixels: between neighbours a fifth of an edge’s height is left. */
const LEAST_PART = 0.2;

/** False too where there is nothing at all to see. */
export function isSharp({ width, height, at }: Grey): boolean {
  const [near, far]: [number[], number[]] = [[], []];
  for (let y = 0; y < height; y += EACH_ROW)
    for (let x = FAR; x < width; x++) {
      const here = numberAt(at, y * width + x);
      near.push(Math.abs(here - numberAt(at, y * width + x - 1)));
      far.push(Math.abs(here - numberAt(at, y * width + x - FAR)));
    }
  const strong = (steps: readonly number[]) =>
    numberAt(
      steps.toSorted((a, b) => a - b),
      Math.floor(PART * (steps.length - 1)),
    );
  return strong(near) > LEAST_PART * strong(far);
}
