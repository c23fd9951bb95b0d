/** A photo of a page of A6 with 20 by 28 dots, as a PNG: made once for all engines. */
import { PNG } from "pngjs";
import { DAYLIGHT, FLAT, gridOn, stagePhoto } from "../photo/stage/staged-photo.ts";

let made: Promise<Uint8Array> | undefined;

export function stagedPage(): Promise<Uint8Array> {
  made ??= takePhoto();
  return made;
}

async function takePhoto(): Promise<Uint8Array> {
  const { photo } = await stagePhoto({
    notebook: gridOn("A6", 5, [20, 28], { first: [5, 5] }),
    size: { width: 690, height: 920 },
    pose: { ...FLAT, pitch: 15, turn: 4, margin: 0.05 },
    light: DAYLIGHT,
    strokes: 0,
    seed: 11,
  });
  const grey = [...photo.at].flatMap((light) => [light, light, light, 255]);
  return PNG.sync.write({ width: photo.width, height: photo.height, data: Buffer.from(grey) });
}
