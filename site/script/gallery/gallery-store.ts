/** The gallery's store: what the reader asks for now, kept the same as the address. */
import {
  type GalleryNames,
  galleryStep,
  readGalleryAddress,
  writeGalleryAddress,
} from "../../../src/view/address/gallery-address.ts";
import { EVERYTHING, type GalleryQuery } from "../../../src/view/gallery/gallery-query.ts";
import { bindAddress } from "../app/bind-address.ts";
import { openStore, type Store } from "../app/store.ts";

export interface GalleryStore extends Store<GalleryQuery> {
  /** The notebook that is asked for, else the reader's own. */
  notebook(): string;
}

/** Asks for everything; `own` is the reader's own notebook. */
export function openGalleryStore(own: () => string): GalleryStore {
  const store = openStore(EVERYTHING);
  return {
    ...store,
    notebook: () => store.state().notebook || own(),
    // The notebook is named with whatever is asked for: whoever is sent it would else see another one, their own.
    set: (next) => {
      const isEverything = writeGalleryAddress(next) === "";
      store.set(isEverything ? next : { ...next, notebook: next.notebook || own() });
    },
  };
}

/** Asks for what the address says, now and whenever it changes, and writes what is asked for into it. */
export function bindGalleryAddress(window: Window, store: GalleryStore, known: GalleryNames): void {
  const read = bindAddress(window, store, {
    // An address that says nothing, or names a place on the page, stays as it is: it is everybody's own gallery.
    write: (state) => writeGalleryAddress(state) || undefined,
    step: galleryStep,
    isRewritten: true,
    read: (hash, take) => take(() => store.set(readGalleryAddress(hash, known))),
  });
  read();
}
