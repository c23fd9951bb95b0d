/** How a place of a lattice is looked at: for a dot, for where two lines cross, or for one line that runs along a row. */
import { brightnessAt, isWithin, numberAt, type PhotoPoint, type SummedGrey } from "./grey.ts";
import { contrastAt, FLOOR, rimReach, type Spot, spotAt } from "./spot.ts";

/** To the neighbours of a place, in pixels. */
export interface Steps {
  readonly right: PhotoPoint;
  readonly below: PhotoPoint;
}

/** What is seen about a point, at most so many pixels off. */
export type Look = (at: PhotoPoint, within: number, steps: Steps) => Spot | undefined;

/** The darkest spot, whatever it is. */
export function lookForDots(grey: SummedGrey, reach: number): Look {
  return (seen, within) => {
    const at = { x: Math.round(seen.x), y: Math.round(seen.y) };
    const far = Math.round(within);
    if (!isWithin(grey, at, rimReach(reach) + far + 1)) return undefined;
    return spotAt(grey, darkestAround(grey, at, { reach, within: far }), reach);
  };
}

function darkestAround(
  grey: SummedGrey,
  { x, y }: PhotoPoint,
  { reach, within }: { readonly reach: number; readonly within: number },
): PhotoPoint {
  let [best, most]: [PhotoPoint, number] = [{ x, y }, Number.NEGATIVE_INFINITY];
  for (let dy = -within; dy <= within; dy++)
    for (let dx = -within; dx <= within; dx++) {
      const contrast = contrastAt(grey, x + dx, y + dy, reach);
      if (contrast > most) [best, most] = [{ x: x + dx, y: y + dy }, contrast];
    }
  return best;
}

/** Where a line of each way is seen; a crossing is as strong as the fainter one. */
export function lookForCrossings(grey: SummedGrey): Look {
  return (at, within, { right, below }) => {
    const row = lineNear(grey, at, { along: right, across: below, within });
    const column = lineNear(grey, at, { along: below, across: right, within });
    if (!row || !column) return undefined;
    return {
      x: at.x + row.off.x + column.off.x,
      y: at.y + row.off.y + column.off.y,
      kind: "crossing",
      strength: Math.min(row.strength, column.strength),
    };
  };
}

/** Lines are looked for that much nearer to where they should be than dots: each is sure of its neighbours. */
const NEARER = 0.55;

/** Where the line of a row is seen; how far along it a place lies cannot be seen. */
export function lookForLines(grey: SummedGrey): Look {
  return (at, within, { right, below }) => {
    const way = { along: right, across: below, within: NEARER * within };
    const row = lineNear(grey, at, way);
    if (!row) return undefined;
    const { off, strength, ground } = row;
    return { x: at.x + off.x, y: at.y + off.y, kind: "line", strength, ground };
  };
}

/** The same, but for what is fainter. */
export function noFainter(look: Look, least: number): Look {
  return (at, within, steps) => {
    const spot = look(at, within, steps);
    return spot && spot.strength >= least ? spot : undefined;
  };
}

/** A line is looked at so far to both sides, in steps; the nearest part is left out, since another may cross there. */
const ARM = 0.45;
const INNER_PX = 3;
const SAMPLES = 6;
/** Brightness beside a line is taken so far from its middle. */
const BESIDE_PX = 4;
const BESIDE = 0.14;

/** Half as far from its middle a line has so much of its rise to the paper behind it; the soft grain of a table has less. */
const NARROW = 0.42;

interface LineNear {
  readonly off: PhotoPoint;
  readonly strength: number;
  readonly ground: number;
}

/** The deepest valley of brightness on the way across: an edge between paper and desk is none. */
function lineNear(
  grey: SummedGrey,
  at: PhotoPoint,
  way: { readonly along: PhotoPoint; readonly across: PhotoPoint; readonly within: number },
): LineNear | undefined {
  const { along, across } = way;
  const step = Math.hypot(across.x, across.y);
  const unit = { x: across.x / step, y: across.y / step };
  const within = Math.ceil(way.within);
  const beside = Math.round(Math.max(BESIDE_PX, BESIDE * step));
  const far = within + beside;
  if (!isWithin(grey, at, far + ARM * Math.hypot(along.x, along.y) + 2)) return undefined;
  const means = meansAcross(grey, at, { along, unit, far });
  const sideAt = (off: number) =>
    Math.min(numberAt(means, far + off - beside), numberAt(means, far + off + beside));
  const depth = (off: number) => (sideAt(off) - numberAt(means, far + off)) / (sideAt(off) + FLOOR);
  let best = 0;
  for (let off = -within; off <= within; off++) if (depth(off) > depth(best)) best = off;
  const strength = depth(best);
  if (strength <= 0) return undefined;
  const halfway = Math.round(beside / 2);
  const nearby =
    (numberAt(means, far + best - halfway) + numberAt(means, far + best + halfway)) / 2;
  const rise = sideAt(best) - numberAt(means, far + best);
  if (nearby - numberAt(means, far + best) < NARROW * rise) return undefined;
  // The lowest point of a parabola through the deepest place and those beside it.
  const [before, here, after] = [-1, 0, 1].map((off) => numberAt(means, far + best + off));
  const bend = (before ?? 0) - 2 * (here ?? 0) + (after ?? 0);
  const part = bend > 0 ? ((before ?? 0) - (after ?? 0)) / (2 * bend) : 0;
  const off = best + Math.max(-0.5, Math.min(0.5, part));
  return { off: { x: off * unit.x, y: off * unit.y }, strength, ground: sideAt(best) };
}

/** The mean brightness along a line, on both sides of each place on the way across, a pixel apart: most of the time goes here. */
function meansAcross(
  grey: SummedGrey,
  at: PhotoPoint,
  way: { readonly along: PhotoPoint; readonly unit: PhotoPoint; readonly far: number },
): readonly number[] {
  const { along, unit, far } = way;
  const length = Math.hypot(along.x, along.y);
  const each = (ARM * length - INNER_PX) / (SAMPLES - 1);
  const means: number[] = [];
  for (let off = -far; off <= far; off++) {
    const x = at.x + off * unit.x;
    const y = at.y + off * unit.y;
    let sum = 0;
    for (let sample = 0; sample < SAMPLES; sample++) {
      const part = (INNER_PX + sample * each) / length;
      const dx = part * along.x;
      const dy = part * along.y;
      sum += brightnessAt(grey, x + dx, y + dy) + brightnessAt(grey, x - dx, y - dy);
    }
    means.push(sum / (2 * SAMPLES));
  }
  return means;
}
