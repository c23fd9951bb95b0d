/** Writes a strip's recipe as the file that reads back as the same recipe. */
import { spanText } from "../calendar/write-span.ts";
import type { Axis } from "../measure/axis.ts";
import { writeFlowText, writeText } from "../source/front-matter/quote-text.ts";
import {
  type DivisionEntry,
  END_SIDES,
  type StripEntry,
  type StripRecipe,
} from "./strip-recipe.ts";
import { writeSplit } from "./write-split.ts";

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
  const written = entries.map((entry) => writeEntry(entry, axis));
  const isShort = entries.every(({ kind, uses }) => kind === "pattern" && uses === undefined);
  if (isShort) return `${axis}: [${written.join(", ")}]`;
  return `${axis}:\n${written.map((entry) => `  - ${entry}`).join("\n")}`;
}

function writeEntry(entry: StripEntry, axis: Axis): string {
  const uses = entry.uses === undefined ? "" : `, uses: ${entry.uses}`;
  if (entry.kind === "pattern") {
    return uses === "" ? entry.slug : `{pattern: ${entry.slug}${uses}}`;
  }
  const { title, split } = entry;
  return `{title: ${writeFlowText(title)}, split: ${writeSplit(split)}${endWords(entry, axis)}${uses}}`;
}

function endWords({ margin: { start, end } }: DivisionEntry, axis: Axis): string {
  if (start === 0 && end === 0) return "";
  const [first, last] = END_SIDES[axis];
  return `, margin: ${start === end ? start : `{${first}: ${start}, ${last}: ${end}}`}`;
}
