/** One side of a strip in words: lane by lane what it carries, what it had to leave out, and how a hand copies it. */

import { type CardStep, openingSteps, runStep } from "../../draw/card/card-steps.ts";
import { sideScene } from "../../draw/strip/strip-scene.ts";
import { laneStyle } from "../../draw/style/lane-style.ts";
import type { WriteSvg } from "../../draw/svg/write-svg.ts";
import type { LabelAt } from "../../issue/words/say-path.ts";
import { sayPositions } from "../../issue/words/say-positions.ts";
import { sayLeftOut } from "../../issue/words/say-strip-note.ts";
import { startsAtEdge } from "../../measure/grid-axis.ts";
import type { CardSide } from "../../strip/copying-card.ts";
import { patternsOfRun } from "../../strip/pattern-of.ts";
import { runLabels } from "../../strip/run-labels.ts";
import type { Run, Strip, StripPattern, StripSide } from "../../strip/strip.ts";
import type {
  CardLine,
  LeftOutView,
  PenView,
  StripPatternView,
  StripRunView,
  StripSideView,
} from "./strip-view.ts";

export interface SideSources {
  readonly strip: Strip;
  readonly write: WriteSvg;
  /** The labels of a pattern's areas. */
  readonly labelsIn: (pattern: string) => LabelAt;
}

/** The view of a side and of the part of the copying card that is about it. */
export function stripSideView(
  side: StripSide,
  card: CardSide,
  { strip, write, labelsIn }: SideSources,
): StripSideView {
  const labels = runLabels(side, strip.patterns);
  const viewOf = (run: Run) => runView(run, strip.patterns, labels.get(run) ?? "");
  const edge = FIRST_EDGE[side.axis];
  return {
    axis: side.axis,
    steps: side.steps,
    zero: startsAtEdge(side.grid) ? `the ${edge} edge of the page` : "the first dot",
    svg: write(sideScene(strip, side), "inline"),
    lanes: side.lanes.map(({ runs }) => runs.map(viewOf)),
    leftOut: side.leftOut.map(
      (fact): LeftOutView => ({
        pattern: fact.pattern,
        title: titleOf(fact.pattern, strip),
        why: sayLeftOut(fact, labelsIn(fact.pattern)),
      }),
    ),
    card: [
      ...openingSteps(card),
      ...card.lanes.flatMap((lane, index) => lane.map((run) => runStep(run, index))),
    ].map(cardLine),
  };
}

const FIRST_EDGE = { across: "left", down: "top" } as const;

/** An instruction with its pen. */
export function cardLine({ text, run }: CardStep): CardLine {
  return run ? { text, run: { label: run.label, pen: penView(run.colour) } } : { text };
}

/** A pattern with its pen. */
export function stripPatternView({ slug, title, letter, colour }: StripPattern): StripPatternView {
  return { slug, title, letter, pen: penView(colour) };
}

function runView(run: Run, patterns: readonly StripPattern[], label: string): StripRunView {
  const [first, ...others] = patternsOfRun(run, patterns);
  const { from, to, sizes } = run;
  return {
    label,
    pen: penView(first.colour),
    patterns: [first, ...others].map(stripPatternView),
    from,
    to,
    marks: sayPositions(run.marks),
    sizes,
  };
}

function penView(number: number): PenView {
  const { colour, dash, name, stroke } = laneStyle(number);
  return { colour, dash: dash.join(" "), words: `${name}, ${stroke}` };
}

function titleOf(slug: string, { patterns }: Strip): string {
  return patterns.find((pattern) => pattern.slug === slug)?.title ?? slug;
}
