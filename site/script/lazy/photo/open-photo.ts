/** Opens a photo in the page: its size is asked before it is unpacked, and it is scaled to what counting needs. */
import type { PhotoFault } from "../../../../src/issue/words/say-photo.ts";
import type { Focal } from "../../../../src/photo/camera-over.ts";
import { filmFocal, focalOf } from "../../../../src/photo/film-focal.ts";
import type { Grey } from "../../../../src/photo/grey.ts";
import { pictureSize } from "../../../../src/photo/picture-size.ts";

/** Phones take up to 200 million pixels; unpacked, each takes four bytes. */
const MOST_MEGAPIXELS = 220;
const MOST_MEGABYTES = 100;
const SHORTEST = 240;
/** No page is so narrow, as a part of its longer side. */
const NARROWEST = 0.12;
/** A JPEG file says its size in here, after what the camera wrote about itself. */
const HEAD = 512 * 1_024;

export type OpenedPhoto =
  | {
      readonly ok: true;
      readonly canvas: HTMLCanvasElement;
      readonly grey: Grey;
      /** Has the photo more pixels than were needed? */
      readonly isScaled: boolean;
      /** What the camera wrote about itself. */
      readonly focal?: Focal;
    }
  | { readonly ok: false; readonly fault: PhotoFault };

/** What is opened of a photo, and how. */
export interface Opening {
  /** Turns to the right. */
  readonly quarters: number;
  /** The longer side that is needed, in pixels. */
  readonly longest: number;
}

export async function openPhoto(file: Blob, opening: Opening): Promise<OpenedPhoto> {
  const megabytes = Math.ceil(file.size / 1e6);
  if (megabytes > MOST_MEGABYTES) return { ok: false, fault: { kind: "heavy", megabytes } };
  const bytes = new Uint8Array(await file.slice(0, HEAD).arrayBuffer());
  const [head, film] = [pictureSize(bytes), filmFocal(bytes)];
  const megapixels = head ? Math.ceil((head.width * head.height) / 1e6) : 0;
  if (megapixels > MOST_MEGAPIXELS) return { ok: false, fault: { kind: "too-large", megapixels } };
  if (head && Math.min(head.width, head.height) < SHORTEST)
    return { ok: false, fault: { kind: "too-small", ...head } };
  let picture: ImageBitmap;
  try {
    picture = await createImageBitmap(file, { imageOrientation: "from-image" });
  } catch {
    return { ok: false, fault: { kind: "no-picture" } };
  }
  const { width, height } = picture;
  const [shorter, longer] = [Math.min(width, height), Math.max(width, height)];
  const isEnough = shorter >= SHORTEST && shorter >= NARROWEST * longer;
  const canvas = isEnough ? drawnOn(picture, opening) : undefined;
  picture.close();
  if (!canvas) return { ok: false, fault: { kind: "too-small", width, height } };
  const focal = film === undefined ? {} : { focal: focalOf(film, { width, height }) };
  return { ok: true, canvas, grey: greyOf(canvas), isScaled: longer > opening.longest, ...focal };
}

/**
 * Halved for as long as half of it is enough, then scaled to what is left: so each pixel is a mean of those that it covers,
 * in every browser. Nothing where no canvas can be had.
 */
function drawnOn(
  picture: ImageBitmap,
  { quarters, longest }: Opening,
): HTMLCanvasElement | undefined {
  let from: ImageBitmap | HTMLCanvasElement | undefined = picture;
  while (from && Math.max(from.width, from.height) >= 2 * longest) from = copyOf(from, 0.5, 0);
  return from && copyOf(from, Math.min(1, longest / Math.max(from.width, from.height)), quarters);
}

function copyOf(
  from: ImageBitmap | HTMLCanvasElement,
  scale: number,
  quarters: number,
): HTMLCanvasElement | undefined {
  const [width, height] = [Math.round(from.width * scale), Math.round(from.height * scale)];
  const canvas = document.createElement("canvas");
  [canvas.width, canvas.height] = quarters % 2 === 0 ? [width, height] : [height, width];
  const context = canvas.getContext("2d", { willReadFrequently: true });
  if (!context) return undefined;
  context.translate(canvas.width / 2, canvas.height / 2);
  context.rotate((quarters * Math.PI) / 2);
  context.drawImage(from, -width / 2, -height / 2, width, height);
  context.resetTransform();
  return canvas;
}

/** Luma of ITU-R BT.601 in parts of 256, from memory. */
function greyOf(canvas: HTMLCanvasElement): Grey {
  const { width, height } = canvas;
  const at = new Uint8Array(width * height);
  const picture = canvas.getContext("2d")?.getImageData(0, 0, width, height);
  // A pixel at a time: red is the first byte of four, which is the lowest one on all that browsers run on.
  const pixels = new Uint32Array(picture?.data.buffer ?? new ArrayBuffer(0));
  for (let index = 0; index < pixels.length; index++) {
    const pixel = pixels[index] ?? 0;
    at[index] = (77 * (pixel & 255) + 150 * ((pixel >> 8) & 255) + 29 * ((pixel >> 16) & 255)) >> 8;
  }
  return { width, height, at };
}
