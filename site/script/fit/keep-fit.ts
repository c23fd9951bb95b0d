/** Keeps the fit page's notebook, pattern and strip on the device, each by itself, and goes on with what other tabs make of them. */
import {
  type Fit,
  readFitAddress,
  writeFitAddress,
} from "../../../src/view/address/fit-address.ts";
import { isSameGrid } from "../../../src/view/fields/name-notebook.ts";
import { NO_STRIP } from "../../../src/view/fields/strip-fields.ts";
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

/** What other tabs make of the notebook and the strip that the page shows is shown in it, too. */
export function bindKeptFit(store: FitStore, device: Device): KeptFit {
  const { catalogue } = store;
  const { fit: kept } = startFit("", device, catalogue);
  const open = (part: "notebook" | "strip") => {
    const text = () => writeFitAddress(store.state().fit, part);
    const entry = openEntry(device, part, { text, isKept: writeFitAddress(kept, part) === text() });
    entry.subscribe((said) => {
      const reading = readFitAddress(said, catalogue.slugs);
      if (!reading.ok) return;
      const { notebook, strip = NO_STRIP } = reading.value;
      if (part === "strip") store.update({ strip });
      else if (notebook) store.update({ notebook });
    });
    return entry;
  };
  const [notebook, strip] = [open("notebook"), open("strip")];
  return {
    keep: (before) => {
      notebook.keep(writeFitAddress(before, "notebook"));
      if (before.notebook !== store.state().fit.notebook) keepTwin(store, device);
      strip.keep(writeFitAddress(before, "strip"));
      // Which pattern one looks at, and on which days, is for each tab to say: no tab follows another in that.
      for (const part of ["pattern", "dates"] as const)
        device.set(part, writeFitAddress(store.state().fit, part));
    },
    leave: () => {
      notebook.leave();
      strip.leave();
    },
  };
}

/** Says to all pages which notebook of the book it is, if any, and names it in the head of this one. */
function keepTwin(store: FitStore, device: Device): void {
  const { notebook } = store.state().fit;
  const twin = store.catalogue.notebooks.find((one) => isSameGrid(notebook, one));
  device.set("book-notebook", twin?.slug ?? "");
  showMine(document, device);
}
