/** A set-up behind the # of an address, with its notebook and its calendar; what is usual is left out. */
import type { CalendarFields } from "../../calendar/calendar.ts";
import type { AddressIssue } from "../../issue/facts/address-issue.ts";
import type { Issue } from "../../issue/facts/issue.ts";
import { readSetupEntries } from "../../recipe/read/read-setup-entries.ts";
import { setupEntrySource } from "../../recipe/setup-entry-source.ts";
import type { SetupEntry } from "../../recipe/setup-recipe.ts";
import { STRIP_DEFAULTS } from "../../recipe/strip-bounds.ts";
import { slugsOf } from "../../setup/check-setup.ts";
import type { FlowValue } from "../../source/front-matter/write-flow.ts";
import { isSlug } from "../../source/slug.ts";
import type { UnnamedNotebook } from "../fields/read-notebook-fields.ts";
import {
  readSetupFields,
  type SetupChoice,
  type SetupFields,
  setupFieldsOf,
} from "../fields/setup-fields.ts";
import { withoutEmptyBlocks } from "../setup/edit-setup.ts";
import { type PackedLayout, writeLayouts } from "./carried-layouts.ts";
import {
  type AddressEntries,
  type AddressReading,
  LONGEST_ADDRESS,
  readAddress,
  writeAddress,
} from "./hash-params.ts";
import { NOTEBOOK_ADDRESS_KEYS, notebookEntries, readNotebookEntries } from "./notebook-address.ts";
import { SETUP_ADDRESS_KEYS, SETUP_FIELD_KEYS } from "./setup-keys.ts";
import { DATES_ADDRESS_KEYS, datesEntries, readDatesEntries } from "./span-address.ts";
import { treeOf } from "./value-tree.ts";

/** What the set-up page shows. */
export interface AskedSetup {
  readonly notebook: UnnamedNotebook;
  readonly setup: SetupChoice;
  /** How weeks are counted and days are called, where that is another way than the book's. */
  readonly calendar: CalendarFields;
}

/** What an address may say; `add` is one more layout for the set-up that is kept. */
export type SaidSetup = Partial<AskedSetup> & { readonly add?: string };

/** Which field stands behind each key; `first` is a notebook's first dot. */
const FIELD_OF_KEY = {
  dates: "dates",
  from: "first",
  fill: "fill",
  lanes: "lanes",
  make: "make",
  width: "width",
  setup: "title",
  setupfile: "slug",
} as const satisfies Readonly<Record<string, keyof SetupFields>>;

const USUAL: Readonly<Partial<SetupFields>> = {
  first: "1",
  lanes: `${STRIP_DEFAULTS.lanes}`,
  make: STRIP_DEFAULTS.make,
  width: `${STRIP_DEFAULTS.width}`,
};

const KEYS = [...NOTEBOOK_ADDRESS_KEYS, ...DATES_ADDRESS_KEYS, ...SETUP_ADDRESS_KEYS, "add"];

/** What an address is made of; of the layouts only those go along that the set-up names. */
export type WrittenSetup = Partial<AskedSetup> & { readonly own?: readonly PackedLayout[] };

/** The address's part from # on, or what it says of one part alone. Where it would be too long, the layouts stay at home. */
export function writeSetupAddress({ notebook, setup, calendar, own = [] }: WrittenSetup): string {
  const dates = { ...(setup && { picked: setup.dates }), calendar: calendar ?? {} };
  const named = new Set(setup && slugsOf(setup));
  const write = (layouts: readonly PackedLayout[]) =>
    writeAddress([
      ...(notebook ? notebookEntries(notebook) : []),
      ...datesEntries(dates),
      ...(setup ? setupEntries(setup) : []),
      ["own", writeLayouts(layouts)],
    ]);
  const whole = write(own.filter(({ slug }) => named.has(slug)));
  return whole.length <= LONGEST_ADDRESS ? whole : write([]);
}

