/** A notebook's page as brightness, from the project's own drawing, with ink on it if wanted. */
import { renderAsync } from "@resvg/resvg-js";
import { createSVGWindow } from "svgdom";
import { blankScene } from "../../../src/draw/page/blank-scene.ts";
import type { Scene } from "../../../src/draw/scene.ts";
import { createSvgWriter } from "../../../src/draw/svg/write-svg.ts";
import type { Notebook } from "../../../src/notebook/notebook.ts";
import type { Random } from "../../oracle/random.ts";

/** Brightness 0 to 255, in rows; `perMm` pixels for a millimetre of paper. */
export interface Raster {
  readonly width: number;
  readonly height: number;
  readonly at: Float32Array;
  readonly perMm: number;
}

const PER_MM = 8;
const write = createSvgWriter(createSVGWindow());

export function pageRaster(notebook: Notebook): Promise<Raster> {
  return sceneRaster(blankScene(notebook));
}

/** Paper is 255 whatever its colour; what is printed on it is darker. */
export async function sceneRaster(scene: Scene): Promise<Raster> {
  const width = Math.round(scene.frame.width * PER_MM);
  const picture = await renderAsync(write(scene), {
    fitTo: { mode: "width", value: width },
    background: "white",
    font: { loadSystemFonts: false },
  });
  const { pixels, height } = picture;
  const at = new Float32Array(width * height);
  for (let index = 0; index < at.length; index++) at[index] = brightness(pixels, index * 4);
  const ground = at.filter((_, index) => index % EACH === 0).sort();
  const paper = ground[Math.floor(ground.length / 2)] ?? 255;
  for (let index = 0; index < at.length; index++)
    at[index] = Math.min(255, ((at[index] ?? 0) / paper) * 255);
  return { width, height, at, perMm: PER_MM };
}

/** One of so many pixels tells the paper's brightness, which most of them have. */
const EACH = 97;

/** Luma of ITU-R BT.601, from memory. */
function brightness(pixels: Uint8Array, index: number): number {
  const [red, green, blue] = [pixels[index], pixels[index + 1], pixels[index + 2]];
  return 0.299 * (red ?? 0) + 0.587 * (green ?? 0) + 0.114 * (blue ?? 0);
}

/** The same page with handwriting: wandering strokes, and every fourth one ruled straight. */
export function inked(page: Raster, strokes: number, random: Random): Raster {
  const at = page.at.slice();
  const part = () => random.whole(0, 99_999) / 100_000;
  for (let stroke = 0; stroke < strokes; stroke++) {
    let [x, y] = [part() * page.width, part() * page.height];
    let angle = stroke % 4 === 3 ? 0 : part() * 2 * Math.PI;
    const shade = 40 + part() * 80;
    for (let step = 0; step < 40 * page.perMm; step++) {
      if (stroke % 4 !== 3) angle += (part() - 0.5) * 0.2;
      x += Math.cos(angle);
      y += Math.sin(angle);
      dab({ ...page, at }, { x, y, shade });
    }
  }
  return { ...page, at };
}

/** A round mark of half a millimetre. */
function dab(
  { width, height, at, perMm }: Raster,
  { x, y, shade }: { readonly x: number; readonly y: number; readonly shade: number },
): void {
  const reach = Math.round(perMm / 4);
  for (let dy = -reach; dy <= reach; dy++)
    for (let dx = -reach; dx <= reach; dx++) {
      const [px, py] = [Math.round(x) + dx, Math.round(y) + dy];
      const isInside = px >= 0 && py >= 0 && px < width && py < height;
      if (isInside && dx * dx + dy * dy <= reach * reach) at[py * width + px] = shade;
    }
}
