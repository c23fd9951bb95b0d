/** Staged photos with the truth beside each: single ones as wanted, or drawn at random with a written seed. */
import { fromMm, toMm } from "../../../src/measure/length.ts";
import type { Binding, Notebook, Ruling } from "../../../src/notebook/notebook.ts";
import { PAPERS, type PaperName } from "../../../src/notebook/paper.ts";
import type { Grey } from "../../../src/photo/grey.ts";
import type { PaperCorners } from "../../../src/photo/measure-paper.ts";
import { notebookWith } from "../../draw/plan-of.ts";
import { type Random, randomFrom } from "../../oracle/random.ts";
import { aimCamera, type Pose, type Size, sheetCorners } from "./camera.ts";
import { inked, pageRaster, type Raster } from "./page-raster.ts";
import { type Light, sampled, takePhoto } from "./take-photo.ts";

export interface Staging {
  readonly notebook: Notebook;
  readonly size: Size;
  readonly pose: Pose;
  readonly light: Light;
  readonly strokes: number;
  readonly seed: number;
}

export interface StagedPhoto {
  readonly photo: Grey;
  readonly staging: Staging;
  /** Where the paper's corners are seen, from the top left one clockwise. */
  readonly corners: PaperCorners;
}

export const FLAT: Pose = { yaw: 0, pitch: 0, turn: 0, margin: 0.05, lens: 0, curl: 0 };

export const DAYLIGHT: Light = {
  ...{ paper: 225, desk: 90, ink: 1, falloff: 0.15, shadow: 0 },
  ...{ blur: 0.7, noise: 2, quality: 88 },
};

export async function stagePhoto(staging: Staging): Promise<StagedPhoto> {
  const { notebook, size, pose, light, strokes, seed } = staging;
  const random = randomFrom(seed);
  const { across, down } = notebook.axes;
  const paper = { width: toMm(across.paper), height: toMm(down.paper) };
  const camera = aimCamera(size, paper, pose);
  const page = inked(await rasterOf(notebook), strokes, random);
  const surface = (mmX: number, mmY: number) => sampled(page, light, mmX, mmY);
  const photo = takePhoto(size, surface, { camera, light, random });
  const [a, b, c, d] = sheetCorners(paper).map((corner) => {
    const [x, y] = camera.see(corner);
    return { x, y };
  });
  if (!a || !b || !c || !d) throw new Error("a sheet has four corners");
  return { photo, staging, corners: [a, b, c, d] };
}

const rasters = new WeakMap<Notebook, Promise<Raster>>();

function rasterOf(notebook: Notebook): Promise<Raster> {
  const known = rasters.get(notebook) ?? pageRaster(notebook);
  rasters.set(notebook, known);
  return known;
}

/** A grid on named paper, centred, or with its first dot where it is said; lengths in mm. */
export function gridOn(
  paper: PaperName,
  pitch: number,
  [across, down]: readonly [number, number],
  given: {
    readonly first?: readonly [number, number];
    readonly ruling?: Ruling;
    readonly binding?: Binding;
  } = {},
): Notebook {
  const axis = (dots: number, side: number, first?: number) => ({
    dots,
    pitch: fromMm(pitch),
    paper: fromMm(side),
    firstDot: fromMm(first ?? (side - (dots - 1) * pitch) / 2),
    count: "edge-to-dot" as const,
  });
  const [width, height] = PAPERS[paper];
  return notebookWith(axis(across, width, given.first?.[0]), axis(down, height, given.first?.[1]), {
    ruling: given.ruling ?? "dots",
    binding: given.binding ?? "none",
  });
}

/** Notebooks of several papers, pitches and margins; the last two are squared. */
export const NOTEBOOKS: readonly [Notebook, ...Notebook[]] = [
  gridOn("A5", 5, [26, 38], { first: [11.5, 12.5] }),
  gridOn("A5", 5, [27, 39]),
  gridOn("A6", 5, [20, 28], { first: [5, 5] }),
  gridOn("A6", 4, [25, 36], { first: [4.5, 4] }),
  gridOn("A5", 3.7, [38, 55]),
  gridOn("B5", 6, [27, 39], { first: [14, 16] }),
  gridOn("letter", 6.35, [33, 43], { first: [6.35, 6.35] }),
  gridOn("B6", 5, [24, 32], { first: [5, 16] }),
  gridOn("A4", 5, [39, 57], { ruling: "squares" }),
  gridOn("A5", 5, [28, 40], { ruling: "squares" }),
];

/** Exercise books and pads in lines of several distances. */
export const LINED: readonly [Notebook, ...Notebook[]] = [
  gridOn("A5", 7, [21, 26], { first: [4, 18], ruling: "lines" }),
  gridOn("B5", 8, [22, 28], { first: [4, 20], ruling: "lines" }),
  gridOn("A6", 6, [17, 21], { first: [5, 15], ruling: "lines" }),
  gridOn("A4", 8, [26, 33], { first: [5, 25], ruling: "lines" }),
];

/** Pixels of the photo for a millimetre of the page's longer side: as many as a photo of A4 has once it is scaled to 2,000. */
const PER_MM = 6.5;

/** A staging of chance: tilt to 35°, turn to 20°, a lens to 4 %, and what light and hands do. */
export function anyStaging(seed: number, notebooks = NOTEBOOKS): Staging {
  const random = randomFrom(seed);
  const part = () => random.whole(0, 10_000) / 10_000;
  const between = (least: number, most: number) => least + part() * (most - least);
  const tilt = between(0, 35);
  const way = between(0, 2 * Math.PI);
  const notebook = random.pick(notebooks);
  const longSide = Math.round(PER_MM * toMm(notebook.axes.down.paper));
  return {
    notebook,
    size: { width: Math.round(longSide * 0.75), height: longSide },
    pose: {
      yaw: tilt * Math.cos(way),
      pitch: tilt * Math.sin(way),
      turn: between(-20, 20),
      margin: between(0.02, 0.08),
      lens: random.oneIn(2) ? between(-0.04, 0.04) : 0,
      curl: random.oneIn(5) ? between(0, 4) : 0,
    },
    light: lightOf(random, between),
    strokes: random.oneIn(3) ? random.whole(1, 10) : 0,
    seed,
  };
}

function lightOf(random: Random, between: (least: number, most: number) => number): Light {
  return {
    paper: between(150, 245),
    desk: between(30, 200),
    ink: between(0.5, 1.2),
    falloff: between(0, 0.5),
    shadow: random.oneIn(3) ? between(0, 0.5) : 0,
    blur: between(0.4, 1.3),
    noise: between(0, 4),
    quality: random.whole(80, 95),
  };
}
