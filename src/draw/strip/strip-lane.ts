/** The lanes of a face: stems, bars from the begin to the end of each track, counts and labels. */
import { patternOf } from "../../strip/pattern-of.ts";
import { runLabels } from "../../strip/run-labels.ts";
import type { Run } from "../../strip/strip.ts";
import { type Face, laneTop } from "./strip-face.ts";
import type { MarkLine, StripMark } from "./strip-mark.ts";
import { runBars } from "./strip-run-bars.ts";
import { runTexts } from "./strip-run-texts.ts";
import { runStems } from "./strip-stems.ts";

/** From the middle of a lane to each of its two rails. */
const RAIL = 0.32;

/** All lanes: stems lie under the bars that they pass, so that a bar is broken by its own marks alone. */
export function laneMarks(face: Face): readonly StripMark[] {
  const labels = runLabels(face.side, face.strip.patterns);
  const lanes = face.side.lanes.map((_, index) => index);
  return [
    ...lanes.flatMap((index) => stemMarks(face, index)),
    ...lanes.flatMap((index) => barMarks(face, index, labels)),
  ];
}

/** One path for all ticks of a lane that have one colour, unbroken so that they can be aimed along. */
function stemMarks(face: Face, laneIndex: number): readonly StripMark[] {
  return byColour(face, laneIndex).map(([lane, runs]) => ({
    kind: "lines",
    role: "lane",
    lane,
    dash: [],
    lines: runs.flatMap((run) => runStems(face, laneIndex, run)),
  }));
}

/** One path for all bars of a lane that have one colour, and the texts between them. */
function barMarks(
  face: Face,
  laneIndex: number,
  labels: ReadonlyMap<Run, string>,
): readonly StripMark[] {
  const y = laneTop(face, laneIndex) + face.laneHeight / 2;
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

/** Every other lane has two fine lines for one broad one: neighbours differ even where the pattern is the same. */
function isBroadLane(laneIndex: number): boolean {
  return laneIndex % 2 === 0;
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
