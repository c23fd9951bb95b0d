/** Photos as PNG files, made once for all engines: a page of A6 with 20 by 28 dots, and the test sheet with a card on it. */
import { PNG } from "pngjs";
import type { Grey } from "../../src/photo/grey.ts";
import { barFields } from "../../src/view/photo/bars-numbers.ts";
import { BARS_STAGING, placeOnPaper, stageBars } from "../photo/stage/staged-bars.ts";
import { DAYLIGHT, FLAT, gridOn, stagePhoto } from "../photo/stage/staged-photo.ts";
import { measuredIn } from "../photo/stage/tally-bars.ts";

let page: Promise<Uint8Array> | undefined;

export function stagedPage(): Promise<Uint8Array> {
  page ??= takePage();
  return page;
}

async function takePage(): Promise<Uint8Array> {
  const { photo } = await stagePhoto({
    notebook: gridOn("A6", 5, [20, 28], { first: [5, 5] }),
    size: { width: 690, height: 920 },
    pose: { ...FLAT, pitch: 15, turn: 4, margin: 0.05 },
    light: DAYLIGHT,
    strokes: 0,
    seed: 11,
  });
  return pngOf(photo);
}

export interface StagedSheet {
  readonly file: Uint8Array;
  /** Both bars in mm, as Node measures them in the same photo. */
  readonly lengths: { readonly x: string; readonly y: string };
}

let sheet: Promise<StagedSheet> | undefined;

export function stagedSheet(): Promise<StagedSheet> {
  sheet ??= takeSheet();
  return sheet;
}

const STRETCH = { x: 0.985, y: 1.01 };

/** About as small as one may be. */
async function takeSheet(): Promise<StagedSheet> {
  const photo = await stageBars({
    ...BARS_STAGING,
    stretch: STRETCH,
    size: { width: 840, height: 860 },
    pose: {
      ...{ yaw: 3, pitch: 6, turn: 4, distance: 300, focal: 3, lens: 0.02 },
      aim: placeOnPaper(STRETCH, { x: 70, y: 70 }),
    },
  });
  const found = measuredIn(photo);
  if (!found.ok) throw new Error(`the bars are not measured: ${found.doubt.kind}`);
  return { file: pngOf(photo), lengths: barFields(found.bars) };
}

function pngOf({ width, height, at }: Grey): Uint8Array {
  const data = Buffer.alloc(4 * at.length, 255);
  for (const [index, light] of at.entries()) data.fill(light, 4 * index, 4 * index + 3);
  return PNG.sync.write({ width, height, data });
}
