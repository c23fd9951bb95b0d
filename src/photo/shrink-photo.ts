/** A smaller copy of a photo, in which looking for something costs less. */
import type { Grey } from "./grey.ts";

/** Each pixel is the mean of four places of what it covers; `factor` is from a half to 1. */
export function shrunk({ width, height, at }: Grey, factor: number): Grey {
  const size = { width: Math.floor(width * factor), height: Math.floor(height * factor) };
  const to = new Uint8Array(size.width * size.height);
  const columns = coverOf(size.width, factor);
  const rows = coverOf(size.height, factor);
  for (let y = 0; y < size.height; y++)
    for (let x = 0; x < size.width; x++) {
      let sum = 0;
      for (let down = 0; down < SAMPLES; down++) {
        const from = (rows[y * SAMPLES + down] ?? 0) * width;
        for (let across = 0; across < SAMPLES; across++)
          sum += at[from + (columns[x * SAMPLES + across] ?? 0)] ?? 0;
      }
      to[y * size.width + x] = Math.round(sum / SAMPLES ** 2);
    }
  return { ...size, at: to };
}

/** So many places each way. */
const SAMPLES = 2;

/** Which pixels of the photo are taken for each of the smaller ones, one way. */
function coverOf(length: number, factor: number): Uint32Array {
  return Uint32Array.from({ length: length * SAMPLES }, (_, index) =>
    Math.floor((index + 0.5) / (SAMPLES * factor)),
  );
}
