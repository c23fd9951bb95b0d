/** A phone's camera over a sheet on a desk, with a focal length and a distance, so that what lies above the sheet is seen where it is. */
import { bending, type Camera, type Pair, rotation, type Size } from "./camera.ts";

export interface PhonePose {
  /** In degrees: about the photo's upright axis, its level axis, and in the sheet's own plane. */
  readonly yaw: number;
  readonly pitch: number;
  readonly turn: number;
  /** From the camera to what it looks at, in mm, and where that is. */
  readonly distance: number;
  readonly aim: Pair;
  /** In half the photo's longer side. */
  readonly focal: number;
  /** As for a `Pose`. */
  readonly lens: number;
}

export interface PhoneCamera extends Camera {
  /** The point of the sheet straight below the camera, and how high it is. */
  readonly nadir: Pair;
  readonly height: number;
}

export function phoneCamera(size: Size, pose: PhonePose): PhoneCamera {
  const { distance, aim, lens } = pose;
  const spin = rotation(pose);
  const scale = (pose.focal * Math.max(size.width, size.height)) / 2;
  const [middleX, middleY] = [(size.width - 1) / 2, (size.height - 1) / 2];
  const { bend, straighten } = bending(size, lens);
  // Where a millimetre to the right, one down and one into the desk leads.
  const column = (index: 0 | 1 | 2) => spin.map((row) => row[index]);
  const [right, down, deep] = [column(0), column(1), column(2)];
  const dot = (one: readonly number[], other: readonly number[]) =>
    one.reduce((sum, value, index) => sum + value * (other[index] ?? 0), 0);
  const see = ([x, y]: Pair): Pair => {
    const [a, b] = [x - aim[0], y - aim[1]];
    const [px = 0, py = 0, pz = 0] = spin.map((row) => row[0] * a + row[1] * b);
    const depth = distance + pz;
    return bend([middleX + (scale * px) / depth, middleY + (scale * py) / depth]);
  };
  const lookUp = (pixel: Pair): Pair => {
    const [x, y] = straighten(pixel);
    const ray = [(x - middleX) / scale, (y - middleY) / scale, 1];
    const far = (distance * (deep[2] ?? 1)) / dot(deep, ray);
    const at = ray.map((part, index) => far * part - (index === 2 ? distance : 0));
    return [aim[0] + dot(right, at), aim[1] + dot(down, at)];
  };
  return {
    ...{ see, lookUp },
    nadir: [aim[0] - distance * (right[2] ?? 0), aim[1] - distance * (down[2] ?? 0)],
    height: distance * (deep[2] ?? 1),
  };
}
