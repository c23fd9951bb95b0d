/** Staged photos of the printed test sheet with a card on it, and the stretch that is the truth: single ones as wanted, or drawn at random. */
import { BANK_CARD } from "../../../src/measure/bank-card.ts";
import { PAPERS } from "../../../src/notebook/paper.ts";
import type { Focal, Stretch } from "../../../src/photo/camera-over.ts";
import type { Grey } from "../../../src/photo/grey.ts";
import { CARD_PLACE, type SheetPoint } from "../../../src/photo/test-sheet.ts";
import { sheetScene } from "../../../src/print/sheets/sheet-scene.ts";
import { testSheet } from "../../../src/print/sheets/test-sheet.ts";
import { type Random, randomFrom } from "../../oracle/random.ts";
import type { Pair, Size } from "./camera.ts";
import { type Raster, sceneRaster } from "./page-raster.ts";
import { type PhoneCamera, type PhonePose, phoneCamera } from "./phone-camera.ts";
import { type Light, normal, type Surface, sampled, takePhoto } from "./take-photo.ts";

export const PATTERNS = ["plain", "across", "along", "askew", "blots", "bordered"] as const;

export interface StagedCard {
  readonly long: number;
  readonly short: number;
  readonly thick: number;
  /** Off its place, in mm and degrees. */
  readonly right: number;
  readonly down: number;
  readonly turn: number;
  /** Brightness of its two colours, and of its faces. */
  readonly shades: Pair;
  readonly face: number;
  readonly pattern: (typeof PATTERNS)[number];
}

/** The shadow of the card on the sheet: how far it falls, in mm, how soft it is, and how dark from 0 to 1. */
export interface CastShadow {
  readonly right: number;
  readonly down: number;
  readonly soft: number;
  readonly dark: number;
}

export interface BarsStaging {
  readonly stretch: Stretch;
  readonly size: Size;
  readonly pose: PhonePose;
  readonly card?: StagedCard;
  readonly shadow: CastShadow;
  readonly light: Light;
  /** Something dark that lies on the sheet: its middle and its radius, in mm. */
  readonly thing?: { readonly at: Pair; readonly radius: number };
  /** What the camera says of itself. */
  readonly focal?: Focal;
  readonly seed: number;
}

const [WIDTH] = PAPERS.A4;
/** Where the first dot lies on the sheet, before it is stretched: as `testSheet` has it. */
const FIRST: Pair = [(WIDTH - 140) / 2, 12.7 + 18];

let sheet: Promise<Raster> | undefined;

export async function stageBars(staging: BarsStaging): Promise<Grey> {
  sheet ??= sceneRaster(sheetScene(testSheet("A4"), "test-sheet"));
  const { size, light, pose, seed } = staging;
  const camera = phoneCamera(size, pose);
  const surface = surfaceOf(await sheet, staging, camera);
  return takePhoto(size, surface, { camera, light, random: randomFrom(seed) });
}

/** The place of the card's middle on the stretched sheet, in mm of paper. */
export function placeOnPaper({ x, y }: Stretch, at: SheetPoint = CARD_PLACE.middle): Pair {
  return [(FIRST[0] + at.x) * x, (FIRST[1] + at.y) * y];
}

function surfaceOf(raster: Raster, staging: BarsStaging, camera: PhoneCamera): Surface {
  const { stretch, card, light, thing, shadow } = staging;
  const { nadir, height } = camera;
  const paper = (x: number, y: number) => sampled(raster, light, x / stretch.x, y / stretch.y);
  const bare = (x: number, y: number) =>
    thing && Math.hypot(x - thing.at[0], y - thing.at[1]) < thing.radius ? THING : paper(x, y);
  if (!card) return bare;
  const { toCard, outside } = cardOn(staging, card);
  const part = card.thick / height;
  return (x, y) => {
    const far = outside(x, y);
    if (far > FAR || thing) {
      const seen = bare(x, y);
      if (far > FAR || seen === THING) return seen;
    }
    const [topX, topY] = [x + (nadir[0] - x) * part, y + (nadir[1] - y) * part];
    if (outside(topX, topY) < 0) return shadeOf(card, toCard(topX, topY));
    return far < 0 ? card.face : paper(x, y) * shadowAt(shadow, outside, x, y);
  };
}

