/** How a flat sheet appears in a photo: a homography (Hartley & Zisserman, ch. 2, from memory) and one radial term of the lens. */
import { type Grey, numberAt, type PhotoPoint } from "./grey.ts";

/** A place of the lattice; between dots it is broken. */
export interface LatticePoint {
  readonly across: number;
  readonly down: number;
}

/** In parts of `scale` pixels from the photo's middle, where a lens has its axis. */
export interface PlaneView {
  /** The homography by rows, without its last number, which is 1. */
  readonly plane: readonly number[];
  /** The radial term: a point at distance r is moved to r × (1 + lens × r²). Barrel is below nought. */
  readonly lens: number;
  readonly middle: PhotoPoint;
  /** Half the photo's longer side. */
  readonly scale: number;
}

/** Lattice places are divided by this, so that all numbers of a fit are of one size. */
export const LATTICE_SCALE = 20;

const ROUNDS = 12;

export function frameOf({
  width,
  height,
}: Pick<Grey, "width" | "height">): Pick<PlaneView, "middle" | "scale"> {
  return {
    middle: { x: (width - 1) / 2, y: (height - 1) / 2 },
    scale: Math.max(width, height) / 2,
  };
}

/** Where a place of the lattice is seen. */
export function seenAt(view: PlaneView, { across, down }: LatticePoint): PhotoPoint {
  const { middle, scale, lens } = view;
  const { x, y } = straightAt(view.plane, across / LATTICE_SCALE, down / LATTICE_SCALE);
  const stretch = scale * (1 + lens * (x * x + y * y));
  return { x: middle.x + x * stretch, y: middle.y + y * stretch };
}

/** As a lens without distortion would show it. */
export function straightAt(plane: readonly number[], a: number, b: number): PhotoPoint {
  const depth = numberAt(plane, 6) * a + numberAt(plane, 7) * b + 1;
  return {
    x: (numberAt(plane, 0) * a + numberAt(plane, 1) * b + numberAt(plane, 2)) / depth,
    y: (numberAt(plane, 3) * a + numberAt(plane, 4) * b + numberAt(plane, 5)) / depth,
  };
}

/** Which place of the lattice is seen at a point: the lens undone by iteration, then the inverse homography. */
export function latticeAt(view: PlaneView, at: PhotoPoint): LatticePoint {
  const { middle, scale, lens, plane } = view;
  const seen = { x: (at.x - middle.x) / scale, y: (at.y - middle.y) / scale };
  let straight = seen;
  for (let round = 0; round < ROUNDS; round++) {
    const stretch = 1 + lens * (straight.x ** 2 + straight.y ** 2);
    straight = { x: seen.x / stretch, y: seen.y / stretch };
  }
  const [h0 = 0, h1 = 0, h2 = 0, h3 = 0, h4 = 0, h5 = 0, h6 = 0, h7 = 0] = plane;
  const { x, y } = straight;
  // x × depth = h0 a + h1 b + h2 and the same for y: two equations for a and b.
  const [p, q, r] = [h0 - h6 * x, h1 - h7 * x, x - h2];
  const [s, t, u] = [h3 - h6 * y, h4 - h7 * y, y - h5];
  const determinant = p * t - q * s;
  return {
    across: (LATTICE_SCALE * (r * t - q * u)) / determinant,
    down: (LATTICE_SCALE * (p * u - r * s)) / determinant,
  };
}
