/** What is known of all patterns: brought when it is first needed, so that the gallery opens as quickly however many there are. */
import type { GalleryFacts } from "../../../src/view/gallery/gallery-facts.ts";

declare global {
  interface Window {
    readonly spanbookFacts?: GalleryFacts;
  }
}

export interface Facts {
  /** As far as they have come. */
  now(): GalleryFacts | undefined;
  /** Sends for them, where they are not on their way. */
  bring(): void;
}

interface Bringing {
  readonly load: (name: string) => Promise<void>;
  readonly ready: () => void;
  /** Whoever asks again tries again. */
  readonly failed: () => void;
}

/** Nothing is loaded yet. */
export function openFacts(window: Window, { load, ready, failed }: Bringing): Facts {
  let isComing = false;
  return {
    now: () => window.spanbookFacts,
    bring: () => {
      if (isComing || window.spanbookFacts) return;
      isComing = true;
      load("../patterns/facts.js")
        .then(() => (window.spanbookFacts ? ready() : failed()), failed)
        .finally(() => {
          isComing = false;
        });
    },
  };
}

/** What tells that somebody goes on from what is seen first: also the key that a browser's own search begins with. */
const SIGNS = ["scroll", "keydown", "pointerdown", "focusin"] as const;

/** Calls back once: at the first sign that somebody goes on, or when one of the elements is seen. */
export function onGoingOn(window: Window, elements: Iterable<Element>, wanted: () => void): void {
  const observer = new IntersectionObserver((entries) => {
    if (entries.some(({ isIntersecting }) => isIntersecting)) go();
  });
  const go = () => {
    observer.disconnect();
    for (const sign of SIGNS) window.removeEventListener(sign, go);
    wanted();
  };
  for (const sign of SIGNS) window.addEventListener(sign, go, { passive: true });
  for (const element of elements) observer.observe(element);
}
