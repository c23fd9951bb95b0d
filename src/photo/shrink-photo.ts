/** A smaller copy of a photo, in which counting costs less, and what is found in it as it lies in the photo itself. */
import type { Grey, PhotoPoint } from "./grey.ts";
import type { CountedGrid, LinedPage, PhotoCount } from "./photo-count.ts";

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

/** What was counted in a smaller copy. */
export function enlarged(count: PhotoCount, factor: number): PhotoCount {
  const point = ({ x, y }: PhotoPoint) => ({
    x: (x + 0.5) / factor - 0.5,
    y: (y + 0.5) / factor - 0.5,
  });
  if (!count.ok) return { ...count, found: count.found.map(point) };
  return count.of === "grid"
    ? { ...count, grid: enlargedGrid(count.grid, factor, point) }
    : { ...count, page: enlargedPage(count.page, factor, point) };
}

type Moved = (point: PhotoPoint) => PhotoPoint;

/** A view is in parts of the photo: only its middle and its scale are pixels. */
function enlargedGrid(grid: CountedGrid, factor: number, point: Moved): CountedGrid {
  const { view } = grid;
  return {
    ...grid,
    view: { ...view, middle: point(view.middle), scale: view.scale / factor },
    corners: grid.corners.map(point),
    dots: grid.dots.map(point),
    residual: grid.residual / factor,
    unevenness: grid.unevenness / factor,
    step: grid.step / factor,
  };
}

function enlargedPage({ lines, step }: LinedPage, factor: number, point: Moved): LinedPage {
  return { lines: lines.map((line) => line.map(point)), step: step / factor };
}
