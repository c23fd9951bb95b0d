/** What the part that measures printed bars from a photo gives to the measure page, once it is loaded. */

export interface BarsPart {
  /** Puts all that is needed into a place of the page. */
  open(work: BarsWork): void;
}

export interface BarsWork {
  readonly place: HTMLElement;
  /** The fields for both bars: what is measured is filled in as if it were typed. */
  readonly form: HTMLFormElement;
  readonly say: (words: string) => void;
}

declare global {
  interface Window {
    readonly spanbookBars?: BarsPart;
  }
}

/** The part, loaded if it is not there yet. Rejects where its script cannot be loaded. */
export async function barsPart(
  window: Window,
  load: (name: string) => Promise<void>,
): Promise<BarsPart> {
  await load("bars.js");
  if (window.spanbookBars) return window.spanbookBars;
  throw new Error("the part that measures from photos is not what was expected");
}
