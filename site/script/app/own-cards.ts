/** Cards of the book's patterns on the keeper's own notebook: nothing is loaded before they are shown. */
import type { OwnNotebook } from "../device/own-notebook.ts";
import { type CardsQuestion, type DrawnCards, datesPart } from "../lazy/dates/dates-part.ts";

interface Cards extends Pick<CardsQuestion, "elements" | "told"> {
  readonly own: OwnNotebook;
  /** Brings the engine, and the book's recipes by their address. */
  readonly load: (name: string) => Promise<void>;
}

export interface OwnCards {
  /** Shows the own notebook on the cards from now on. Rejects where the engine cannot be loaded, or the notebook not be read. */
  show(): Promise<void>;
  /** The cards show something else. */
  hide(): void;
}

/** Outcomes come when there is time, pictures when a card comes into view. */
export function openOwnCards(window: Window, { own, load, ...cards }: Cards): OwnCards {
  let isShown = false;
  let opened: Promise<DrawnCards> | undefined;
  const open = async () => {
    const [part] = await Promise.all([datesPart(window, load), load("../fit/book.js")]);
    const drawn = part.openCards({ ...cards, said: own.said, isShown: () => isShown });
    if (typeof drawn === "string") throw new Error(drawn);
    return drawn;
  };
  return {
    show: async () => {
      isShown = true;
      opened ??= open();
      opened.catch(() => {
        opened = undefined;
      });
      (await opened).again();
    },
    hide: () => {
      isShown = false;
    },
  };
}
