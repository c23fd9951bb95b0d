/** The stems that lead from the edge to the lanes: one stem a position, split among the lanes that share it. */
import type { Lane, Run, StripSide } from "../../strip/strip.ts";
import { type Face, laneTop, mmAt } from "./strip-face.ts";
import type { MarkLine } from "./strip-mark.ts";

/** Every position that any lane marks, in ascending order. */
export function sideMarks(side: StripSide): readonly number[] {
  return [...new Set(side.lanes.flatMap(markedBy))].sort((a, b) => a - b);
}

/** Every position that a lane marks. */
export function markedBy(lane: Lane): readonly number[] {
  return lane.runs.flatMap((run) => run.marks);
}

/**
 * A run's stems. The nearest lane that ticks a position has the stem from the edge to its own far side,
 * the next one from there on. Where a run ends and the next of its lane begins, each has half.
 */
export function runStems(face: Face, laneIndex: number, run: Run): readonly MarkLine[] {
  const lanes = face.side.lanes.slice(0, laneIndex);
  const tops = new Map(
    lanes.flatMap((lane, index) => markedBy(lane).map((mark) => [mark, laneTop(face, index + 1)])),
  );
  const others = face.side.lanes[laneIndex]?.runs.filter((other) => other !== run) ?? [];
  const shared = new Set(others.flatMap((other) => other.marks));
  return run.marks.map((position): MarkLine => {
    const x = mmAt(face.side, position);
    const top = tops.get(position) ?? 0;
    const bottom = laneTop(face, laneIndex + 1);
    const half = (top + bottom) / 2;
    if (!shared.has(position)) return [x, top, x, bottom];
    return position === run.marks[0] ? [x, half, x, bottom] : [x, top, x, half];
  });
}
