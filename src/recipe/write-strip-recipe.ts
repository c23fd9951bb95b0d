/** Writes a strip's recipe as the file that reads back as the same recipe. */
import { writeText } from "../source/front-matter/quote-text.ts";
import type { StripRecipe } from "./strip-recipe.ts";

/** The file's text for `strips/<slug>.md`. */
export function writeStripRecipe(recipe: StripRecipe): string {
  const lines = [
    `title: ${writeText(recipe.title)}`,
    `across: [${recipe.across.join(", ")}]`,
    `down: [${recipe.down.join(", ")}]`,
    `lanes: ${recipe.lanes}`,
    `make: ${recipe.make}`,
    `width: ${recipe.width}`,
  ];
  const body = recipe.body === "" ? "" : `\n${recipe.body}\n`;
  return `---\n${lines.join("\n")}\n---\n${body}`;
}
