/** An entry of a set-up as plain data: what its file says, so that files and addresses say the same. */
import type { FlowValue } from "../source/front-matter/write-flow.ts";
import type { SetupEntry } from "./setup-recipe.ts";

/** A pattern's name alone, or the keys of an entry; what is usual is left out. */
export function setupEntrySource(entry: SetupEntry): FlowValue {
  const borders = entry.borders === "both" ? {} : { borders: entry.borders };
  if (entry.kind === "each")
    return { each: entry.each, ...borders, pages: entry.pages.map(setupEntrySource) };
  const { pattern, times } = entry;
  const more = { ...(times === 1 ? {} : { times }), ...borders };
  return Object.keys(more).length === 0 ? pattern : { pattern, ...more };
}
