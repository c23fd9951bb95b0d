/** The keeper's notebook on pages that are for it: as it is kept, and followed while other pages change it. */
import { writeAddress } from "../../../src/view/address/hash-params.ts";
import {
  notebookEntries,
  readNotebookAddress,
} from "../../../src/view/address/notebook-address.ts";
import type { Catalogue } from "../../../src/view/catalogue.ts";
import { unnamed } from "../../../src/view/fields/name-notebook.ts";
import { USUAL_FIELDS } from "../../../src/view/fields/notebook-fields.ts";
import { readFields, type UnnamedNotebook } from "../../../src/view/fields/read-notebook-fields.ts";
import type { Device } from "../device/device.ts";
import { keptText, openEntry } from "../device/kept-entry.ts";

/** As it is kept; else the one of the book's that was chosen, else a usual one. */
export function keepersNotebook(device: Device, catalogue: Catalogue): UnnamedNotebook {
  const kept = readNotebookAddress(keptText(device, "notebook") ?? "");
  return kept ?? firstNotebook(device, catalogue);
}

/** Where no notebook is kept: the one that was chosen on its own page, else a usual one. */
export function firstNotebook(device: Device, catalogue: Catalogue): UnnamedNotebook {
  return chosenNotebook(device, catalogue) ?? usualNotebook(catalogue);
}

function chosenNotebook(device: Device, { notebooks }: Catalogue): UnnamedNotebook | undefined {
  const slug = device.get("book-notebook");
  const chosen = notebooks.find((notebook) => notebook.slug === slug);
  return chosen && unnamed(chosen);
}

/** The book's first; a book without any is about A5. */
function usualNotebook({ notebooks: [first] }: Catalogue): UnnamedNotebook {
  if (first) return unnamed(first);
  const usual = readFields(USUAL_FIELDS);
  if (usual.ok) return usual.value;
  throw new Error("the usual notebook is not all right");
}

interface Following {
  readonly device: Device;
  readonly catalogue: Catalogue;
  /** What the page shows now. */
  readonly notebook: () => UnnamedNotebook;
  readonly show: (notebook: UnnamedNotebook) => void;
}

/** Follows from now on, but not for a link's own notebook; what it gives is to be told that the address brought another one. */
export function followNotebook({ device, catalogue, notebook, show }: Following): () => void {
  const textOf = (of: UnnamedNotebook) => writeAddress(notebookEntries(of));
  const text = () => textOf(notebook());
  const isKept = textOf(keepersNotebook(device, catalogue)) === text();
  const entry = openEntry(device, "notebook", { text, isKept });
  entry.subscribe((said) => {
    const next = readNotebookAddress(said);
    if (next) show(next);
  });
  return entry.leave;
}
