/** Why a way of counting is proposed, in words and millimetres. */
import type { Axis } from "../../measure/axis.ts";
import type { CountProposal, EndMargin } from "../facts/count-proposal.ts";
import { sayMm } from "./say-count.ts";
import { COUNT_WORDS } from "./say-plan-note.ts";

/** What the margins are, and what follows: two or three plain sentences. */
export function sayCountProposal(proposal: CountProposal): string {
  const { axis, count } = proposal;
  const follows = `So ${axis}, count ${COUNT_WORDS[count]}.`;
  return [...marginSentences(proposal), follows].join(" ");
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
