/** What the recipe desk keeps behind its #: the recipe or the pattern that it starts from, and the notebook. */

import { isSlug } from "../../../src/source/slug.ts";
import { type AddressReading, LONGEST_ADDRESS, readAddress, writeAddress } from "../fit/address.ts";
import {
  NOTEBOOK_ADDRESS_KEYS,
  notebookEntries,
  readNotebookEntries,
} from "../fit/notebook-address.ts";
import type { AskedNotebook } from "../fit/read-fields.ts";
import { packText, unpackText } from "./pack-text.ts";

/** What lies on the desk. */
export interface Desk {
  readonly notebook: AskedNotebook;
  /** The file's name without its ending; "" to go by the recipe's title. */
  readonly slug: string;
  /** The recipe as written. */
  readonly text: string;
}

/** What an address may say; `from` is a pattern of the book to start from. */
export type DeskAddress = Partial<Desk> & { readonly from?: string };

const KEYS = [...NOTEBOOK_ADDRESS_KEYS, "from", "recipe", "text"];

/** What is kept on the device may be as long as the longest recipe, packed. */
const LONGEST_KEPT = 400_000;

/** The address's part from # on; too long for a link where it is longer than `LONGEST_ADDRESS`. */
export function writeDeskAddress({ notebook, slug, text }: Desk): string {
  return writeAddress([...notebookEntries(notebook), ["recipe", slug], ["text", packText(text)]]);
}

/** What was kept on the device, written as an address and read as carefully. */
export function readKeptDesk(kept: string, patterns: ReadonlySet<string>): Desk | undefined {
  const reading = readDeskAddress(kept, patterns, LONGEST_KEPT);
  if (!reading.ok) return undefined;
  const { notebook, text, slug = "" } = reading.value;
  return notebook && text !== undefined ? { notebook, slug, text } : undefined;
}

/** What the address says; what it says nothing of is left out. */
export function readDeskAddress(
  hash: string,
  patterns: ReadonlySet<string>,
  longest = LONGEST_ADDRESS,
): AddressReading<DeskAddress> {
  const address = readAddress(hash, KEYS, longest);
  if (!address.ok) return address;
  const { value: values } = address;
  const notebook = readNotebookEntries(values);
  if (!notebook.ok) return notebook;
  const [from, slug, packed] = [values.get("from"), values.get("recipe"), values.get("text")];
  if (from !== undefined && !patterns.has(from))
    return { ok: false, problem: { kind: "unknown-pattern", key: "from", slug: from } };
  if (slug !== undefined && slug !== "" && !isSlug(slug)) {
    const field = { field: "recipe", kind: "no-file-name" } as const;
    return { ok: false, problem: { kind: "bad-value", key: "recipe", field } };
  }
  const text = packed === undefined ? undefined : unpackText(packed);
  if (packed !== undefined && text === undefined)
    return { ok: false, problem: { kind: "spoilt-text", key: "text" } };
  return {
    ok: true,
    value: {
      ...(notebook.value && { notebook: notebook.value }),
      ...(from !== undefined && { from }),
      ...(slug !== undefined && { slug }),
      ...(text !== undefined && { text }),
    },
  };
}
