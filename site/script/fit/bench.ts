/** The bench: what the fit page shows now, and who is told when that changes. */
import type { BookShelf } from "./book-content.ts";
import type { Fit } from "./fit-address.ts";
import { type WorkedOut, workOut } from "./work-out.ts";

/** What is asked, and everything that follows from it. */
export interface Shown extends WorkedOut {
  readonly fit: Fit;
}

export type Show = (shown: Shown) => void;

export interface Bench {
  readonly shelf: BookShelf;
  shown(): Shown;
  /** Changes some of what is asked; everybody is told before this returns. */
  change(part: Partial<Fit>): void;
  /** Tells what is shown now, and then every change. */
  tell(show: Show): void;
}

/** A bench that shows something from the start. */
export function openBench(shelf: BookShelf, start: Fit): Bench {
  const told: Show[] = [];
  let shown: Shown = { fit: start, ...workOut(start, shelf) };
  return {
    shelf,
    shown: () => shown,
    change: (part) => {
      const fit = { ...shown.fit, ...part };
      shown = { fit, ...workOut(fit, shelf) };
      for (const show of told) show(shown);
    },
    tell: (show) => {
      told.push(show);
      show(shown);
    },
  };
}
