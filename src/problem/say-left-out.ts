/** The sentence for each thing that a strip had to leave out. */
import type { Axis } from "../measure/axis.ts";
import type { LeftOut } from "./left-out.ts";

/** One plain sentence; the pattern is named beside it. */
export function sayLeftOut(fact: LeftOut): string {
  switch (fact.kind) {
    case "misfit":
      return "It does not fit this notebook.";
    case "no-split":
      return `It has no ${TRACKS[fact.axis]}, so there is nothing to mark ${fact.axis}.`;
    case "no-lane":
      return `Its ${splitWords(fact)}, from ${fact.from} to ${fact.to}, find no room: ${lanesWords(fact.lanes)} taken there.`;
  }
}

const TRACKS: Readonly<Record<Axis, string>> = { across: "columns", down: "rows" };

function splitWords(fact: Extract<LeftOut, { kind: "no-lane" }>): string {
  const tracks = TRACKS[fact.axis];
  const page = fact.side === "single" ? "" : ` on the ${fact.side} page`;
  const area = fact.path.split(".").slice(0, -1).join(".");
  return area === "" ? `${tracks}${page}` : `${tracks} in ${area}${page}`;
}

function lanesWords(lanes: number): string {
  return lanes === 1 ? "the one lane is" : `all ${lanes} lanes are`;
}
