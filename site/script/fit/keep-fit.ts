/** Keeps the fit page's notebook and pattern on the device, each by itself, and goes on with what other tabs make of the notebook. */
import {
  type Fit,
  readFitAddress,
  writeFitAddress,
} from "../../../src/view/address/fit-address.ts";
import { isSameGrid } from "../../../src/view/fields/name-notebook.ts";
import { startFit } from "../app/initial-state.ts";
import type { Device } from "../device/device.ts";
import { openEntry } from "../device/kept-entry.ts";
import { showMine } from "../device/my-notebook.ts";
import type { FitStore } from "./fit-store.ts";

interface KeptFit {
  /** Keeps what was changed since the page showed something before. */
  keep(before: Fit): void;
  /** Hears that an address brought something into the page. */
  leave(): void;
}

/** What other tabs make of the notebook that the page shows is shown in it, too. */
export function bindKeptFit(store: FitStore, device: Device): KeptFit {
  const { catalogue } = store;
  const { fit: kept } = startFit("", device, catalogue);
  const text = () => writeFitAddress(store.state().fit, "notebook");
  const isKept = writeFitAddress(kept, "notebook") === text();
  const entry = openEntry(device, "notebook", { text, isKept });
  entry.subscribe((said) => {
    const reading = readFitAddress(said, catalogue.slugs);
    if (reading.ok && reading.value.notebook) store.update({ notebook: reading.value.notebook });
  });
  return {
    keep: (before) => {
      entry.keep(writeFitAddress(before, "notebook"));
      if (before.notebook !== store.state().fit.notebook) keepTwin(store, device);
      // Which pattern one looks at, and on which days, is for each tab to say: no tab follows another in that.
      for (const part of ["pattern", "dates"] as const)
        device.set(part, writeFitAddress(store.state().fit, part));
    },
    leave: () => entry.leave(),
  };
}

/** Says to all pages which notebook of the book it is, if any, and names it in the head of this one. */
function keepTwin(store: FitStore, device: Device): void {
  const { notebook } = store.state().fit;
  const twin = store.catalogue.notebooks.find((one) => isSameGrid(notebook, one));
  device.set("book-notebook", twin?.slug ?? "");
  showMine(document, device);
}
