/** Keeps a set-up on the device as the file that a content folder has of it. */
import type { SetupRecipe } from "../../../src/recipe/setup-recipe.ts";
import { writeSetupRecipe } from "../../../src/recipe/write-setup-recipe.ts";
import { slugFor } from "../../../src/view/fields/slug-for.ts";
import { keptPath } from "../../../src/view/kept/kept-file.ts";
import type { Device } from "../device/device.ts";
import { keptFiles } from "../device/kept-files.ts";

/** One for the same days from the same page on is replaced; another one of its name keeps it. Says what came of it. */
export function keepSetup(
  device: Device,
  recipe: SetupRecipe,
): "kept" | "kept already" | "kept as it is now" {
  const text = writeSetupRecipe(recipe);
  const files = keptFiles(device, "setups");
  if (files.some((file) => file.text === text)) return "kept already";
  const own = files.find((file) => placeIn(file.text) === placeIn(text));
  const taken = files.map(({ path }) => path.replace(/^setups\/|\.md$/g, ""));
  const slug = taken.includes(recipe.slug)
    ? slugFor(recipe.slug, { fallback: "set-up", taken })
    : recipe.slug;
  device.set(own?.path ?? keptPath("setups", slug), text);
  return own ? "kept as it is now" : "kept";
}

/** The days and the first page, as they are written. */
function placeIn(text: string): string {
  const lineOf = (key: string) => new RegExp(`^${key}[ \\t]*:[ \\t]*(.*)$`, "m").exec(text)?.[1];
  return `${lineOf("dates")} ${lineOf("first") ?? 1}`;
}
