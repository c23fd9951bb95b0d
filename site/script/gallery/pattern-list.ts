/** The cards of the gallery: shown and put in order, by purpose or one after another. */
import type { GalleryPattern } from "../../../src/view/gallery/gallery-facts.ts";
import { MINE } from "../../../src/view/gallery/gallery-query.ts";
import { openOnNotebook, openOnOwn } from "../device/open-on-notebook.ts";
import type { OwnNotebook } from "../device/own-notebook.ts";
import { partOf } from "../ui/parts.ts";
import { sayLines } from "./say-filter.ts";

export interface PatternList {
  /** Draws all cards for a notebook, which is the book's at a place; its pages are named where the keeper has one of their own. */
  open(notebook: string, place: number, patterns: readonly GalleryPattern[]): void;
  /** The cards, by their patterns. */
  readonly cards: ReadonlyMap<string, HTMLElement>;
  /** Shows these in this order; below the headings of their purposes, or under none. */
  show(patterns: readonly GalleryPattern[], isGrouped: boolean): void;
}

/** Cards that are not shown stay in the page, hidden, so that nothing has to be brought back. */
export function openPatternList(page: Document, own: OwnNotebook | undefined): PatternList {
  const cards = new Map(
    [...page.querySelectorAll<HTMLElement>("[data-pattern]")].map((card) => [
      card.dataset.pattern ?? "",
      card,
    ]),
  );
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
    cards,
    open: (notebook, index, patterns) => {
      if (own && notebook === MINE) return openOnOwn(page, own);
      openOnNotebook(page, notebook, own !== undefined);
      for (const { slug, lines } of patterns) {
        const words = cards.get(slug)?.querySelector(".effort");
        if (words) words.textContent = sayLines(lines[index] ?? 0);
      }
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
