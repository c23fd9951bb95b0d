/** A page that is for the keeper's notebook goes on with it while other pages change it; a link's own stays as long as it is shown. */
import { readFitAddress } from "../../../src/view/address/fit-address.ts";
import { writeAddress } from "../../../src/view/address/hash-params.ts";
import { notebookEntries } from "../../../src/view/address/notebook-address.ts";
import type { Catalogue } from "../../../src/view/catalogue.ts";
import type { UnnamedNotebook } from "../../../src/view/fields/read-notebook-fields.ts";
import type { Device } from "../device/device.ts";
import { openEntry } from "../device/kept-entry.ts";
import { firstNotebook, keptFit } from "./initial-state.ts";

interface Following {
  readonly device: Device;
  readonly catalogue: Catalogue;
  /** What the page shows now. */
  readonly notebook: () => UnnamedNotebook;
  readonly show: (notebook: UnnamedNotebook) => void;
}

/** The keeper's notebook as it is kept; else the one of the book's that was chosen, else a usual one. */
export function keepersNotebook(device: Device, catalogue: Catalogue): UnnamedNotebook {
  return keptFit(device, catalogue).notebook ?? firstNotebook(device, catalogue);
}

/** Follows from now on; what it gives is to be told that the address brought another one. */
export function followNotebook({ device, catalogue, notebook, show }: Following): () => void {
  const textOf = (of: UnnamedNotebook) => writeAddress(notebookEntries(of));
  const text = () => textOf(notebook());
  const isKept = textOf(keepersNotebook(device, catalogue)) === text();
  const entry = openEntry(device, "notebook", { text, isKept });
  entry.subscribe((said) => {
    const reading = readFitAddress(said, catalogue.slugs);
    if (reading.ok && reading.value.notebook) show(reading.value.notebook);
  });
  return entry.leave;
}
