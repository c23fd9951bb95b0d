/** Writes a strip's recipe as the file that reads back as the same recipe. */
import { spanText } from "../calendar/write-span.ts";
import type { Axis } from "../measure/axis.ts";
import { writeText } from "../source/front-matter/quote-text.ts";
import { writeFlow } from "../source/front-matter/write-flow.ts";
import { entrySource } from "./strip-entry-source.ts";
import type { StripEntry, StripRecipe } from "./strip-recipe.ts";

/** The file's text for `strips/<slug>.md`. */
export function writeStripRecipe(recipe: StripRecipe): string {
  const lines = [
    `title: ${writeText(recipe.title)}`,
    sideLines("across", recipe.across),
    sideLines("down", recipe.down),
    ...(recipe.dates ? [`dates: ${spanText(recipe.dates)}`] : []),
    `lanes: ${recipe.lanes}`,
    `make: ${recipe.make}`,
    `width: ${recipe.width}`,
  ];
  const body = recipe.body === "" ? "" : `\n${recipe.body}\n`;
  return `---\n${lines.join("\n")}\n---\n${body}`;
}

/** Names alone in one line; else each entry in a line of its own. */
function sideLines(axis: Axis, entries: readonly StripEntry[]): string {
  const sources = entries.map((entry) => entrySource(entry, axis));
  if (sources.every((source) => typeof source === "string"))
    return `${axis}: ${writeFlow(sources)}`;
  return `${axis}:\n${sources.map((source) => `  - ${writeFlow(source)}`).join("\n")}`;
}
