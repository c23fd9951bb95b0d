/** The sentence for each thing that a strip had to leave out. */
import type { LeftOut, StripNote } from "../facts/strip-note.ts";
import { asSentence, nounFor } from "./say-count.ts";
import { sayMisfit } from "./say-misfit.ts";
import { type LabelAt, saySplit, TRACK_NOUN } from "./say-path.ts";

/** Plain sentences; the pattern is named beside them. Areas are called by their labels where a lookup is given. */
export function sayLeftOut(fact: LeftOut, labelAt?: LabelAt): string {
  switch (fact.kind) {
    case "misfit":
      return `It does not fit this notebook. ${sayMisfit(fact.misfit, labelAt)}`;
    case "no-split":
      return `It has no ${nounFor(0, TRACK_NOUN[fact.axis])}, so there is nothing to mark ${fact.axis}.`;
    case "no-lane": {
      const split = asSentence(saySplit(fact, labelAt));
      return `${split}, from ${fact.from} to ${fact.to}, find no room: ${lanesWords(fact.lanes)} taken there.`;
    }
  }
}

function lanesWords(lanes: number): string {
  return lanes === 1 ? "the one lane is" : `all ${lanes} lanes are`;
}

/** One plain sentence, with a hint that can be acted on. */
export function sayStripNote({ width, needs, lanes }: StripNote): string {
  const counted = lanes.join(" and ");
  return `A width of ${width} mm has no room for ${counted} lanes, so the strip is ${needs} mm wide. Ask for fewer lanes, or fold the strip.`;
}
