/** One side of a strip in words: lane by lane what it carries, what it had to leave out, and how a hand copies it. */

import { type CardStep, openingSteps, runStep } from "../../draw/card/card-steps.ts";
import { sideScene } from "../../draw/strip/strip-scene.ts";
import { laneStyle } from "../../draw/style/lane-style.ts";
import type { WriteSvg } from "../../draw/svg/write-svg.ts";
import type { MarkedStretch } from "../../issue/facts/strip-note.ts";
import { sayLaneChoice } from "../../issue/words/say-lane-choice.ts";
import type { LabelAt } from "../../issue/words/say-path.ts";
import { sayPositions } from "../../issue/words/say-positions.ts";
import { sayLeftOut } from "../../issue/words/say-strip-note.ts";
import { startsAtEdge } from "../../measure/grid-axis.ts";
import type { CardSide } from "../../strip/copying-card.ts";
import { laneChoice } from "../../strip/lane-choice.ts";
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
  const isByUse = side.asked.rule === "most-used";
  const viewOf = (run: Run) =>
    runView(run, strip.patterns, { label: labels.get(run) ?? "", isByUse });
  const edge = FIRST_EDGE[side.axis];
  return {
    axis: side.axis,
    steps: side.steps,
    zero: startsAtEdge(side.grid) ? `the ${edge} edge of the page` : "the first dot",
    svg: write(sideScene(strip, side), "inline"),
    lanes: side.lanes.map(({ runs }) => runs.map(viewOf)),
    choice: laneChoiceWords(side, strip.patterns),
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

/**
 * What a side carries of all that was asked for, and what one lane more would bring, for whoever shows or makes a strip;
 * nothing of a side that was asked for nothing.
 */
export function laneChoiceWords(
  side: Pick<StripSide, "lanes" | "asked">,
  patterns: readonly StripPattern[],
): readonly string[] {
  const { oneMore, ...choice } = laneChoice(side);
  if (!oneMore) return sayLaneChoice(choice);
  const stretch = (run: Run): MarkedStretch => {
    const { from, to } = run;
    return { titles: patternsOfRun(run, patterns).map(({ title }) => title), from, to };
  };
  const { kept, added, dropped } = oneMore;
  return sayLaneChoice({
    ...choice,
    oneMore: { kept, added: added.map(stretch), dropped: dropped.map(stretch) },
  });
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

function runView(
  run: Run,
  patterns: readonly StripPattern[],
  { label, isByUse }: { readonly label: string; readonly isByUse: boolean },
): StripRunView {
  const [first, ...others] = patternsOfRun(run, patterns);
  const { from, to, sizes, uses } = run;
  return {
    label,
    pen: penView(first.colour),
    patterns: [first, ...others].map(stripPatternView),
    from,
    to,
    marks: sayPositions(run.marks),
    sizes,
    ...(isByUse ? { uses } : {}),
  };
}

function penView(number: number): PenView {
  const { colour, dash, name, stroke } = laneStyle(number);
  return { colour, dash: dash.join(" "), words: `${name}, ${stroke}` };
}

function titleOf(slug: string, { patterns }: Strip): string {
  return patterns.find((pattern) => pattern.slug === slug)?.title ?? slug;
}
