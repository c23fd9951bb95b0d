/** What came of a staged photo, against the truth beside it. */
import type { GridAxis } from "../../../src/measure/grid-axis.ts";
import { toMm } from "../../../src/measure/length.ts";
import { countDots } from "../../../src/photo/count-dots.ts";
import type { Grey, PhotoPoint } from "../../../src/photo/grey.ts";
import { measureLines } from "../../../src/photo/measure-lines.ts";
import { measureGrid } from "../../../src/photo/measure-paper.ts";
import { COPY, isSure, type PhotoCount } from "../../../src/photo/photo-count.ts";
import { shrunk } from "../../../src/photo/shrink-photo.ts";
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

/** As the page does: by a copy, and by the photo where that is not sure. */
export function outcomeOf(staged: StagedPhoto): Outcome {
  const { width, height } = staged.photo;
  const factor = COPY / Math.max(width, height);
  if (factor < 1) {
    const copy = smaller(staged, factor);
    const counted = countedIn(copy.photo);
    if (isSure(counted)) return outcomeWith(copy, counted);
  }
  return outcomeWith(staged, countedIn(staged.photo));
}

function smaller({ photo, corners: [a, b, c, d], staging }: StagedPhoto, factor: number) {
  const at = ({ x, y }: PhotoPoint) => ({
    x: (x + 0.5) * factor - 0.5,
    y: (y + 0.5) * factor - 0.5,
  });
  return { photo: shrunk(photo, factor), corners: [at(a), at(b), at(c), at(d)] as const, staging };
}

function outcomeWith({ photo, staging, corners }: StagedPhoto, counted: PhotoCount): Outcome {
  const { axes, ruling } = staging.notebook;
  if (!counted.ok) return { count: `refused: ${counted.doubt.kind}` };
  const paper = { width: toMm(axes.across.paper), height: toMm(axes.down.paper) };
  if (counted.of === "lines") {
    const isRight = ruling === "lines" && counted.page.lines.length === axes.down.dots;
    if (!isRight) return { count: "wrong" };
    const measured = measureLines(counted.page, photo, corners, paper);
    if (!measured.ok) return { count: "right" };
    const { pitch, top } = measured.lines;
    return { count: "right", off: offOf([[axes.down, pitch, top]]) };
  }
  const { grid } = counted;
  const isRight =
    grid.ruling === ruling && grid.across === axes.across.dots && grid.down === axes.down.dots;
  if (!isRight) return { count: "wrong" };
  const measured = measureGrid(grid, corners, paper);
  if (!measured.ok) return { count: "right" };
  const { pitch, first } = measured.grid;
  const across = [axes.across, pitch.across, first.left] as const;
  return { count: "right", off: offOf([across, [axes.down, pitch.down, first.top]]) };
}

/** The largest of what is off, of axes with their measured pitch and first dot. */
function offOf(
  measured: readonly (readonly [GridAxis, number, number])[],
): NonNullable<Outcome["off"]> {
  const most = (off: (axis: GridAxis, pitch: number, first: number) => number) =>
    Math.max(...measured.map((one) => Math.abs(off(...one))));
  return {
    pitch: most((axis, pitch) => pitch / toMm(axis.pitch) - 1),
    first: most((axis, _, first) => first - toMm(axis.firstDot)),
  };
}
