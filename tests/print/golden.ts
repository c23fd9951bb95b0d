/** A rendered page beside the picture of it that was looked at and kept. */
import { existsSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import pixelmatch from "pixelmatch";
import { PNG } from "pngjs";

const FOLDER = new URL("../golden/", import.meta.url);

/** How unlike two pictures may be: another release of the renderer smooths letters in its own way. */
const SMALL = { threshold: 0.2, ofAll: 0.004, window: 24, inWindow: 0.25 };

/**
 * What is different, or nothing. The new picture is then laid beside the kept one as `NAME-changed.png`: look at
 * both, and where the new one is right, give it the name of the kept one.
 */
export function differenceFrom(name: string, picture: Uint8Array): string | undefined {
  const kept = new URL(`${name}.png`, FOLDER);
  const changed = new URL(`${name}-changed.png`, FOLDER);
  const difference = existsSync(kept)
    ? compare(PNG.sync.read(readFileSync(kept)), PNG.sync.read(picture))
    : "there is no picture of it yet";
  if (difference === undefined) rmSync(changed, { force: true });
  else writeFileSync(changed, picture);
  return difference;
}

interface Picture {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8Array;
}

/** Few pixels in all, and nowhere many together. */
export function compare(kept: Picture, found: Picture): string | undefined {
  const { width, height } = kept;
  if (width !== found.width || height !== found.height)
    return `it is ${found.width} by ${found.height} pixels instead of ${width} by ${height}`;
  const { threshold, ofAll, window, inWindow } = SMALL;
  const differ = (options: { readonly windowSize?: number }) =>
    pixelmatch(kept.data, found.data, undefined, width, height, { threshold, ...options });
  const all = differ({}) / (width * height);
  if (all > ofAll) return `${(100 * all).toFixed(2)} % of its pixels differ`;
  const together = differ({ windowSize: window }) / window ** 2;
  if (together > inWindow)
    return `${(100 * together).toFixed(0)} % of the pixels of one place differ`;
  return undefined;
}
