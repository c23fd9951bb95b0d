/** What the recipe page keeps behind its #: the recipe or the pattern that it starts from, the notebook, and the days. */
import { deflateSync, inflateSync, strFromU8, strToU8 } from "fflate";
import { isSlug } from "../../source/slug.ts";
import type { UnnamedNotebook } from "../fields/read-notebook-fields.ts";
import { type DatesChoice, NO_DATES } from "../fields/span-fields.ts";
import { type AddressReading, LONGEST_ADDRESS, readAddress, writeAddress } from "./hash-params.ts";
import { NOTEBOOK_ADDRESS_KEYS, notebookEntries, readNotebookEntries } from "./notebook-address.ts";
import { DATES_ADDRESS_KEYS, datesEntries, readDatesEntries } from "./span-address.ts";

/** What lies on the desk. */
export interface RecipeDraft {
  readonly notebook: UnnamedNotebook;
  /** The file's name without its ending; "" to go by the recipe's title. */
  readonly slug: string;
  /** The recipe as written. */
  readonly text: string;
  /** Left out: no days, by the book's calendar. */
  readonly dates?: DatesChoice;
}

/** What an address may say; `from` is a pattern of the book to start from, `mine` one that is kept on the device. */
export type RecipeAddress = Partial<RecipeDraft> & {
  readonly from?: string;
  readonly mine?: string;
};

const KEYS = [...NOTEBOOK_ADDRESS_KEYS, ...DATES_ADDRESS_KEYS, "from", "mine", "recipe", "text"];

/** What is kept on the device may be as long as the longest recipe, packed. */
const LONGEST_KEPT = 400_000;

/** The address's part from # on; too long for a link where it is longer than `LONGEST_ADDRESS`. */
export function writeRecipeAddress({ notebook, slug, text, dates }: RecipeDraft): string {
  return writeAddress([
    ...notebookEntries(notebook),
    ...datesEntries(dates ?? NO_DATES),
    ["recipe", slug],
    ["text", packText(text)],
  ]);
}

/** What was kept on the device, written as an address and read as carefully. */
export function readKeptRecipe(
  kept: string,
  patterns: ReadonlySet<string>,
): RecipeDraft | undefined {
  const reading = readRecipeAddress(kept, patterns, LONGEST_KEPT);
  if (!reading.ok) return undefined;
  const { notebook, text, slug = "", dates } = reading.value;
  return notebook && text !== undefined
    ? { notebook, slug, text, ...(dates && { dates }) }
    : undefined;
}

/** What the address says; what it says nothing of is left out. */
export function readRecipeAddress(
  hash: string,
  patterns: ReadonlySet<string>,
  longest = LONGEST_ADDRESS,
): AddressReading<RecipeAddress> {
  const address = readAddress(hash, KEYS, longest);
  if (!address.ok) return address;
  const { value: values } = address;
  const notebook = readNotebookEntries(values);
  if (!notebook.ok) return notebook;
  const [from, slug, packed] = [values.get("from"), values.get("recipe"), values.get("text")];
  const mine = values.get("mine");
  if (from !== undefined && !patterns.has(from))
    return { ok: false, issue: { kind: "unknown-pattern", key: "from", slug: from } };
  for (const [key, name] of [
    ["recipe", slug],
    ["mine", mine],
  ] as const) {
    if (name === undefined || name === "" || isSlug(name)) continue;
    const field = { field: key, kind: "no-file-name" } as const;
    return { ok: false, issue: { kind: "bad-value", key, field } };
  }
  const dates = readDatesEntries(values);
  if (!dates.ok) return dates;
  const text = packed === undefined ? undefined : unpackText(packed);
  if (packed !== undefined && text === undefined)
    return { ok: false, issue: { kind: "spoilt-text", key: "text" } };
  return {
    ok: true,
    value: {
      ...(notebook.value && { notebook: notebook.value }),
      ...(from !== undefined && { from }),
      ...(mine && { mine }),
      ...(slug !== undefined && { slug }),
      ...(text !== undefined && { text }),
      ...(dates.value && { dates: dates.value }),
    },
  };
}

/** A text that says it is longer than this is none that was packed here. */
const MOST_BYTES = 256 * 1024;

/** The text in the letters of base64url (RFC 4648, section 5), without padding. */
export function packText(text: string): string {
  const bytes = deflateSync(strToU8(text), { level: 9 });
  return btoa(strFromU8(bytes, true)).replaceAll("+", "-").replaceAll("/", "_").replace(/=+$/, "");
}

/** The text, or none where the letters are not what was packed. */
export function unpackText(packed: string): string | undefined {
  if (!/^[A-Za-z0-9_-]*$/.test(packed)) return undefined;
  try {
    const letters = atob(packed.replaceAll("-", "+").replaceAll("_", "/"));
    const bytes = inflateSync(strToU8(letters, true), { out: new Uint8Array(MOST_BYTES + 1) });
    if (bytes.length > MOST_BYTES) return undefined;
    return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return undefined;
  }
}
