/** An entry of a strip's list as plain data: what its file says, so that files and addresses say the same. */
import type { Axis } from "../measure/axis.ts";
import type { FlowValue } from "../source/front-matter/write-flow.ts";
import { splitSource } from "./split-source.ts";
import { type DivisionEntry, END_SIDES, type StripEntry } from "./strip-recipe.ts";

/** A pattern's name alone, or the keys of an entry. */
export function entrySource(entry: StripEntry, axis: Axis): FlowValue {
  const uses = entry.uses === undefined ? {} : { uses: entry.uses };
  if (entry.kind === "pattern")
    return entry.uses === undefined ? entry.slug : { pattern: entry.slug, ...uses };
  const { title, split } = entry;
  return { title, split: splitSource(split), ...endsSource(entry, axis), ...uses };
}

function endsSource({ margin: { start, end } }: DivisionEntry, axis: Axis) {
  if (start === 0 && end === 0) return {};
  const [first, last] = END_SIDES[axis];
  return { margin: start === end ? start : { [first]: start, [last]: end } };
}
