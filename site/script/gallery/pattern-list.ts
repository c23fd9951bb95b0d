/** The cards of the gallery: filled, shown and put in order, by purpose or one after another. */
import type { GalleryFacts, GalleryPattern } from "../../../src/view/gallery/gallery-facts.ts";
import { MINE } from "../../../src/view/gallery/gallery-query.ts";
import { openOnNotebook, openOnOwn } from "../device/open-on-notebook.ts";
import type { OwnNotebook } from "../device/own-notebook.ts";
import { partOf } from "../ui/parts.ts";
import { fillCards } from "./fill-cards.ts";

export interface PatternList {
  /** Draws all cards for a notebook; their pages are named where the keeper has one of their own. */
  open(notebook: string): void;
  /** Fills the empty ones; false where that was done before. */
  fill(facts: GalleryFacts): boolean;
  /** The cards that are filled, by their patterns. */
  cards(): ReadonlyMap<string, HTMLElement>;
  /** How many there are, the empty ones included. */
  readonly count: number;
  /** Shows these in this order; below the headings of their purposes, or under none. */
  show(patterns: readonly GalleryPattern[], isGrouped: boolean): void;
}

/** Cards that are not shown stay in the page, hidden, so that nothing has to be brought back. */
export function openPatternList(page: Document, own: OwnNotebook | undefined): PatternList {
  let cards = cardsIn(page);
  let isFilled = false;
  const groups = [...page.querySelectorAll<HTMLElement>("[data-group]")];
  const flat = partOf(page, "flat");
  const place = (section: HTMLElement, patterns: readonly GalleryPattern[]) => {
    section.hidden = patterns.length === 0;
    const list = section.querySelector(".cards");
    if (list)
      putInOrder(
        list,
        patterns.flatMap(({ slug }) => cards.get(slug) ?? []),
      );
  };
  return {
    cards: () => cards,
    count: page.querySelectorAll("[data-group] .card").length,
    fill: (facts) => {
      if (isFilled) return false;
      isFilled = true;
      page.documentElement.classList.remove("unfilled");
      fillCards(page, facts);
      cards = cardsIn(page);
      return true;
    },
    open: (notebook) => {
      if (own && notebook === MINE) openOnOwn(page, own);
      else openOnNotebook(page, notebook, own !== undefined);
    },
    show: (patterns, isGrouped) => {
      const shown = new Set(patterns.map(({ slug }) => slug));
      for (const [slug, card] of cards) card.hidden = !shown.has(slug);
      place(flat, isGrouped ? [] : patterns);
      for (const section of groups) {
        const own = patterns.filter(({ purpose }) => purpose === section.dataset.group);
        place(section, isGrouped ? own : []);
      }
    },
  };
}

function cardsIn(page: Document): ReadonlyMap<string, HTMLElement> {
  const cards = page.querySelectorAll<HTMLElement>("[data-pattern]");
  return new Map([...cards].map((card) => [card.dataset.pattern ?? "", card]));
}

/** Moves only what is not in its place: a card that is taken out between two halves of a click would swallow it. */
function putInOrder(list: Element, shown: readonly HTMLElement[]): void {
  const inOrder = new Set<Element>(shown);
  let next = list.firstElementChild;
  for (const card of shown) {
    while (next && !inOrder.has(next)) next = next.nextElementSibling;
    if (card === next) next = next.nextElementSibling;
    else list.insertBefore(card, next);
  }
}
