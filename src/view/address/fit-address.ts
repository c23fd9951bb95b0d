/** Everything that the fit page keeps behind its #: a notebook and a pattern with its days. It had a strip, too, before that had a page of its own. */
import type { UnnamedNotebook } from "../fields/read-notebook-fields.ts";
import { type DatesChoice, NO_DATES } from "../fields/span-fields.ts";
import type { StripChoice } from "../fields/strip-fields.ts";
import {
  type AddressEntries,
  type AddressReading,
  readAddress,
  writeAddress,
} from "./hash-params.ts";
import { NOTEBOOK_ADDRESS_KEYS, notebookEntries, readNotebookEntries } from "./notebook-address.ts";
import { DATES_ADDRESS_KEYS, datesEntries, readDatesEntries } from "./span-address.ts";
import { readStripEntries } from "./strip-address.ts";
import { STRIP_ADDRESS_KEYS } from "./strip-list.ts";

/** What the page shows. */
export interface Fit {
  readonly notebook: UnnamedNotebook;
  /** The slug of the pattern that is drawn large. */
  readonly pattern: string;
  /** Left out: no days, by the book's calendar. */
  readonly dates?: DatesChoice;
}

export type FitPart = keyof Fit;

/** What an address says; a strip in it is for the strip page. */
export type SaidFit = Partial<Fit> & { readonly strip?: StripChoice };

const KEYS = [...NOTEBOOK_ADDRESS_KEYS, "pattern", ...DATES_ADDRESS_KEYS, ...STRIP_ADDRESS_KEYS];

/** The address's part from # on, or what it says of one part alone. */
export function writeFitAddress(fit: Fit, part?: FitPart): string {
  const entries: Readonly<Record<FitPart, AddressEntries>> = {
    notebook: notebookEntries(fit.notebook),
    pattern: [["pattern", fit.pattern]],
    dates: datesEntries(fit.dates ?? NO_DATES),
  };
  return writeAddress(part ? entries[part] : Object.values(entries).flat());
}

/** What the address says; what it says nothing of is left out. With a pattern and no days it says that there are none. */
export function readFitAddress(
  hash: string,
  patterns: ReadonlySet<string>,
): AddressReading<SaidFit> {
  const address = readAddress(hash, KEYS);
  if (!address.ok) return address;
  const { value: values } = address;
  const notebook = readNotebookEntries(values);
  if (!notebook.ok) return notebook;
  const strip = readStripEntries(values, patterns);
  if (!strip.ok) return strip;
  const named = readDatesEntries(values);
  if (!named.ok) return named;
  const pattern = values.get("pattern");
  const dates = named.value ?? (pattern === undefined ? undefined : NO_DATES);
  if (pattern !== undefined && !patterns.has(pattern))
    return { ok: false, issue: { kind: "unknown-pattern", key: "pattern", slug: pattern } };
  return {
    ok: true,
    value: {
      ...(notebook.value && { notebook: notebook.value }),
      ...(pattern !== undefined && { pattern }),
      ...(dates && { dates }),
      ...(strip.value && { strip: strip.value }),
    },
  };
}

/** The address's part from # on that starts the recipe page from the chosen pattern, on this notebook. */
export function writeRecipeLink({ notebook, pattern }: Pick<Fit, "notebook" | "pattern">): string {
  return writeAddress([...notebookEntries(notebook), ["from", pattern]]);
}
