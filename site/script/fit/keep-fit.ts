/** Keeps the fit page's notebook, pattern and strip on the device, each by itself, and goes on with what other tabs make of them. */
import {
  type Fit,
  readFitAddress,
  writeFitAddress,
} from "../../../src/view/address/fit-address.ts";
import { NO_STRIP } from "../../../src/view/fields/strip-fields.ts";
import { startFit } from "../app/initial-state.ts";
import type { Device } from "../device/device.ts";
import { openEntry } from "../device/kept-entry.ts";
import type { FitStore } from "./fit-store.ts";

/** A function that keeps what was changed since the page showed something before. */
export function bindKeptFit(store: FitStore, device: Device): (before: Fit) => void {
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
  const entries = { notebook: open("notebook"), strip: open("strip") };
  return (before) => {
    for (const part of ["notebook", "strip"] as const)
      entries[part].keep(writeFitAddress(before, part));
    // Which pattern one looks at, and on which days, is for each tab to say: no tab follows another in that.
    for (const part of ["pattern", "dates"] as const)
      device.set(part, writeFitAddress(store.state().fit, part));
  };
}
