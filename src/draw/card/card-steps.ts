/** The copying card as steps to follow, in their order: each a sentence, a run's with the pen and the label it is drawn with. */
import { CARD_CLOSING, sayCardOpening, sayCardRun } from "../../issue/words/say-card.ts";
import type { CardRun, CardSide } from "../../strip/copying-card.ts";
import { laneStyle } from "../style/lane-style.ts";

/** One instruction; a run's carries the colour number and the label it is drawn with. */
export interface CardStep {
  readonly text: string;
  readonly run?: { readonly colour: number; readonly label: string };
}

/** Rows of dots beside the lanes: one at the edge, one behind the last lane. */
const ROWS_BESIDE = 2;

/** Before any lane. */
export function openingSteps(side: CardSide): readonly CardStep[] {
  return sayCardOpening(side, side.lanes.length + ROWS_BESIDE).map((text) => ({ text }));
}

/** One run of a lane; lanes are counted from the edge, from 0. */
export function runStep(run: CardRun, laneIndex: number): CardStep {
  const { colour, label, patterns, marks, tracks } = run;
  const facts = {
    titles: patterns.map(({ title }) => title),
    pen: laneStyle(colour),
    positions: marks.map(({ position }) => position),
    tracks,
  };
  return { run: { colour, label }, text: sayCardRun(facts, laneIndex + ROWS_BESIDE) };
}

/** After the last lane. */
export const CLOSING_STEPS: readonly CardStep[] = CARD_CLOSING.map((text) => ({ text }));