/** Brightness of a thing that lies on the sheet. */
const THING = 60;
/** Farther from the card than this there is no shadow of it, in mm. */
const FAR = 4;

/** How far outside of the card's outline a place of the paper is, in mm. */
type Outside = (x: number, y: number) => number;

function cardOn(
  { stretch }: BarsStaging,
  card: StagedCard,
): { readonly toCard: (x: number, y: number) => Pair; readonly outside: Outside } {
  const [placeX, placeY] = placeOnPaper(stretch);
  const [middleX, middleY] = [placeX + card.right, placeY + card.down];
  const angle = ((CARD_PLACE.turn + card.turn) * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const { corner } = BANK_CARD;
  const [insideX, insideY] = [card.long / 2 - corner, card.short / 2 - corner];
  return {
    toCard: (x, y) => [
      cos * (x - middleX) + sin * (y - middleY),
      -sin * (x - middleX) + cos * (y - middleY),
    ],
    outside: (x, y) => {
      const [dx, dy] = [x - middleX, y - middleY];
      const right = Math.abs(cos * dx + sin * dy) - insideX;
      const down = Math.abs(-sin * dx + cos * dy) - insideY;
      if (right <= 0 || down <= 0) return Math.max(right, down) - corner;
      return Math.sqrt(right * right + down * down) - corner;
    },
  };
}

function shadeOf({ pattern, shades, long, short }: StagedCard, [x, y]: Pair): number {
  const [first, second] = shades;
  switch (pattern) {
    case "plain":
      return first;
    case "across":
      return Math.sin(x * 0.8) > 0 ? first : second;
    case "along":
      return Math.sin(y * 0.6 + 1) > 0 ? first : second;
    case "askew":
      return Math.sin((x + y) * 0.5) > 0 ? first : second;
    case "blots":
      return Math.sin(x * 0.31) * Math.sin(y * 0.43 + Math.sin(x * 0.2)) > 0.1 ? first : second;
    case "bordered":
      return Math.min(long / 2 - Math.abs(x), short / 2 - Math.abs(y)) < 3 ? first : second;
  }
}

/** The part of the light that is left beside the card. */
function shadowAt(
  { right, down, soft, dark }: CastShadow,
  outside: Outside,
  x: number,
  y: number,
): number {
  if (dark === 0) return 1;
  const nearest = Math.min(outside(x - right / 2, y - down / 2), outside(x - right, y - down));
  return 1 - dark / (1 + Math.exp((4 * nearest) / Math.max(0.02, soft)));
}

/** A dark card on its place, in daylight, from straight above. */
export const BARS_STAGING: BarsStaging = {
  stretch: { x: 0.97, y: 1.01 },
  size: { width: 1_200, height: 1_600 },
  pose: {
    ...{ yaw: 0, pitch: 0, turn: 0, distance: 300, focal: 2.2, lens: 0 },
    aim: placeOnPaper({ x: 0.97, y: 1.01 }, { x: 70, y: 70 }),
  },
  card: {
    ...{ long: BANK_CARD.long, short: BANK_CARD.short, thick: BANK_CARD.thick },
    ...{ right: 0.5, down: -0.4, turn: 0.6, shades: [70, 120], face: 120, pattern: "plain" },
  },
  shadow: { right: 0, down: 0, soft: 0.3, dark: 0 },
  light: {
    ...{ paper: 225, desk: 90, ink: 1, falloff: 0.15, shadow: 0 },
    ...{ blur: 0.7, noise: 2, quality: 88 },
  },
  seed: 5,
};

const WIDEST = 1.39;

/** A staging of chance. Card and camera are as they may be; what is laid wrong or hidden is staged singly. */
export function anyBars(seed: number, size: Size): BarsStaging {
  const random = randomFrom(seed);
  const part = () => random.whole(0, 100_000) / 100_000;
  const between = (least: number, most: number) => least + part() * (most - least);
  const stretch = { x: between(0.94, 1.03), y: between(0.94, 1.03) };
  const distance = between(180, 450);
  const focal = Math.max(WIDEST, distance / between(115, 160));
  const [tilt, way] = [between(0, 20), between(0, 2 * Math.PI)];
  const aim = placeOnPaper(stretch, { x: 70, y: 70 });
  const light: Light = {
    ...{ paper: between(165, 245), desk: between(30, 160), ink: between(0.7, 1.1) },
    ...{ falloff: between(0, 0.4), shadow: random.oneIn(4) ? between(0, 0.4) : 0 },
    ...{ blur: between(0.5, 1.4), noise: between(0, 4), quality: random.whole(80, 95) },
  };
  const knows = random.oneIn(2);
  return {
    ...{ stretch, size, light, seed },
    pose: {
      ...{ yaw: tilt * Math.cos(way), pitch: tilt * Math.sin(way) },
      turn: random.whole(0, 3) * 90 + between(-15, 15),
      ...{ distance, focal, aim: [aim[0] + between(-5, 5), aim[1] + between(-5, 5)] },
      lens: random.oneIn(2) ? between(-0.03, 0.03) : 0,
    },
    card: anyCard(random, between, light),
    shadow: anyShadow(random, between),
    ...(knows && {
      focal: { log: Math.log(focal * (1 + 0.04 * normal(random))), off: 0.06 },
    }),
  };
}

type Between = (least: number, most: number) => number;

function anyCard(random: Random, between: Between, { paper }: Light): StagedCard {
  const within = (most: number, deviation: number) =>
    Math.max(-most, Math.min(most, deviation * normal(random)));
  const { off } = BANK_CARD;
  const dark: Pair = [between(25, 90), between(25, 120)];
  const shades: Pair = random.oneIn(3) ? [between(0.55, 1.05) * paper, between(30, 200)] : dark;
  return {
    long: BANK_CARD.long + within(off.long, off.long / 2.5),
    short: BANK_CARD.short + within(off.short, off.short / 2.5),
    thick: BANK_CARD.thick + within(off.thick, off.thick / 2),
    ...{ right: between(-2, 2), down: between(-2, 2), turn: between(-2.5, 2.5) },
    ...{ shades, face: between(60, 230), pattern: random.pick(PATTERNS) },
  };
}

function anyShadow(random: Random, between: Between): CastShadow {
  if (random.oneIn(2)) return { right: 0, down: 0, soft: between(0.2, 1), dark: between(0, 0.25) };
  const [far, way] = [between(0, 0.8), between(0, 2 * Math.PI)];
  return {
    ...{ right: far * Math.cos(way), down: far * Math.sin(way) },
    ...{ soft: between(0.1, 0.6), dark: between(0, 0.5) },
  };
}

/** The same with something wrong: the card off its place or not all in the picture, a thing on it, or no card. */
export function anyWrongBars(seed: number, size: Size): BarsStaging {
  const staging = anyBars(seed, size);
  const random = randomFrom(seed + 1);
  const between = (least: number, most: number) =>
    least + (random.whole(0, 1_000) / 1_000) * (most - least);
  const { card, stretch, pose } = staging;
  const [placeX, placeY] = placeOnPaper(stretch);
  const way = between(0, 2 * Math.PI);
  const beside = (far: number): Pair => [
    placeX + far * Math.cos(way),
    placeY + far * Math.sin(way),
  ];
  switch (random.pick(["moved", "turned", "thing", "cut", "bare"])) {
    case "moved":
      return card
        ? { ...staging, card: { ...card, right: 20 * Math.cos(way), down: 20 * Math.sin(way) } }
        : staging;
    case "turned":
      return card ? { ...staging, card: { ...card, turn: between(8, 170) } } : staging;
    case "thing":
      return { ...staging, thing: { at: beside(between(20, 50)), radius: between(8, 25) } };
    case "cut":
      return { ...staging, pose: { ...pose, aim: beside(between(60, 110)) } };
    case "bare": {
      const { card: _, ...bare } = staging;
      return bare;
    }
  }
}