/** What the address says; what it says nothing of is left out. Patterns that the book does not have are not its fault. */
export function readSetupAddress(hash: string): AddressReading<SaidSetup> {
  const address = readAddress(hash, KEYS);
  if (!address.ok) return address;
  const { value: values } = address;
  const notebook = readNotebookEntries(values);
  if (!notebook.ok) return notebook;
  const dates = readDatesEntries(values);
  if (!dates.ok) return dates;
  const setup = readChoice(values);
  if (!setup.ok) return setup;
  const add = values.get("add");
  return {
    ok: true,
    value: {
      ...(notebook.value && { notebook: notebook.value }),
      ...(setup.value && { setup: setup.value }),
      ...(dates.value && { calendar: dates.value.calendar }),
      ...(add && isSlug(add) && { add }),
    },
  };
}

function setupEntries(setup: SetupChoice): AddressEntries {
  const fields = setupFieldsOf(setup);
  return [
    ...SETUP_FIELD_KEYS.map((key) => {
      const field = FIELD_OF_KEY[key];
      return [key, fields[field] === USUAL[field] ? "" : fields[field]] as const;
    }),
    ["pages", writePages(withoutEmptyBlocks(setup.pages).map(setupEntrySource))],
  ];
}

/** Names alone as they are; a list with anything else as JSON, with the very keys of the file. */
function writePages(entries: readonly FlowValue[]): string {
  const isPlain = entries.every((entry) => typeof entry === "string");
  return isPlain ? entries.join(",") : JSON.stringify(entries);
}

function readChoice(values: ReadonlyMap<string, string>): AddressReading<SetupChoice | undefined> {
  const keys = ["dates", "pages", ...SETUP_FIELD_KEYS] as const;
  if (!keys.some((key) => values.has(key))) return { ok: true, value: undefined };
  if (!values.has("dates")) return failed({ kind: "missing-key", key: "dates" });
  const pages = readPages(values.get("pages") ?? "");
  if (!pages) return failed({ kind: "spoilt-text", key: "pages" });
  const given = (["dates", ...SETUP_FIELD_KEYS] as const).flatMap((key) => {
    const word = values.get(key);
    return word === undefined ? [] : [[FIELD_OF_KEY[key], word] as const];
  });
  const reading = readSetupFields({ ...NO_FIELDS, ...USUAL, ...Object.fromEntries(given) }, pages);
  if (reading.ok) return reading;
  const [field] = reading.issues;
  const key = keys.find((each) => each !== "pages" && FIELD_OF_KEY[each] === field?.field);
  return failed(
    field && key ? { kind: "bad-value", key, field } : { kind: "missing-key", key: "pages" },
  );
}

const NO_FIELDS: SetupFields = {
  ...{ title: "", slug: "", dates: "", first: "", fill: "" },
  ...{ lanes: "", make: "", width: "" },
};

/** Read as the build reads the list in a file; nothing where something in it is not valid. */
function readPages(text: string): readonly SetupEntry[] | undefined {
  const written = listIn(text);
  if (!written || written.length === 0) return written && [];
  const issues: Issue[] = [];
  const value = treeOf(written);
  if (!value) return undefined;
  const source = { key: "pages", keyAt: value.at, value };
  const entries = readSetupEntries(source, (issue) => issues.push(issue));
  return issues.length > 0 ? undefined : entries.map(withoutPlaces);
}

function listIn(text: string): readonly unknown[] | undefined {
  if (text === "") return [];
  if (!text.startsWith("[")) return text.split(",");
  try {
    const entries: unknown = JSON.parse(text);
    return Array.isArray(entries) ? entries : undefined;
  } catch {
    return undefined;
  }
}

/** The entry as somebody asks for it in a page: where it stood in a file says nothing any more. */
export function withoutPlaces(entry: SetupEntry): SetupEntry {
  const { borders } = entry;
  if (entry.kind === "each") {
    return { kind: "each", each: entry.each, borders, pages: entry.pages.map(withoutPlaces) };
  }
  return { kind: "pattern", pattern: entry.pattern, times: entry.times, borders };
}

function failed(issue: AddressIssue): { readonly ok: false; readonly issue: AddressIssue } {
  return { ok: false, issue };
}
