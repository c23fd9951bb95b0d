/** The lanes of a face: stems, bars from the begin to the end of each track with blocks at their ends, counts and labels. */
import { patternOf } from "../../strip/pattern-of.ts";
import { runLabels } from "../../strip/run-labels.ts";
import type { Run } from "../../strip/strip.ts";
import { isBroadLane, RAIL } from "./lane-look.ts";
import { type Face, laneMiddle } from "./strip-face.ts";
import type { MarkLine, StripMark } from "./strip-mark.ts";
import { runBars } from "./strip-run-bars.ts";
import { runTexts } from "./strip-run-texts.ts";
import { runCaps, runStems } from "./strip-stems.ts";

/** All lanes. Whose tick a stem is shows by its shape: a block at a lane's own, a gap at the bars that it passes. */
export function laneMarks(face: Face): readonly StripMark[] {
  const labels = runLabels(face.side, face.strip.patterns);
  const lanes = face.side.lanes.map((_, index) => index);
  return [
    ...lanes.flatMap((index) => tickMarks(face, index)),
    ...lanes.flatMap((index) => barMarks(face, index, labels)),
  ];
}

/** One path for all ticks of a lane that have one colour, and one for their blocks; not dashed, so that they can be aimed along. */
function tickMarks(face: Face, laneIndex: number): readonly StripMark[] {
  return byColour(face, laneIndex).flatMap(([lane, runs]): readonly StripMark[] => {
    const stems = runs.flatMap((run) => runStems(face, laneIndex, run));
    const caps = runs.flatMap((run) => runCaps(face, laneIndex, run));
    return [
      { kind: "lines", role: "lane", lane, dash: [], lines: stems },
      { kind: "lines", role: "lane-cap", lane, dash: [], lines: caps },
    ];
  });
}

/** One path for all bars of a lane that have one colour, and the texts between them. */
function barMarks(
  face: Face,
  laneIndex: number,
  labels: ReadonlyMap<Run, string>,
): readonly StripMark[] {
  const y = laneMiddle(face, laneIndex);
  const isBroad = isBroadLane(laneIndex);
  return byColour(face, laneIndex).flatMap(([lane, runs]): readonly StripMark[] => {
    const written = runs.map((run) => runTexts(face, laneIndex, run, labels.get(run) ?? ""));
    const bars = runs.flatMap((run, index) => runBars(face, run, written[index]?.taken ?? []));
    const lines = bars.flatMap(({ from, to }) =>
      (isBroad ? [y] : [y - RAIL, y + RAIL]).map((height): MarkLine => [from, height, to, height]),
    );
    return [
      { kind: "lines", role: isBroad ? "lane-bar" : "lane-rail", lane, lines },
      ...written.flatMap(({ counts }) => counts),
      ...written.map(({ label }) => label),
    ];
  });
}

/** The runs of a lane by the number of their colour. */
function byColour(face: Face, laneIndex: number): readonly (readonly [number, readonly Run[]])[] {
  const runs = face.side.lanes[laneIndex]?.runs ?? [];
  const colourOf = (run: Run) => patternOf(run, face.strip.patterns).colour;
  return [...new Set(runs.map(colourOf))].map((colour) => [
    colour,
    runs.filter((run) => colourOf(run) === colour),
  ]);
}
