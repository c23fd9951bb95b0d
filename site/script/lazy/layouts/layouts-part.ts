/** What the part that plans and draws layouts of one's own gives to the gallery, once it is loaded. */
import type { Recipe } from "../../../../src/recipe/recipe.ts";
import type { CatalogueData } from "../../../../src/view/catalogue.ts";
import type { PlanFacts } from "../../../../src/view/pattern/plan-status.ts";
import type { Device } from "../../device/device.ts";

export interface OwnCard extends PlanFacts {
  readonly recipe: Recipe;
  /** The address of its small drawing. */
  readonly picture: string;
}

export interface CardAround {
  readonly device: Device;
  readonly book: CatalogueData | undefined;
  /** The slug of a notebook of the book, or `MINE`. */
  readonly notebook: string;
}

export interface LayoutsPart {
  /** On a notebook of the book, or on the keeper's; on the book's first where there is no such. */
  ownCard(recipe: Recipe, around: CardAround): OwnCard | undefined;
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
