/** Everything that the fit page keeps behind its #: a notebook, a pattern and a strip. */
import type { UnnamedNotebook } from "../fields/read-notebook-fields.ts";
import type { StripChoice } from "../fields/strip-fields.ts";
import {
  type AddressEntries,
  type AddressReading,
  readAddress,
  writeAddress,
} from "./hash-params.ts";
import { NOTEBOOK_ADDRESS_KEYS, notebookEntries, readNotebookEntries } from "./notebook-address.ts";
import { readStripEntries, STRIP_ADDRESS_KEYS, stripEntries } from "./strip-address.ts";

/** What the page shows. */
export interface Fit {
  readonly notebook: UnnamedNotebook;
  /** The slug of the pattern that is drawn large. */
  readonly pattern: string;
  readonly strip: StripChoice;
}

const KEYS = [...NOTEBOOK_ADDRESS_KEYS, "pattern", ...STRIP_ADDRESS_KEYS];

/** The address's part from # on, or what it says of one part alone. A strip that carries nothing is left out. */
export function writeFitAddress(fit: Fit, part?: keyof Fit): string {
  const entries: Readonly<Record<keyof Fit, AddressEntries>> = {
    notebook: notebookEntries(fit.notebook),
    pattern: [["pattern", fit.pattern]],
    strip: stripEntries(fit.strip),
  };
  return writeAddress(part ? entries[part] : Object.values(entries).flat());
}

/** What the address says; what it says nothing of is left out. */
export function readFitAddress(
  hash: string,
  patterns: ReadonlySet<string>,
): AddressReading<Partial<Fit>> {
  const address = readAddress(hash, KEYS);
  if (!address.ok) return address;
  const { value: values } = address;
  const notebook = readNotebookEntries(values);
  if (!notebook.ok) return notebook;
  const strip = readStripEntries(values, patterns);
  if (!strip.ok) return strip;
  const pattern = values.get("pattern");
  if (pattern !== undefined && !patterns.has(pattern))
    return { ok: false, issue: { kind: "unknown-pattern", key: "pattern", slug: pattern } };
  return {
    ok: true,
    value: {
      ...(notebook.value && { notebook: notebook.value }),
      ...(pattern !== undefined && { pattern }),
      ...(strip.value && { strip: strip.value }),
    },
  };
}

/** The address's part from # on that starts the recipe page from the chosen pattern, on this notebook. */
export function writeRecipeLink({ notebook, pattern }: Fit): string {
  return writeAddress([...notebookEntries(notebook), ["from", pattern]]);
}
