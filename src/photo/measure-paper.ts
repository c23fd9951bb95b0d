/** The pitch and the first dot's place in millimetres, from where the paper's corners are seen. */
import { numberAt, type PhotoPoint } from "./grey.ts";
import type { CountedGrid } from "./photo-count.ts";
import { latticeAt } from "./plane-view.ts";

/** From the top left corner clockwise. */
export type PaperCorners = readonly [PhotoPoint, PhotoPoint, PhotoPoint, PhotoPoint];

/** In mm. */
export interface PaperSize {
  readonly width: number;
  readonly height: number;
}

/** Lengths in mm. */
export interface MeasuredGrid {
  readonly pitch: { readonly across: number; readonly down: number };
  readonly first: { readonly left: number; readonly top: number };
  /** By how much of itself the paper differs between opposite edges: what the corners are off, at least. */
  readonly spread: number;
}

/**
 * Why there are no lengths. `no-sheet`: corners that no sheet has, two on one place, in a wrong order, inside the grid, or
 * far from a rectangle. `curled`: what is printed lies too far from where a flat sheet has it.
 * `uneven`, of lines: one of the two.
 */
export type Unmeasured = "no-sheet" | "curled" | "uneven";

export type Measuring =
  | { readonly ok: true; readonly grid: MeasuredGrid }
  | { readonly ok: false; readonly kind: Unmeasured };

/** More than this is no slip of a finger. */
const MOST_SPREAD = 0.03;
/** Half of the dots of a flat sheet lie no farther off than so many steps, or pixels. */
const MOST_OFF = 0.01;
const LEAST_OFF_PX = 0.25;
/** By noise alone a dot lies less far from its own place than from halfway between its neighbours, which have noise too. */
const NOISY = 1.2;

export function measureGrid(grid: CountedGrid, corners: PaperCorners, paper: PaperSize): Measuring {
  const seen = corners.map((corner) => {
    const { across, down } = latticeAt(grid.view, corner);
    return { x: across - grid.first.across, y: down - grid.first.down };
  });
  const x = seen.map((corner) => corner.x);
  const y = seen.map((corner) => corner.y);
  const [left, right] = [between(x, 0, 3), between(x, 1, 2)];
  const [top, bottom] = [between(y, 0, 1), between(y, 3, 2)];
  const [width, height] = [right - left, bottom - top];
  const isAround =
    left < 0 && top < 0 && right > grid.across - 1 && bottom > grid.down - 1 && width * height > 0;
  const spread = Math.max(
    ...[apart(x, 0, 3), apart(x, 1, 2)].map((off) => off / width),
    ...[apart(y, 0, 1), apart(y, 3, 2)].map((off) => off / height),
  );
  if (!isAround || !(spread <= MOST_SPREAD)) return { ok: false, kind: "no-sheet" };
  if (isCurled(grid)) return { ok: false, kind: "curled" };
  const pitch = { across: paper.width / width, down: paper.height / height };
  const first = { left: -left * pitch.across, top: -top * pitch.down };
  return { ok: true, grid: { pitch, first, spread } };
}

/** Noise moves each dot for itself, a curl moves neighbours alike. */
function isCurled({ residual, unevenness, step }: CountedGrid): boolean {
  return residual > Math.max(LEAST_OFF_PX, MOST_OFF * step) && residual > NOISY * unevenness;
}

function between(values: readonly number[], one: number, other: number): number {
  return (numberAt(values, one) + numberAt(values, other)) / 2;
}

function apart(values: readonly number[], one: number, other: number): number {
  return Math.abs(numberAt(values, one) - numberAt(values, other));
}
