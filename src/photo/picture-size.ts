/** How large a picture is, from the first bytes of its file: asked before it is unpacked. */

export interface PictureSize {
  readonly width: number;
  readonly height: number;
}

const PNG = [0x89, 0x50, 0x4e, 0x47];
/** Start of frame, of any coding; three of the range are something else (ITU-T T.81, table B.1, from memory). */
const NO_FRAMES: ReadonlySet<number> = new Set([0xc4, 0xc8, 0xcc]);

/** Of a PNG or a JPEG file; nothing where the bytes do not tell. */
export function pictureSize(bytes: Uint8Array): PictureSize | undefined {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  // The first chunk is IHDR, with both sizes at its head (PNG, 3rd edition, 11.2.1, from memory).
  if (bytes.length >= 24 && PNG.every((byte, index) => bytes[index] === byte))
    return { width: view.getUint32(16), height: view.getUint32(20) };
  return bytes[0] === 0xff && bytes[1] === 0xd8 ? jpegSize(view) : undefined;
}

/** Goes from segment to segment until a frame starts. */
function jpegSize(view: DataView): PictureSize | undefined {
  let at = 2;
  while (at + 9 <= view.byteLength) {
    if (view.getUint8(at) !== 0xff) return undefined;
    const marker = view.getUint8(at + 1);
    if (marker === 0xff) {
      at += 1;
      continue;
    }
    if (marker >= 0xc0 && marker <= 0xcf && !NO_FRAMES.has(marker))
      return { width: view.getUint16(at + 7), height: view.getUint16(at + 5) };
    at += 2 + view.getUint16(at + 2);
  }
  return undefined;
}
