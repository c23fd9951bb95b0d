/** What the part that knows the moon gives to a page, once it is loaded. */
import type { moonAt } from "../../../../src/calendar/names/moon-names.ts";

export interface MoonPart {
  readonly moonAt: typeof moonAt;
}

declare global {
  interface Window {
    readonly spanbookMoon?: MoonPart;
  }
}

/** The part, loaded if it is not there yet. Rejects where its script cannot be loaded. */
export async function moonPart(
  window: Window,
  load: (name: string) => Promise<void>,
): Promise<MoonPart> {
  await load("moon.js");
  if (window.spanbookMoon) return window.spanbookMoon;
  throw new Error("the part with the moon is not what was expected");
}
