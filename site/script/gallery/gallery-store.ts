/** What the reader asks the gallery for now, kept the same as the address. */
import {
  type Known,
  readGalleryAddress,
  writeGalleryAddress,
} from "../../../src/view/address/gallery-address.ts";
import { EVERYTHING, type GalleryQuery } from "../../../src/view/gallery/gallery-query.ts";
import { type Step, setAddress } from "../app/bind-address.ts";

export interface GalleryStore {
  state(): GalleryQuery;
  /** The notebook that is asked for, else the reader's own. */
  notebook(): string;
  /** Asks for something else, and writes it into the address. */
  change(next: GalleryQuery, step: Step): void;
  /** Asks for what the address says. */
  arrive(): void;
}

interface GalleryTools {
  readonly known: Known;
  /** The reader's own notebook. */
  readonly own: () => string;
  /** Told whenever something else is asked for. */
  readonly show: () => void;
}

/** Asks for everything until it arrives at the address; from the start it follows a change of it. */
export function openGalleryStore(window: Window, { known, own, show }: GalleryTools): GalleryStore {
  let state = EVERYTHING;
  // The address names the notebook, too: whoever is sent it would else see another one, their own.
  const change = (next: GalleryQuery, step: Step) => {
    state = { ...next, notebook: next.notebook || own() };
    setAddress(window, writeGalleryAddress(state), step);
    show();
  };
  // An address that says nothing, or names a place on the page, stays as it is: it is everybody's own gallery.
  const arrive = () => {
    state = readGalleryAddress(window.location.hash, known);
    if (writeGalleryAddress(state) === "") show();
    else change(state, "same");
  };
  window.addEventListener("hashchange", arrive);
  return { state: () => state, notebook: () => state.notebook || own(), change, arrive };
}
