/** What the part that plans and draws layouts of one's own gives to the gallery, once it is loaded. */
import type { Recipe } from "../../../../src/recipe/recipe.ts";
import type { CatalogueData } from "../../../../src/view/catalogue.ts";
import type { PlanStatus } from "../../../../src/view/pattern/plan-status.ts";
import type { Device } from "../../device/device.ts";

export interface OwnCard {
  readonly slug: string;
  readonly title: string;
  readonly state: PlanStatus;
  /** The address of its small drawing. */
  readonly picture: string;
}

export interface LayoutsPart {
  /** On the keeper's notebook, else on the book's first. */
  ownCards(
    recipes: readonly Recipe[],
    around: { readonly device: Device; readonly book: CatalogueData | undefined },
  ): readonly OwnCard[];
}

declare global {
  interface Window {
    readonly spanbookLayouts?: LayoutsPart;
  }
}

/** The part, loaded if it is not there yet. Rejects where its script cannot be loaded. */
export async function layoutsPart(
  window: Window,
  load: (name: string) => Promise<void>,
): Promise<LayoutsPart> {
  await load("layouts.js");
  if (window.spanbookLayouts) return window.spanbookLayouts;
  throw new Error("the part that draws layouts is not what was expected");
}
