/** The sentences that say what a strip's side carries of all that was asked for, and what one lane more would bring. */
import type { LaneChoiceFact, MarkedStretch } from "../facts/strip-note.ts";
import { sayCount, sayList } from "./say-count.ts";

/** One or two plain sentences; none where nothing was asked for. */
export function sayLaneChoice(fact: LaneChoiceFact): readonly string[] {
  if (fact.asked.runs === 0) return [];
  return [sayKept(fact), ...(fact.oneMore ? [sayOneMore(fact, fact.oneMore)] : [])];
}

function sayKept({ rule, limit, asked, kept }: LaneChoiceFact): string {
  const isByUse = rule === "most-used";
  if (kept.runs === asked.runs) {
    const uses = isByUse ? `, ${sayCount(asked.uses, "use")} in all` : "";
    return `It carries everything on the list: ${sayMarks(asked.runs)}${uses}.`;
  }
  const lanes = `In ${sayCount(limit, "lane")} it carries ${kept.runs} of ${sayMarks(asked.runs)}`;
  return isByUse
    ? `${lanes}, with ${kept.uses} of ${sayCount(asked.uses, "use")}: no other choice has more.`
    : `${lanes}: what comes first in its list goes first.`;
}

function sayOneMore(
  { rule, asked, kept }: LaneChoiceFact,
  more: NonNullable<LaneChoiceFact["oneMore"]>,
): string {
  const uses =
    rule === "most-used"
      ? `, with ${sayCount(more.kept.uses, "use")}: ${more.kept.uses - kept.uses} more`
      : "";
  const changes = [
    ...(more.added.length > 0 ? [`it would add ${stretches(more.added)}`] : []),
    ...(more.dropped.length > 0 ? [`leave out ${stretches(more.dropped)} for it`] : []),
  ];
  return `One lane more would carry ${more.kept.runs} of ${asked.runs}${uses}; ${sayList(changes, "and")}.`;
}

function sayMarks(count: number): string {
  return `${sayCount(count, "set")} of marks`;
}

function stretches(all: readonly MarkedStretch[]): string {
  const named = all
    .slice(0, MOST_NAMED)
    .map(({ titles, from, to }) => `${sayList(titles, "and")} (${from} to ${to})`);
  const rest = all.length - named.length;
  return sayList(rest > 0 ? [...named, `${rest} more`] : named, "and");
}

const MOST_NAMED = 5;
