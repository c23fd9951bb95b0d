/** Where a camera sees a sheet of paper: a pinhole, a tilted sheet, and a lens that bends. Written apart from the finder. */

export interface Pose {
  /** In degrees: about the photo's upright axis, its level axis, and in the sheet's own plane. */
  readonly yaw: number;
  readonly pitch: number;
  readonly turn: number;
  /** The part of the photo's sides that stays free around the sheet; below nought cuts it off. */
  readonly margin: number;
  /** By how much of itself a radius is longer at the corner of the photo than undistorted: above nought is barrel. */
  readonly lens: number;
  /** How far the sheet's middle rises towards the camera, in mm, as a page of a thick book does. */
  readonly curl: number;
}

export interface Size {
  readonly width: number;
  readonly height: number;
}

export type Pair = readonly [number, number];

export interface Camera {
  /** From millimetres of paper to pixels. */
  see(mm: Pair): Pair;
  /** From pixels to millimetres of paper, for a flat sheet or one that is curled. */
  lookUp(pixel: Pair): Pair;
}

const RADIANS = Math.PI / 180;

/** The sheet fills the photo as the pose says. */
export function aimCamera(photo: Size, paper: Size, pose: Pose): Camera {
  const spin = rotation(pose);
  const distance = 1.6 * Math.max(paper.width, paper.height);
  const raw = ([x, y]: Pair): Pair => {
    const [a, b] = [x - paper.width / 2, y - paper.height / 2];
    const rise = pose.curl * Math.cos((Math.PI * a) / paper.width);
    const [px, py, pz] = spin.map((row) => row[0] * a + row[1] * b - row[2] * rise);
    const depth = distance + (pz ?? 0);
    return [(px ?? 0) / depth, (py ?? 0) / depth];
  };
  const fit = fitted(photo, sheetCorners(paper).map(raw), pose.margin);
  const straight = (mm: Pair): Pair => {
    const [x, y] = raw(mm);
    return [x * fit.scale + fit.x, y * fit.scale + fit.y];
  };
  const lens = bending(photo, pose.lens);
  return {
    see: (mm) => lens.bend(straight(mm)),
    lookUp: (pixel) => inverted(straight, lens.straighten(pixel), paper),
  };
}

/** From the top left corner clockwise, in mm. */
export function sheetCorners({ width, height }: Size): readonly Pair[] {
  return [
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
  ];
}

export type Row = readonly [number, number, number];

export function rotation({
  yaw,
  pitch,
  turn,
}: Pick<Pose, "yaw" | "pitch" | "turn">): readonly Row[] {
  const [cy, sy] = [Math.cos(yaw * RADIANS), Math.sin(yaw * RADIANS)];
  const [cp, sp] = [Math.cos(pitch * RADIANS), Math.sin(pitch * RADIANS)];
  const [ct, st] = [Math.cos(turn * RADIANS), Math.sin(turn * RADIANS)];
  // First the turn, then the pitch, then the yaw.
  return [
    [cy * ct + sy * sp * st, -cy * st + sy * sp * ct, sy * cp],
    [cp * st, cp * ct, -sp],
    [-sy * ct + cy * sp * st, sy * st + cy * sp * ct, cy * cp],
  ];
}

function fitted(
  { width, height }: Size,
  corners: readonly Pair[],
  margin: number,
): { readonly scale: number; readonly x: number; readonly y: number } {
  const [xs, ys] = [corners.map(([x]) => x), corners.map(([, y]) => y)];
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const [top, bottom] = [Math.min(...ys), Math.max(...ys)];
  const free = 1 - 2 * margin;
  const scale = Math.min((free * width) / (right - left), (free * height) / (bottom - top));
  return {
    scale,
    x: width / 2 - (scale * (left + right)) / 2,
    y: height / 2 - (scale * (top + bottom)) / 2,
  };
}

/** Straightening is exact, bending its inverse by iteration: a lens is told by what it does to a photo. */
export function bending(
  { width, height }: Size,
  lens: number,
): { bend(at: Pair): Pair; straighten(at: Pair): Pair } {
  const [middleX, middleY] = [(width - 1) / 2, (height - 1) / 2];
  const corner = Math.hypot(middleX, middleY);
  const straighten = ([x, y]: Pair): Pair => {
    const [dx, dy] = [x - middleX, y - middleY];
    const stretch = 1 + lens * (Math.hypot(dx, dy) / corner) ** 2;
    return [middleX + dx * stretch, middleY + dy * stretch];
  };
  const bend = (at: Pair): Pair => {
    let bent = at;
    for (let round = 0; round < 30; round++) {
      const [x, y] = straighten(bent);
      bent = [bent[0] + at[0] - x, bent[1] + at[1] - y];
    }
    return bent;
  };
  return { bend, straighten };
}

/** Newton's method with slopes by differences; starts at the middle of the sheet. */
function inverted(straight: (mm: Pair) => Pair, to: Pair, { width, height }: Size): Pair {
  let [x, y] = [width / 2, height / 2];
  for (let round = 0; round < 8; round++) {
    const at = straight([x, y]);
    const [right, below] = [straight([x + 0.01, y]), straight([x, y + 0.01])];
    const [a, b] = [(right[0] - at[0]) / 0.01, (below[0] - at[0]) / 0.01];
    const [c, d] = [(right[1] - at[1]) / 0.01, (below[1] - at[1]) / 0.01];
    const [offX, offY] = [to[0] - at[0], to[1] - at[1]];
    const area = a * d - b * c;
    const [moveX, moveY] = [(d * offX - b * offY) / area, (a * offY - c * offX) / area];
    x += moveX;
    y += moveY;
    if (Math.abs(moveX) + Math.abs(moveY) < 1e-7) break;
  }
  return [x, y];
}
