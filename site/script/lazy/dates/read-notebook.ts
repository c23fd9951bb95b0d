/** The notebook of an address, by its entries alone. */
import { sayAddressIssue } from "../../../../src/issue/words/say-address-issue.ts";
import type { Notebook } from "../../../../src/notebook/notebook.ts";
import { readAddress, writeAddress } from "../../../../src/view/address/hash-params.ts";
import {
  NOTEBOOK_ADDRESS_KEYS,
  readNotebookEntries,
} from "../../../../src/view/address/notebook-address.ts";
import type { Catalogue } from "../../../../src/view/catalogue.ts";
import { nameNotebook } from "../../../../src/view/fields/name-notebook.ts";

/** With its name, which is one of the book's where it has the same numbers; or why it cannot be read. */
export function readNotebook(text: string, { notebooks }: Catalogue): Notebook | string {
  const values = readAddress(`${writeAddress([])}&${text}`, NOTEBOOK_ADDRESS_KEYS);
  const reading = values.ok ? readNotebookEntries(values.value) : values;
  if (!reading.ok) return sayAddressIssue(reading.issue);
  if (!reading.value) throw new RangeError("an address without a notebook");
  return nameNotebook(reading.value, notebooks);
}
