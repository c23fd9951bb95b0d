/** Why a way of counting is proposed, in words and millimetres. */
import type { Axis } from "../../measure/axis.ts";
import type { Count } from "../../measure/grid-axis.ts";
import type { CountProposal, EndMargin } from "../facts/count-proposal.ts";
import { asSentence, sayCount, sayMm } from "./say-count.ts";
import { sayParts } from "./say-division.ts";
import { COUNT_WORDS } from "./say-plan-note.ts";

/** How an axis is counted now, and how many steps there are either way. */
export interface CountChoice {
  readonly count: Count;
  readonly steps: number;
  readonly proposedSteps: number;
}

/** What the margins are, and what the two ways of counting come to: the keeper chooses. */
export function sayCountProposal(
  proposal: CountProposal,
  { count, steps, proposedSteps }: CountChoice,
): string {
  const { axis } = proposal;
  return [
    ...marginSentences(proposal),
    `${asSentence(axis)} you count ${COUNT_WORDS[count]}: ${figures(steps)}.`,
    `Counted ${COUNT_WORDS[proposal.count]} there are ${figures(proposedSteps)}.`,
    "Keep what you are used to, or change it.",
  ].join(" ");
}

/** `24 steps, halves of 12, thirds of 8`. */
function figures(steps: number): string {
  const parts = [2, 3].filter((count) => steps >= count);
  const words = parts.map((count) => {
    const over = steps % count;
    return `${sayParts(count)} of ${Math.floor(steps / count)}${over > 0 ? ` and ${over} left over` : ""}`;
  });
  return [sayCount(steps, "step"), ...words].join(", ");
}

const EDGES: Readonly<Record<Axis, readonly [first: string, last: string]>> = {
  across: ["left", "right"],
  down: ["top", "bottom"],
};

function marginSentences(proposal: CountProposal): readonly string[] {
  const { axis, count, margins, pitchMm } = proposal;
  const [first, last] = margins;
  const [near, far] = EDGES[axis];
  const pitch = sayMm(pitchMm);
  const begins = `The first dot lies ${sayMm(first.mm)} from the ${near} edge`;
  const ends = `the last one ${sayMm(last.mm)} from the ${far}`;
  switch (count) {
    case "edge-to-edge":
      return [
        `${begins} and ${ends}: ${likeness(first, last)} one pitch of ${pitch}, so both count as steps.`,
      ];
    case "edge-to-dot":
      return [
        `${begins}, ${likeness(first, first)} one pitch of ${pitch}, so that counts as a step; ${ends}, which does not.`,
      ];
    default:
      return [
        `${begins} and the pitch is ${pitch}: a step from there would not be like the others.`,
      ].concat(
        last.likeStep === "no"
          ? []
          : [`At the ${far} edge it would be: counting on to there is right as well.`],
      );
  }
}

/** One exact end and one about right are together about right. */
function likeness(one: EndMargin, other: EndMargin): string {
  return one.likeStep === "same" && other.likeStep === "same" ? "exactly" : "about";
}
