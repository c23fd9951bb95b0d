/** Which notebook the keeper's is: one of the book's, or one of their own as addresses have it, and as it is called. */
import { addressOfNotebook, notebookLabel } from "../../../src/view/address/notebook-label.ts";
import type { Device } from "./device.ts";
import { keptText } from "./kept-entry.ts";

export interface OwnNotebook {
  /** Its entries in an address, without the version: `paper=A5&pitch=5&dots=24,35`. */
  readonly said: string;
  /** `A5, 24 × 35`, or the name that it was given. */
  readonly label: string;
}

/** Nothing where none is kept, or where it is a notebook of the book. */
export function ownNotebook(page: Document, device: Device): OwnNotebook | undefined {
  if (keptNotebook(page, device)) return undefined;
  const kept = keptText(device, "notebook") ?? "";
  const label = notebookLabel(kept);
  return label === undefined ? undefined : { said: addressOfNotebook(kept), label };
}

/** The notebook of the book that the keeper's is, where the book has it. */
export function keptNotebook(page: Document, device: Device): string | undefined {
  const chosen = device.get("book-notebook");
  return chosen && notebooksOf(page).includes(chosen) ? chosen : undefined;
}

/** The book's, in its order. */
export function notebooksOf(page: Document): readonly string[] {
  return (page.body.dataset.notebooks ?? "").split(" ").filter((slug) => slug !== "");
}
