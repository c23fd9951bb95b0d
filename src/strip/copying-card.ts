/** What a hand needs to make a strip without a printer: side by side, lane by lane, which dots to mark. */
import type { Axis } from "../measure/axis.ts";
import type { StepInterval } from "../measure/box.ts";
import { dotAt, endsAtEdge, startsAtEdge } from "../measure/grid-axis.ts";
import { patternsOfRun } from "./pattern-of.ts";
import { runLabels } from "./run-labels.ts";
import type { Run, Strip, StripPattern, StripSide } from "./strip.ts";

/** One side of the strip that is cut from the notebook's own page, whose dots are the scale. */
export interface CardSide {
  readonly axis: Axis;
  /** Each side has a leaf of its own: a band cut from one takes an edge away that the other would begin at. */
  readonly leaf: "last" | "before";
  readonly steps: number;
  /** How many dots lie along the side. */
  readonly dots: number;
  readonly start: "edge" | "dot";
  readonly end: "edge" | "dot";
  readonly middles: readonly number[];
  /** Nearest the edge first. */
  readonly lanes: readonly (readonly CardRun[])[];
}

/** What to draw for one run. */
export interface CardRun {
  readonly label: string;
  readonly patterns: readonly StripPattern[];
  /** The number of the colour and dash to draw it in, 1 to 8. */
  readonly colour: number;
  readonly marks: readonly CardMark[];
  /** Between which positions to draw a line, and the number to write on it. */
  readonly tracks: readonly StepInterval[];
}

/** A position to tick, and where it lies on the page. */
interface CardMark {
  readonly position: number;
  /** The number of the dot from 1, or the edge of the page at which counting starts or ends. */
  readonly dot: number | "start" | "end";
}

/** Both sides of the card. */
export function copyingCard(strip: Strip): readonly CardSide[] {
  return strip.sides.map((side, index) => {
    const labels = runLabels(side, strip.patterns);
    return {
      axis: side.axis,
      leaf: index === 0 ? "last" : "before",
      steps: side.steps,
      dots: side.grid.dots,
      start: startsAtEdge(side.grid) ? "edge" : "dot",
      end: endsAtEdge(side.grid) ? "edge" : "dot",
      middles: side.middles,
      lanes: side.lanes.map(({ runs }) =>
        runs.map((run) => cardRun(run, side, { strip, label: labels.get(run) ?? "" })),
      ),
    };
  });
}

function cardRun(
  run: Run,
  side: StripSide,
  { strip, label }: { readonly strip: Strip; readonly label: string },
): CardRun {
  const patterns = patternsOfRun(run, strip.patterns);
  return {
    label,
    patterns,
    colour: patterns[0].colour,
    marks: run.marks.map((position) => ({ position, dot: dotOf(side, position) })),
    tracks: run.tracks,
  };
}

function dotOf({ grid }: StripSide, position: number): CardMark["dot"] {
  const dot = dotAt(grid, position);
  if (dot < 1) return "start";
  return dot > grid.dots ? "end" : dot;
}
