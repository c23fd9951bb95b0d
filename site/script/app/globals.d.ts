/** What the build hands to the page in scripts of its own, as globals of the window. */
import type { CatalogueData } from "../../../src/view/catalogue.ts";

declare global {
  interface Window {
    /** Set by `book.js`, which the build writes. */
    readonly spanbookContent?: CatalogueData;
    /** Set by `today.js`: what the front page draws for today. */
    readonly spanbookToday?: Pick<CatalogueData, "recipes" | "when">;
  }
}
