/** The keeper's own notebook in the gallery: the first choice, and what is known of all patterns on it. */
import type { GalleryFacts } from "../../../src/view/gallery/gallery-facts.ts";
import { MINE } from "../../../src/view/gallery/gallery-query.ts";
import { withOwnNotebook } from "../../../src/view/gallery/own-facts.ts";
import { openOwnCards } from "../app/own-cards.ts";
import type { OwnNotebook } from "../device/own-notebook.ts";
import { keepParts } from "../offline/prefetch-scripts.ts";
import { makeElement } from "../ui/make-element.ts";
import { theOne } from "../ui/parts.ts";

export const NOT_WORKED_OUT =
  "Your notebook could not be worked out: a part of this page is missing, or what is kept of it is damaged";

/** Before the notebooks of the book. What works it out lies beside a script's address, and is kept for when there is no network. */
export function offerMine(window: Window, { label }: OwnNotebook, beside: string): void {
  const select = theOne(window.document, "[name=on]", HTMLSelectElement);
  select.prepend(makeElement("option", { value: MINE }, `your notebook (${label})`));
  keepParts(window, beside, ["dates.js", "../fit/book.js"]);
}

/** What draws the cards for it. */
export interface OwnCardsTools {
  readonly notebook: OwnNotebook;
  readonly load: (name: string) => Promise<void>;
  /** Told when there is more to show, or when it could not be worked out. */
  readonly told: (isWorkedOut: boolean) => void;
}

/** The facts of the book's notebooks and of this one: all of them, or none yet. */
export function openMine(
  bookFacts: GalleryFacts,
  { notebook, load, told }: OwnCardsTools,
  elements: ReadonlyMap<string, HTMLElement>,
) {
  let facts = withOwnNotebook(bookFacts, new Map());
  let isKnown = false;
  const cards = openOwnCards(window, {
    own: notebook,
    load,
    elements,
    told: (outcomes) => {
      facts = withOwnNotebook(bookFacts, outcomes);
      isKnown = true;
      told(true);
    },
  });
  return {
    facts: () => facts,
    isKnown: () => isKnown,
    show: (isShown: boolean) => {
      if (isShown) cards.show().catch(() => told(false));
      else cards.hide();
    },
  };
}
