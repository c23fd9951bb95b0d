/** Writes a set-up as the file that reads back as the same set-up. */
import { spanText } from "../calendar/write-span.ts";
import { writeText } from "../source/front-matter/quote-text.ts";
import { writeFlow } from "../source/front-matter/write-flow.ts";
import { setupEntrySource } from "./setup-entry-source.ts";
import type { SetupRecipe } from "./setup-recipe.ts";

/** The file's text for `setups/<slug>.md`, each entry in a line of its own. One without entries does not read back. */
export function writeSetupRecipe(recipe: SetupRecipe): string {
  const { title, dates, first, pages, fill, lanes, make, width, body } = recipe;
  const lines = [
    `title: ${writeText(title)}`,
    `dates: ${spanText(dates)}`,
    `first: ${first}`,
    "pages:",
    ...pages.map((entry) => `  - ${writeFlow(setupEntrySource(entry))}`),
    ...(fill === undefined ? [] : [`fill: ${writeFlow(fill)}`]),
    `lanes: ${lanes}`,
    `make: ${make}`,
    `width: ${width}`,
  ];
  return `---\n${lines.join("\n")}\n---\n${body === "" ? "" : `\n${body}\n`}`;
}
