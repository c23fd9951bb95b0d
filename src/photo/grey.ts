/** A photo as brightness alone, and means over square parts of it by a summed-area table (Crow 1984, from memory). */

/** Rows from the top, each from the left; 0 is black and 255 white. */
export interface Grey {
  readonly width: number;
  readonly height: number;
  readonly at: Uint8Array;
}

/** A point of a photo in pixels: 0, 0 is the middle of the pixel at its top left. */
export interface PhotoPoint {
  readonly x: number;
  readonly y: number;
}

/** A photo with the sums of all pixels above and left of each. */
export interface SummedGrey extends Grey {
  readonly sums: Uint32Array;
}

/** A number of a list of numbers; nought beyond its end. Loops over pixels read them directly, which is faster. */
export function numberAt(
  list: { readonly [index: number]: number | undefined },
  index: number,
): number {
  return list[index] ?? 0;
}

/** Up to 16 million pixels: the sum of more might not fit in 32 bits. */
export function sumUp({ width, height, at }: Grey): SummedGrey {
  const sums = new Uint32Array((width + 1) * (height + 1));
  for (let y = 0; y < height; y++) {
    let row = 0;
    const to = (y + 1) * (width + 1);
    for (let x = 0; x < width; x++) {
      row += at[y * width + x] ?? 0;
      sums[to + x + 1] = row + (sums[to - width + x] ?? 0);
    }
  }
  return { width, height, at, sums };
}

/** The sum over the square that reaches so many pixels each way; it must lie in the photo, as `isWithin` says. */
export function squareSum(
  { width, sums }: SummedGrey,
  x: number,
  y: number,
  reach: number,
): number {
  const stride = width + 1;
  const top = (y - reach) * stride;
  const bottom = (y + reach + 1) * stride;
  const left = x - reach;
  const right = x + reach + 1;
  return (
    (sums[bottom + right] ?? 0) -
    (sums[bottom + left] ?? 0) -
    (sums[top + right] ?? 0) +
    (sums[top + left] ?? 0)
  );
}

export function squareMean(grey: SummedGrey, x: number, y: number, reach: number): number {
  return squareSum(grey, x, y, reach) / (2 * reach + 1) ** 2;
}

/** Between pixels; the point must lie a pixel from the photo's border. */
export function brightnessAt({ width, at }: Grey, x: number, y: number): number {
  const left = Math.floor(x);
  const top = Math.floor(y);
  const u = x - left;
  const v = y - top;
  const from = top * width + left;
  return (
    (1 - v) * ((1 - u) * (at[from] ?? 0) + u * (at[from + 1] ?? 0)) +
    v * ((1 - u) * (at[from + width] ?? 0) + u * (at[from + width + 1] ?? 0))
  );
}

/** Does the square around a point lie in the photo? */
export function isWithin({ width, height }: Grey, { x, y }: PhotoPoint, reach: number): boolean {
  return x >= reach && y >= reach && x < width - reach && y < height - reach;
}

/** The one in the middle, in order of size; 0 of none. */
export function medianOf(numbers: readonly number[]): number {
  return numberAt(
    numbers.toSorted((a, b) => a - b),
    Math.floor(numbers.length / 2),
  );
}
