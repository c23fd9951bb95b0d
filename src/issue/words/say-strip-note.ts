/** The sentence for each thing that a strip had to leave out. */

import { roundedMm } from "../../measure/length.ts";
import type { LeftOut, StripNote } from "../facts/strip-note.ts";
import { asSentence, nounFor, sayCount, sayList } from "./say-count.ts";
import { sayMisfit } from "./say-misfit.ts";
import { type LabelAt, saySplit, TRACK_NOUN } from "./say-path.ts";

/** Plain sentences; the pattern is named beside them. Areas are called by their labels where a lookup is given. */
export function sayLeftOut(fact: LeftOut, labelAt?: LabelAt): string {
  switch (fact.kind) {
    case "misfit": {
      const days = fact.days ? ` for ${daysWords(fact.days)}` : "";
      return `It does not fit this notebook${days}. ${sayMisfit(fact.misfit, labelAt)}`;
    }
    case "no-split":
      return `It has no ${nounFor(0, TRACK_NOUN[fact.axis])}, so there is nothing to mark ${fact.axis}.`;
    case "no-lane": {
      const split = `${asSentence(saySplit(fact, labelAt))}, from ${fact.from} to ${fact.to}`;
      return fact.uses === undefined
        ? `${split}, find no room: ${lanesWords(fact.lanes)} taken there.`
        : `${split}, find no room: with ${sayCount(fact.uses, "use")} they are not in the choice with the most uses in ${sayCount(fact.lanes, "lane")}.`;
    }
    case "too-many-runs":
      return `It has too much to mark ${fact.axis}: with it there would be more than ${fact.limit} rows of marks to choose from.`;
  }
}

/** A few of them, and how many more. */
function daysWords(days: readonly string[]): string {
  const named = days.slice(0, MOST_DAYS);
  const more = days.length - named.length;
  return sayList(more > 0 ? [...named, `${more} more`] : named, "and");
}

const MOST_DAYS = 6;

function lanesWords(lanes: number): string {
  return lanes === 1 ? "the one lane is" : `all ${lanes} lanes are`;
}

/** What is so, with a hint that can be acted on. */
export function sayStripNote(note: StripNote): string {
  if (note.kind === "no-pocket") return sayNoPocket(note);
  const { width, needs, lanes } = note;
  return `A width of ${width} mm has no room for ${lanes.join(" and ")} lanes with their key, so the strip is ${needs} mm wide. Ask for fewer lanes, or fold the strip.`;
}

function sayNoPocket({ lacks, needs, room }: Extract<StripNote, { kind: "no-pocket" }>): string {
  const [asked, had] = [roundedMm(needs), roundedMm(room)];
  switch (lacks) {
    case "width":
      return `There is no pocket: it would be ${asked} mm wide, and the cover has room for ${had} mm. Ask for fewer lanes, or fold the strip.`;
    case "length":
      return `There is no pocket: to hold the strip it has to be ${asked} mm long, and there is room for ${had} mm. Keep the strip under the elastic.`;
    case "sheet":
      return `There is no pocket: its pattern is ${asked} mm high, which is more than the sheet has room for. Print on larger paper.`;
  }
}
