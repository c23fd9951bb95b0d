/** What the part with the names of all languages gives to a page, once it is loaded. */
import type { Names } from "../../../../src/calendar/names.ts";
import type { Choice } from "../../../../src/view/fields/form-lists.ts";

export interface NamesPart {
  /** Nothing for a language that is not known. */
  namesOf(language: string): Names | undefined;
  /** Codes with what they are called, in the order of a list to choose from. */
  readonly regions: readonly Choice[];
  readonly languages: readonly Choice[];
}

declare global {
  interface Window {
    readonly spanbookNames?: NamesPart;
  }
}

/** The part, loaded if it is not there yet. Rejects where its script cannot be loaded. */
export async function namesPart(
  window: Window,
  load: (name: string) => Promise<void>,
): Promise<NamesPart> {
  await load("names.js");
  if (window.spanbookNames) return window.spanbookNames;
  throw new Error("the part with the names is not what was expected");
}
