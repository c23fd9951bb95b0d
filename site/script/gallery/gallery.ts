/** What the gallery's page does by itself. */
import type { GalleryFacts } from "../../../src/view/gallery/gallery-facts.ts";
import { openDevice } from "../page/device.ts";
import { searchLoader } from "./find-patterns.ts";
import { openGallery } from "./open-gallery.ts";

declare global {
  interface Window {
    readonly spanbookFacts?: GalleryFacts;
  }
}

const facts = window.spanbookFacts;
// A book without patterns or notebooks has nothing to choose from; without its facts the list stays as it was written.
if (facts && facts.patterns.length > 0 && facts.notebooks.length > 0) {
  document.documentElement.classList.add("choosing");
  openGallery(window, {
    facts,
    device: openDevice(() => localStorage),
    loadSearch: searchLoader(window),
  });
}
