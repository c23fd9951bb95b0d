/** What a dark place of a photo is: a dot, the crossing of lines, a part of a line, or something else. */
import {
  isWithin,
  numberAt,
  type PhotoPoint,
  type SummedGrey,
  squareMean,
  squareSum,
} from "./grey.ts";

export type SpotKind = "dot" | "crossing" | "line" | "other";

export interface Spot extends PhotoPoint {
  readonly kind: SpotKind;
  /** How much darker it is than what is around it, as a part of that: about 0 to 1. */
  readonly strength: number;
  /** How bright it is beside a line; of a line alone. */
  readonly ground?: number;
}

/** So many directions are looked at around a spot. */
const RIM = 16;
const RIM_WAYS = Array.from({ length: RIM }, (_, index) => {
  const angle = (2 * Math.PI * index) / RIM;
  return [Math.cos(angle), Math.sin(angle)] as const;
});
/** Added to each brightness, so that dark places with noise do not look like strong spots. */
export const FLOOR = 20;
/** A rim is dark in a direction where it is less than this part as much brighter as elsewhere. */
const DARK_PART = 0.55;
/** So many of the directions. */
const MOST_DARK = 4;

/** How far from a spot of this reach the rim is looked at, with all that is read there. */
export function rimReach(reach: number): number {
  return 2 * reach + 4;
}

/** How much darker the square around a pixel is than the frame around that square, as a part of the frame. */
export function contrastAt(grey: SummedGrey, x: number, y: number, reach: number): number {
  const core = squareSum(grey, x, y, reach);
  const all = squareSum(grey, x, y, 2 * reach + 1);
  const coreArea = (2 * reach + 1) ** 2;
  const frame = (all - core) / ((4 * reach + 3) ** 2 - coreArea);
  return (frame - core / coreArea) / (frame + FLOOR);
}

/** The spot at a pixel, with its middle between pixels; nothing at the photo's border. */
export function spotAt(grey: SummedGrey, at: PhotoPoint, reach: number): Spot | undefined {
  if (!isWithin(grey, at, rimReach(reach) + 1)) return undefined;
  const { x, y } = centroid(grey, at, reach);
  const core = squareMean(grey, at.x, at.y, Math.max(1, reach - 1));
  const far = 2 * reach + 1.5;
  const rim = RIM_WAYS.map(([right, down]) => {
    const mean = squareMean(grey, Math.round(x + right * far), Math.round(y + down * far), 1);
    return (mean - core) / (mean + FLOOR);
  });
  return { x, y, ...judgeRim(rim) };
}

/** The centre of darkness against the frame's brightness. */
function centroid(grey: SummedGrey, { x, y }: PhotoPoint, reach: number): PhotoPoint {
  const core = squareSum(grey, x, y, reach);
  const all = squareSum(grey, x, y, 2 * reach + 1);
  const frame = (all - core) / ((4 * reach + 3) ** 2 - (2 * reach + 1) ** 2);
  let [weight, sumX, sumY] = [0, 0, 0];
  for (let dy = -reach - 1; dy <= reach + 1; dy++)
    for (let dx = -reach - 1; dx <= reach + 1; dx++) {
      const dark = Math.max(0, frame - (grey.at[(y + dy) * grey.width + x + dx] ?? 0));
      weight += dark;
      sumX += dark * dx;
      sumY += dark * dy;
    }
  return weight > 0 ? { x: x + sumX / weight, y: y + sumY / weight } : { x, y };
}

/** A dot is bright all around, a crossing dark on three or four arms or on two at right angles, a line on two opposite ones. */
function judgeRim(rim: readonly number[]): Pick<Spot, "kind" | "strength"> {
  const sorted = rim.toSorted((a, b) => a - b);
  const strength = numberAt(sorted, RIM / 2);
  const bound = DARK_PART * numberAt(sorted, RIM - 3);
  const dark = rim.map((contrast) => contrast < bound);
  const darkAxes = dark.filter((one, index) => one && dark[(index + RIM / 2) % RIM]);
  // Noise or ink nearby may darken a few directions of a dot, but hardly two opposite ones.
  const few = dark.filter(Boolean).length <= MOST_DARK;
  if (strength > 0 && darkAxes.length === 0 && few) return { kind: "dot", strength };
  const arms = armsOf(dark);
  const [first = 0, second = 0] = arms;
  const turn = Math.abs(second - first);
  const between = Math.min(turn, 2 * Math.PI - turn);
  if (arms.length === 3 || arms.length === 4) return { kind: "crossing", strength };
  if (arms.length !== 2) return { kind: "other", strength };
  if (between > (7 / 9) * Math.PI) return { kind: "line", strength };
  return { kind: between > Math.PI / 3 ? "crossing" : "other", strength };
}

/** The middles of the dark runs around a rim, in radians. */
function armsOf(dark: readonly boolean[]): readonly number[] {
  const bright = dark.indexOf(false);
  if (bright < 0) return [];
  const arms: number[] = [];
  let run = 0;
  for (let step = 1; step <= RIM; step++) {
    if (dark[(bright + step) % RIM]) run++;
    else if (run > 0) {
      arms.push(((bright + step - (run + 1) / 2) * 2 * Math.PI) / RIM);
      run = 0;
    }
  }
  return arms;
}
