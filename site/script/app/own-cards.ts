/** Cards of the book's patterns on the keeper's own notebook: outcomes when there is time, pictures when they come into view. */

import { sayCount } from "../../../src/issue/words/say-count.ts";
import type { Notebook } from "../../../src/notebook/notebook.ts";
import { type Catalogue, openCatalogue } from "../../../src/view/catalogue.ts";
import { NO_LINES, showOutcome } from "../device/open-on-notebook.ts";
import type { OwnNotebook } from "../device/own-notebook.ts";
import { type CardView, type DatesPart, datesPart } from "../lazy/dates/dates-part.ts";
import { openQueue } from "../ui/idle-queue.ts";
import { openSight } from "../ui/in-view.ts";

interface Cards {
  readonly own: OwnNotebook;
  /** Brings the engine, and the book's recipes by their address. */
  readonly load: (name: string) => Promise<void>;
  /** The elements of the cards by their patterns. */
  readonly elements: ReadonlyMap<string, HTMLElement>;
  /** Told when all outcomes are known. */
  readonly told: (outcomes: ReadonlyMap<string, CardView>) => void;
}

export interface OwnCards {
  /** Shows the own notebook on the cards from now on. Rejects where the engine cannot be loaded, or the notebook not be read. */
  show(): Promise<void>;
  /** The cards show something else. */
  hide(): void;
}

/** Nothing is loaded before the cards are shown. */
export function openOwnCards(window: Window, { own, load, elements, told }: Cards): OwnCards {
  let isShown = false;
  let opened: Promise<Drawn> | undefined;
  const open = () => {
    opened ??= openDrawn(window, { own, load, elements, told }, () => isShown);
    opened.catch(() => {
      opened = undefined;
    });
    return opened;
  };
  return {
    show: async () => {
      isShown = true;
      (await open()).again();
    },
    hide: () => {
      isShown = false;
    },
  };
}

interface Drawn {
  /** Writes all that is known onto the cards once more. */
  again(): void;
}

async function openDrawn(window: Window, cards: Cards, isShown: () => boolean): Promise<Drawn> {
  const { own, load, elements, told } = cards;
  const [part] = await Promise.all([datesPart(window, load), load("../fit/book.js")]);
  const catalogue = openCatalogue(window.spanbookContent);
  const notebook = part.readNotebook(own.said, catalogue);
  if (typeof notebook === "string") throw new Error(notebook);
  const viewOf = openViews(part, catalogue, notebook);
  const queue = openQueue(window);
  const outcomes = new Map<string, CardView>();
  const drawSoon = (slug: string) =>
    queue.put(`picture ${slug}`, () => {
      if (isShown())
        elements.get(slug)?.querySelector("img")?.setAttribute("src", viewOf(slug).picture().src);
      return false;
    });
  const sight = openSight(new Map([...elements].map(([slug, card]) => [card, slug])), drawSoon);
  const waiting = [...elements.keys()];
  queue.put("outcomes", () => {
    const slug = waiting.shift();
    if (slug !== undefined) {
      outcomes.set(slug, viewOf(slug));
      if (isShown()) showCard(elements.get(slug), viewOf(slug));
    }
    if (waiting.length === 0) told(outcomes);
    return waiting.length > 0;
  });
  return {
    again: () => {
      for (const [slug, view] of outcomes) showCard(elements.get(slug), view);
      for (const slug of sight.seenAgain()) drawSoon(slug);
    },
  };
}

/** Each pattern is worked out once. */
function openViews(part: DatesPart, catalogue: Catalogue, notebook: Notebook) {
  const views = new Map<string, CardView>();
  return (slug: string): CardView => {
    const view = views.get(slug) ?? part.cardView(catalogue.recipe(slug), notebook, catalogue.when);
    views.set(slug, view);
    return view;
  };
}

function showCard(card: HTMLElement | undefined, { state, lines }: CardView): void {
  const words = card?.querySelector<HTMLElement>("[data-state]");
  if (words) showOutcome(words, state);
  const effort = card?.querySelector(".effort");
  if (effort) effort.textContent = lines === 0 ? NO_LINES : sayCount(lines, "line");
}
