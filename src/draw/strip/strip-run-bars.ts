/** A run's bars: a line along each track, broken where something is written. */
import type { Run } from "../../strip/strip.ts";
import type { Interval } from "../geometry/rect.ts";
import { type Face, mmAt } from "./strip-face.ts";

/** Between a bar and a text in it. */
const SPACE = 0.35;
/** A shorter piece of a bar would look like dirt. */
const MIN_PIECE = 0.4;

/** The pieces of bar that a run's texts leave, in millimetres from the page's edge. */
export function runBars(face: Face, run: Run, texts: readonly Interval[]): readonly Interval[] {
  return run.tracks.flatMap(({ from, length }) => {
    const bar = { from: mmAt(face.side, from), to: mmAt(face.side, from + length) };
    return without(bar, texts);
  });
}

function without(bar: Interval, texts: readonly Interval[]): readonly Interval[] {
  const inside = texts
    .filter((text) => text.from < bar.to && bar.from < text.to)
    .toSorted((a, b) => a.from - b.from);
  const starts = [bar.from, ...inside.map((text) => text.to + SPACE)];
  const ends = [...inside.map((text) => text.from - SPACE), bar.to];
  return starts
    .map((from, index) => ({ from, to: ends[index] ?? bar.to }))
    .filter(({ from, to }) => to - from >= MIN_PIECE);
}
