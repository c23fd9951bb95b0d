/** Layouts that are kept on the device, as recipes: those that have no problem. */
import type { Recipe } from "../../../src/recipe/recipe.ts";
import type { Device } from "../device/device.ts";
import { keptFiles } from "../device/kept-files.ts";
import { readerPart } from "../lazy/reader/reader-part.ts";

/** Nothing is loaded where nothing is kept. Rejects where the part that reads cannot be loaded. */
export async function keptLayouts(
  window: Window,
  device: Device,
  load: (name: string) => Promise<void>,
): Promise<readonly Recipe[]> {
  const files = keptFiles(device, "patterns");
  if (files.length === 0) return [];
  const reader = await readerPart(window, load);
  return files.flatMap((file) => {
    const reading = reader.readRecipe(file);
    return reading.ok ? [reading.value] : [];
  });
}
