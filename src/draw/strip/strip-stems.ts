/** The stems that lead from the edge to the lanes: one stem a position, split among the lanes that share it. */
import type { Lane, Run, StripSide } from "../../strip/strip.ts";
import { isBroadLane, RAIL } from "./lane-look.ts";
import { type Face, laneMiddle, laneTop, mmAt } from "./strip-face.ts";
import type { MarkLine } from "./strip-mark.ts";

/** From the outside of a bar to a stem that only passes it. */
const HALO = 0.5;

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
 * A stem keeps clear of the bars that it passes, so that only their own ticks touch them.
 */
export function runStems(face: Face, laneIndex: number, run: Run): readonly MarkLine[] {
  const lanes = face.side.lanes.slice(0, laneIndex);
  const tops = new Map(
    lanes.flatMap((lane, index) => markedBy(lane).map((mark) => [mark, index + 1])),
  );
  const shared = new Set(othersIn(face, laneIndex, run).flatMap((other) => other.marks));
  return run.marks.flatMap((position): readonly MarkLine[] => {
    const x = mmAt(face.side, position);
    const first = tops.get(position) ?? 0;
    const top = first === 0 ? 0 : laneTop(face, first);
    const bottom = laneTop(face, laneIndex + 1);
    const half = (top + bottom) / 2;
    const isFirst = position === run.marks[0];
    const [from, to] = !shared.has(position)
      ? [top, bottom]
      : isFirst
        ? [half, bottom]
        : [top, half];
    return clearOf(passedBars(face, position, { first, before: laneIndex }), { from, to }).map(
      (piece): MarkLine => [x, piece.from, x, piece.to],
    );
  });
}

/** The blocks at a run's own ticks, over the height of its bars; half of one where two runs of a lane meet. */
export function runCaps(face: Face, laneIndex: number, run: Run): readonly MarkLine[] {
  const y = laneMiddle(face, laneIndex);
  const half = Math.min(CAP_HALF, face.laneHeight / 2 - 0.2);
  const shared = new Set(othersIn(face, laneIndex, run).flatMap((other) => other.marks));
  return run.marks.map((position): MarkLine => {
    const x = mmAt(face.side, position);
    if (!shared.has(position)) return [x, y - half, x, y + half];
    return position === run.marks[0] ? [x, y, x, y + half] : [x, y - half, x, y];
  });
}

const CAP_HALF = 1.05;

function othersIn(face: Face, laneIndex: number, run: Run): readonly Run[] {
  return face.side.lanes[laneIndex]?.runs.filter((other) => other !== run) ?? [];
}

interface Depths {
  readonly from: number;
  readonly to: number;
}

/** The depths of the bars that lie across a position in the lanes from one on and before another. */
function passedBars(
  face: Face,
  position: number,
  { first, before }: { readonly first: number; readonly before: number },
): readonly Depths[] {
  return face.side.lanes.slice(first, before).flatMap(({ runs }, index): readonly Depths[] => {
    const isPassed = runs.some(({ tracks }) =>
      tracks.some(({ from, length }) => from < position && position < from + length),
    );
    if (!isPassed) return [];
    const lane = first + index;
    const y = laneMiddle(face, lane);
    const bar = isBroadLane(lane) ? 0.4 : RAIL + 0.125;
    const half = Math.min(bar + HALO, face.laneHeight / 2 - 0.15);
    return [{ from: y - half, to: y + half }];
  });
}

/** What is left of an upright line without some stretches in ascending order. */
function clearOf(passed: readonly Depths[], { from, to }: Depths): readonly Depths[] {
  const starts = [from, ...passed.map((bar) => bar.to)];
  const ends = [...passed.map((bar) => bar.from), to];
  return starts
    .map((start, index) => ({ from: Math.max(start, from), to: Math.min(ends[index] ?? to, to) }))
    .filter((piece) => piece.to > piece.from);
}
