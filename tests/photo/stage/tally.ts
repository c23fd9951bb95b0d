/** What came of a staged photo, against the truth beside it. */
import { toMm } from "../../../src/measure/length.ts";
import { countDots } from "../../../src/photo/count-dots.ts";
import type { Grey } from "../../../src/photo/grey.ts";
import { measureGrid } from "../../../src/photo/measure-paper.ts";
import type { PhotoCount } from "../../../src/photo/photo-count.ts";
import type { StagedPhoto } from "./staged-photo.ts";

export interface Outcome {
  /** `refused` with the doubt's kind, or whether both counts are right. */
  readonly count: "right" | "wrong" | `refused: ${string}`;
  /** By how much of itself the pitch is off, and by how many mm the first dot; of a right count whose paper can be measured. */
  readonly off?: { readonly pitch: number; readonly first: number };
}

/** All of the work at once. */
export function countedIn(photo: Grey): PhotoCount {
  const work = countDots(photo);
  let step = work.next();
  while (!step.done) step = work.next();
  return step.value;
}

export function outcomeOf({ photo, staging, corners }: StagedPhoto): Outcome {
  const { across, down } = staging.notebook.axes;
  const counted = countedIn(photo);
  if (!counted.ok) return { count: `refused: ${counted.doubt.kind}` };
  if (counted.of === "lines") return { count: "wrong" };
  const { grid } = counted;
  if (grid.across !== across.dots || grid.down !== down.dots) return { count: "wrong" };
  const paper = { width: toMm(across.paper), height: toMm(down.paper) };
  const measured = measureGrid(grid, corners, paper);
  if (!measured.ok) return { count: "right" };
  const { pitch, first } = measured.grid;
  const off = {
    pitch: Math.max(
      Math.abs(pitch.across / toMm(across.pitch) - 1),
      Math.abs(pitch.down / toMm(down.pitch) - 1),
    ),
    first: Math.max(
      Math.abs(first.left - toMm(across.firstDot)),
      Math.abs(first.top - toMm(down.firstDot)),
    ),
  };
  return { count: "right", off };
}
