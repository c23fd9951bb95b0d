/** A staged photo of a page: seen by a camera on a desk, in a light, blurred, with noise, and saved as a JPEG would be. */
import type { Grey } from "../../../src/photo/grey.ts";
import type { Random } from "../../oracle/random.ts";
import type { Camera, Size } from "./camera.ts";
import type { Raster } from "./page-raster.ts";

export interface Light {
  /** Brightness of the paper and of the desk, 0 to 255. */
  readonly paper: number;
  readonly desk: number;
  /** How much of the printed ink's darkness there is: 1 as drawn. */
  readonly ink: number;
  /** By how much the light falls off from one side to the other, and along a shadow's edge. */
  readonly falloff: number;
  readonly shadow: number;
  /** The blur's and the noise's standard deviations, in pixels and in brightness. */
  readonly blur: number;
  readonly noise: number;
  /** As of JPEG, 1 to 100. */
  readonly quality: number;
}

/** So many pixels lie between places that are worked out; those between are taken on a straight line. */
const COARSE = 8;

/** How bright a place of the desk is, in millimetres of the paper that lies on it. */
export type Surface = (mmX: number, mmY: number) => number;

export function takePhoto(
  size: Size,
  surface: Surface,
  {
    camera,
    light,
    random,
  }: { readonly camera: Pick<Camera, "lookUp">; readonly light: Light; readonly random: Random },
): Grey {
  const sharp = exposed(size, surface, camera, light);
  const soft = light.blur > 0 ? blurred(sharp, size, light.blur) : sharp;
  const noisy = soft.map((one) => one + light.noise * normal(random));
  const saved = light.quality < 100 ? compressed(noisy, size, light.quality) : noisy;
  // `Uint8Array.from` would make a list of all pixels first.
  const at = new Uint8Array(saved.length);
  for (let index = 0; index < at.length; index++)
    at[index] = Math.round(Math.min(255, Math.max(0, saved[index] ?? 0)));
  return { ...size, at };
}

function exposed(
  { width, height }: Size,
  surface: Surface,
  camera: Pick<Camera, "lookUp">,
  light: Light,
): Float32Array {
  const columns = Math.ceil(width / COARSE) + 1;
  const rows = Math.ceil(height / COARSE) + 1;
  const [mmX, mmY] = [new Float64Array(rows * columns), new Float64Array(rows * columns)];
  for (let index = 0; index < rows * columns; index++) {
    const at = [(index % columns) * COARSE, Math.floor(index / columns) * COARSE] as const;
    [mmX[index], mmY[index]] = camera.lookUp(at);
  }
  const shown = new Float32Array(width * height);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const first = Math.floor(y / COARSE) * columns + Math.floor(x / COARSE);
      let sum = 0;
      for (let sub = 0; sub < 4; sub++) {
        const u = ((x % COARSE) + (sub % 2 === 0 ? -SUBPIXEL : SUBPIXEL)) / COARSE;
        const v = ((y % COARSE) + (sub < 2 ? -SUBPIXEL : SUBPIXEL)) / COARSE;
        sum += surface(between(mmX, first, columns, u, v), between(mmY, first, columns, u, v));
      }
      shown[y * width + x] = (sum / 4) * lit(x / width, y / height, light);
    }
  return shown;
}

/** On straight lines between four places that lie about a pixel. */
function between(mm: Float64Array, first: number, columns: number, u: number, v: number): number {
  const below = first + columns;
  return (
    (1 - v) * ((1 - u) * (mm[first] ?? 0) + u * (mm[first + 1] ?? 0)) +
    v * ((1 - u) * (mm[below] ?? 0) + u * (mm[below + 1] ?? 0))
  );
}

/** Four places of a pixel are looked at, so far from its middle both ways. */
const SUBPIXEL = 0.25;

/** The page between its pixels, or the desk with a faint grain. */
export function sampled(page: Raster, light: Light, mmX: number, mmY: number): number {
  const x = mmX * page.perMm - 0.5;
  const y = mmY * page.perMm - 0.5;
  const left = Math.floor(x);
  const top = Math.floor(y);
  if (left < 0 || top < 0 || left >= page.width - 1 || top >= page.height - 1)
    return light.desk * (1 + 0.08 * Math.sin(mmY * 1.7 + 3 * Math.sin(mmX * 0.05)));
  const at = top * page.width + left;
  const below = at + page.width;
  const u = x - left;
  const v = y - top;
  const here =
    (1 - v) * ((1 - u) * (page.at[at] ?? 0) + u * (page.at[at + 1] ?? 0)) +
    v * ((1 - u) * (page.at[below] ?? 0) + u * (page.at[below + 1] ?? 0));
  return light.paper * (1 - light.ink * (1 - here / 255));
}

function lit(x: number, y: number, { falloff, shadow }: Light): number {
  const edge = 1 / (1 + Math.exp(-(x + 0.6 * y - 0.7) * 30));
  return (1 - falloff * (0.7 * y + 0.3 * (1 - x))) * (1 - shadow * edge);
}

