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

/** A function that keeps what differs from what was shown before, and whatever was not kept yet. */
export function bindKeptFit(store: FitStore, device: Device): (fit: Fit, before: Fit) => void {
  const { catalogue } = store;
  const { fit: start } = store.state();
  const { fit: kept } = startFit("", device, catalogue);
  const open = (part: "notebook" | "strip") => {
    const isShown = writeFitAddress(kept, part) === writeFitAddress(start, part);
    const entry = openEntry(device, part, { isShown });
    entry.subscribe((text) => {
      const reading = readFitAddress(text, catalogue.slugs);
      if (!reading.ok) return;
      const { notebook, strip = NO_STRIP } = reading.value;
      if (part === "strip") store.update({ strip });
      else if (notebook) store.update({ notebook });
    });
    return entry.keep;
  };
  // Which pattern one looks at is for each tab to say: no tab follows another in that.
  const keep = {
    notebook: open("notebook"),
    strip: open("strip"),
    pattern: (text: string) => device.set("pattern", text),
  };
  return (fit, before) => {
    for (const part of ["notebook", "strip", "pattern"] as const) {
      if (fit[part] !== before[part] || device.get(part) === undefined)
        keep[part](writeFitAddress(fit, part));
    }
  };
}
