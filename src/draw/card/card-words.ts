/** The copying card in sentences, in the order in which a hand works: pencil first, then colours, and the blade last. */

import { CUTTING_CAUTION } from "../../issue/words/cutting-caution.ts";
import type { Axis } from "../../measure/axis.ts";
import type { Span } from "../../measure/box.ts";
import type { CardRun, CardSide } from "../../strip/copying-card.ts";
import { laneStyle } from "../style/lane-style.ts";
import { sayPositions, sayTracks } from "./card-numbers.ts";

/** One instruction; a run's carries the colour number and the label it is drawn with. */
export interface CardStep {
  readonly text: string;
  readonly run?: { readonly colour: number; readonly label: string };
}

/** Before any lane. */
export function openingSteps(side: CardSide): readonly CardStep[] {
  const { start, end, middles } = side;
  const [along, first, last] = PLACES[side.axis];
  const zero = start === "edge" ? `the ${first} edge` : "the first dot";
  const total = end === "edge" ? `the ${last} edge` : "the last dot";
  return [
    {
      text: `${LEAVES[side.leaf]}, rule off a band ${side.lanes.length + 2} dots wide along the ${along}. Do not cut it yet.`,
    },
    { text: `In pencil, number the dots: ${zero} is 0, ${total} is ${side.steps}.` },
    { text: `Draw a small triangle at the middle, ${middles.join(" and ")}.` },
    { text: "Now lane by lane, still in pencil. Where a tick is there already, make it longer." },
  ];
}

const PLACES: Readonly<Record<Axis, readonly [along: string, first: string, last: string]>> = {
  across: ["top", "left", "right"],
  down: ["side", "top", "bottom"],
};

const LEAVES: Readonly<Record<CardSide["leaf"], string>> = {
  last: "On the last leaf",
  before: "On the leaf before it, whose edges are whole",
};

/** One run: what it is, what to tick, what to write. Rows of dots are counted from the edge. */
export function runStep(run: CardRun, laneIndex: number): CardStep {
  const { colour, label } = run;
  const style = laneStyle(colour);
  const titles = run.patterns.map(({ title }) => title).join(" and ");
  const ticks = sayPositions(run.marks.map(({ position }) => position));
  return {
    run: { colour, label },
    text: [
      `${titles}: ${style.name}, ${style.stroke}.`,
      `Tick ${ticks}, from the edge to row ${laneIndex + 2}.`,
      `${writeOn(run.tracks)}.`,
    ].join(" "),
  };
}

/** `Write 5 on 1–6, 7–12; 2 on 13–15`, sizes in order of appearance. */
function writeOn(tracks: readonly Span[]): string {
  const sizes = [...new Set(tracks.map(({ length }) => length))];
  const parts = sizes.map((size) => {
    const alike = tracks.filter(({ length }) => length === size);
    return `${size} on ${sayTracks(alike)}`;
  });
  return `Write ${parts.join("; ")}`;
}

/** After the last lane; the caution stands before the cut. */
export const CLOSING_STEPS: readonly CardStep[] = [
  { text: "Go over the pencil in the colours and write each letter at the start of its lane." },
  { text: `A blade is sharp. ${CUTTING_CAUTION.join(" ")}` },
  { text: "Now cut each band off along the line that you ruled." },
];