function blurred(from: Float32Array, size: Size, deviation: number): Float32Array {
  const reach = Math.ceil(3 * deviation);
  const weights = Array.from({ length: 2 * reach + 1 }, (_, index) =>
    Math.exp(-((index - reach) ** 2) / (2 * deviation ** 2)),
  );
  const total = weights.reduce((sum, one) => sum + one, 0);
  const kernel = Float32Array.from(weights, (one) => one / total);
  return smeared(smeared(from, size, kernel, 1), size, kernel, size.width);
}

/** One way: `stride` is from one pixel to the next. Beyond the border it goes on as it ends. */
function smeared(
  from: Float32Array,
  size: Size,
  kernel: Float32Array,
  stride: number,
): Float32Array {
  const reach = (kernel.length - 1) / 2;
  const to = new Float32Array(from.length);
  const isAcross = stride === 1;
  const last = (isAcross ? size.width : size.height) - 1;
  for (let y = 0; y < size.height; y++)
    for (let x = 0; x < size.width; x++) {
      const place = isAcross ? x : y;
      const line = y * size.width + x - place * stride;
      let sum = 0;
      if (place >= reach && place <= last - reach) {
        const start = line + (place - reach) * stride;
        for (let tap = 0; tap < kernel.length; tap++)
          sum += (kernel[tap] ?? 0) * (from[start + tap * stride] ?? 0);
        to[y * size.width + x] = sum;
        continue;
      }
      for (let step = -reach; step <= reach; step++) {
        const at = Math.min(last, Math.max(0, place + step));
        sum += (kernel[step + reach] ?? 0) * (from[line + at * stride] ?? 0);
      }
      to[y * size.width + x] = sum;
    }
  return to;
}

/** A standard normal number by the polar form of Box and Muller (from memory). */
export function normal(random: Random): number {
  for (;;) {
    const u = random.whole(-1_000_000, 1_000_000) / 1_000_000;
    const v = random.whole(-1_000_000, 1_000_000) / 1_000_000;
    const square = u * u + v * v;
    if (square > 0 && square < 1) return u * Math.sqrt((-2 * Math.log(square)) / square);
  }
}

/** Quantisation of luminance, ITU-T T.81 (1992), table K.1, from memory. */
const STEPS = [
  16, 11, 10, 16, 24, 40, 51, 61, 12, 12, 14, 19, 26, 58, 60, 55, 14, 13, 16, 24, 40, 57, 69, 56,
  14, 17, 22, 29, 51, 87, 80, 62, 18, 22, 37, 56, 68, 109, 103, 77, 24, 35, 55, 64, 81, 104, 113,
  92, 49, 64, 78, 87, 103, 121, 120, 101, 72, 92, 95, 98, 112, 100, 103, 99,
];

/** The cosines of the transform, by frequency and place. */
const COSINES = Float32Array.from({ length: 64 }, (_, index) => {
  const [frequency, place] = [index >> 3, index & 7];
  const scale = frequency === 0 ? Math.sqrt(1 / 8) : 1 / 2;
  return scale * Math.cos(((2 * place + 1) * frequency * Math.PI) / 16);
});

const BACK = COSINES.map((_, index) => COSINES[(index & 7) * 8 + (index >> 3)] ?? 0);

/** What is left of each block of 8 × 8 pixels once its waves are rounded; the scale of steps is the usual one of libjpeg (from memory). */
function compressed(from: Float32Array, { width, height }: Size, quality: number): Float32Array {
  const scale = (quality < 50 ? 5_000 / quality : 200 - 2 * quality) / 100;
  const to = from.slice();
  const [block, waves] = [new Float32Array(64), new Float32Array(64)];
  const between = new Float32Array(64);
  const [there, back] = [
    { between, table: COSINES },
    { between, table: BACK },
  ];
  for (let y = 0; y + 8 <= height; y += 8)
    for (let x = 0; x + 8 <= width; x += 8) {
      for (let at = 0; at < 64; at++)
        block[at] = (from[(y + (at >> 3)) * width + x + (at & 7)] ?? 0) - 128;
      transformed(block, waves, there);
      for (let at = 0; at < 64; at++) {
        const step = Math.max(1, (STEPS[at] ?? 1) * scale);
        waves[at] = Math.round((waves[at] ?? 0) / step) * step;
      }
      transformed(waves, block, back);
      for (let at = 0; at < 64; at++)
        to[(y + (at >> 3)) * width + x + (at & 7)] = (block[at] ?? 0) + 128;
    }
  return to;
}

/** The two-way cosine transform of a block, or back; `between` is room for what comes halfway. */
function transformed(
  from: Float32Array,
  to: Float32Array,
  { between, table }: { readonly between: Float32Array; readonly table: Float32Array },
): void {
  for (let row = 0; row < 8; row++)
    for (let wave = 0; wave < 8; wave++) {
      let sum = 0;
      for (let place = 0; place < 8; place++)
        sum += (table[wave * 8 + place] ?? 0) * (from[row * 8 + place] ?? 0);
      between[row * 8 + wave] = sum;
    }
  for (let column = 0; column < 8; column++)
    for (let wave = 0; wave < 8; wave++) {
      let sum = 0;
      for (let place = 0; place < 8; place++)
        sum += (table[wave * 8 + place] ?? 0) * (between[place * 8 + column] ?? 0);
      to[wave * 8 + column] = sum;
    }
}
