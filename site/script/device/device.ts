/** What is kept on the device between visits. A browser may refuse to: then it lasts as long as the page. */

export interface Device {
  recall(key: string): string | undefined;
  keep(key: string, text: string): void;
  forget(key: string): void;
}

/** Names of what is kept. */
export const KEPT = {
  /** The slug of the book's notebook that its own page was told to keep. */
  notebook: "spanbook.notebook",
  /** What the drawing of a page was told not to show, and the hand that draws. */
  drawing: "spanbook.drawing",
  hand: "spanbook.hand",
  fit: "spanbook.fit",
  draft: "spanbook.desk",
  printer: "spanbook.printer",
  screen: "spanbook.screen",
} as const;

/** A device that never throws. `storage` is asked for when it is needed: to name it may throw already. */
export function openDevice(storage = (): Storage => localStorage): Device {
  const attempt = <T>(act: (store: Storage) => T): T | undefined => {
    try {
      return act(storage());
    } catch {
      return undefined;
    }
  };
  return {
    recall: (key) => attempt((store) => store.getItem(key)) ?? undefined,
    keep: (key, text) => attempt((store) => store.setItem(key, text)),
    forget: (key) => attempt((store) => store.removeItem(key)),
  };
}
