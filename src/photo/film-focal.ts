/** What a camera wrote into a photo about its lens (Exif, CIPA DC-008: tags and types from memory). */
import type { Focal } from "./camera-over.ts";
import type { PictureSize } from "./picture-size.ts";

/** Tags: where the camera's own entries lie, the focal length as on small film, and a zoom that only cuts out. */
const [CAMERA, FILM_FOCAL, DIGITAL_ZOOM] = [0x8769, 0xa405, 0xa404];
const [EXIF, APP1] = [[0x45, 0x78, 0x69, 0x66, 0, 0], 0xe1];
/** A cut-out of more than this may or may not be counted in the focal length. */
const ZOOMED = 1.05;
/** The diagonal of small film, in millimetres. */
const FILM = 43.27;
/** It is rounded, and some makers go by the longer side instead of by the diagonal. */
const TRUE_TO = 0.06;

/** The focal length in millimetres as on small film, from the first bytes of a JPEG file; nothing where it is not told. */
export function filmFocal(bytes: Uint8Array): number | undefined {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  try {
    const tiff = tiffStart(view);
    if (tiff === undefined) return undefined;
    const isLittle = view.getUint16(tiff) === 0x4949;
    const read = { view, tiff, isLittle };
    const camera = entryAt(read, view.getUint32(tiff + 4, isLittle), CAMERA);
    if (camera === undefined) return undefined;
    const entries = view.getUint32(camera, isLittle);
    const focal = entryAt(read, entries, FILM_FOCAL);
    if (focal === undefined || isCutOut(read, entries)) return undefined;
    return view.getUint16(focal, isLittle) || undefined;
  } catch (error) {
    // An offset leads beyond what was read.
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

/** As it is known of a photo of this size, in half its longer side. */
export function focalOf(film: number, { width, height }: PictureSize): Focal {
  const half = Math.max(width, height) / 2;
  return { log: Math.log(((film / FILM) * Math.hypot(width, height)) / half), off: TRUE_TO };
}

interface Tiff {
  readonly view: DataView;
  /** All offsets count from here. */
  readonly tiff: number;
  readonly isLittle: boolean;
}

function tiffStart(view: DataView): number | undefined {
  if (view.getUint16(0) !== 0xffd8) return undefined;
  let at = 2;
  while (view.getUint8(at) === 0xff) {
    const isExif = EXIF.every((byte, index) => view.getUint8(at + 4 + index) === byte);
    if (view.getUint8(at + 1) === APP1 && isExif) return at + 4 + EXIF.length;
    at += 2 + view.getUint16(at + 2);
  }
  return undefined;
}

/** Where the value of an entry stands, or the offset of it. */
function entryAt({ view, tiff, isLittle }: Tiff, offset: number, tag: number): number | undefined {
  const start = tiff + offset;
  const count = view.getUint16(start, isLittle);
  for (let index = 0; index < count; index++) {
    const at = start + 2 + index * 12;
    if (view.getUint16(at, isLittle) === tag) return at + 8;
  }
  return undefined;
}

function isCutOut(read: Tiff, entries: number): boolean {
  const { view, tiff, isLittle } = read;
  const zoom = entryAt(read, entries, DIGITAL_ZOOM);
  if (zoom === undefined) return false;
  const at = tiff + view.getUint32(zoom, isLittle);
  return view.getUint32(at, isLittle) > ZOOMED * view.getUint32(at + 4, isLittle);
}
