/** A strip behind the # of an address, what is usual left out. */
import type { AddressIssue } from "../../issue/facts/address-issue.ts";
import type { Issue } from "../../issue/facts/issue.ts";
import { AXES, type Axis } from "../../measure/axis.ts";
import { readStripEntries as readEntryNodes } from "../../recipe/read/read-strip-entries.ts";
import { STRIP_BOUNDS } from "../../recipe/strip-bounds.ts";
import { entrySource } from "../../recipe/strip-entry-source.ts";
import type { StripEntry } from "../../recipe/strip-recipe.ts";
import { isSlug } from "../../source/slug.ts";
import type { UnnamedNotebook } from "../fields/read-notebook-fields.ts";
import {
  readStripFields,
  type StripChoice,
  type StripFields,
  stripFieldsOf,
  USUAL_STRIP_FIELDS,
  withFreeTitle,
} from "../fields/strip-fields.ts";
import { dropFrom } from "../strip/edit-strip.ts";
import { type PackedLayout, writeLayouts } from "./carried-layouts.ts";
import {
  type AddressEntries,
  type AddressReading,
  LONGEST_ADDRESS,
  readAddress,
  writeAddress,
} from "./hash-params.ts";
import { NOTEBOOK_ADDRESS_KEYS, notebookEntries, readNotebookEntries } from "./notebook-address.ts";
import {
  KEYS_BESIDE_STRIP,
  patternIn,
  readList,
  STRIP_ADDRESS_KEYS,
  writeList,
} from "./strip-list.ts";
import { treeOf } from "./value-tree.ts";

/** Which field stands behind each key. */
const FIELD_OF_KEY = {
  dates: "dates",
  lanes: "lanes",
  make: "make",
  width: "width",
  strip: "title",
  stripfile: "slug",
} as const satisfies Readonly<Record<string, keyof StripFields>>;

const FIELD_KEYS = ["dates", "lanes", "make", "width", "strip", "stripfile"] as const;

/** What the strip page shows. */
export interface AskedStrip {
  readonly notebook: UnnamedNotebook;
  readonly strip: StripChoice;
}

/** What an address is made of; of the layouts only those go along that the strip names. */
export type WrittenStrip = Partial<AskedStrip> & { readonly own?: readonly PackedLayout[] };

/** The address's part from # on, or what it says of one part alone. Where it would be too long, the layouts stay at home. */
export function writeStripAddress({ notebook, strip, own = [] }: WrittenStrip): string {
  const named = new Set(strip && AXES.flatMap((axis) => strip[axis].map(({ slug }) => slug)));
  const carried = own.filter(({ slug }) => named.has(slug));
  const write = (layouts: readonly PackedLayout[]) =>
    writeAddress([
      ...(notebook ? notebookEntries(notebook) : []),
      ...(strip ? stripEntries(strip) : []),
      ["own", writeLayouts(layouts)],
    ]);
  const whole = write(carried);
  return whole.length <= LONGEST_ADDRESS ? whole : write([]);
}

const KEYS = [...NOTEBOOK_ADDRESS_KEYS, ...KEYS_BESIDE_STRIP, ...STRIP_ADDRESS_KEYS];

/** What an address says. */
export type SaidStrip = Partial<AskedStrip> & {
  /** Layouts that it names and nobody here has: the strip is without them. */
  readonly missing?: readonly string[];
};

/** What the address says; what it says nothing of is left out. `patterns` are all that a strip can carry here. */
export function readStripAddress(
  hash: string,
  patterns: ReadonlySet<string>,
): AddressReading<SaidStrip> {
  const address = readAddress(hash, KEYS);
  if (!address.ok) return address;
  const notebook = readNotebookEntries(address.value);
  if (!notebook.ok) return notebook;
  const missing = missingIn(address.value, patterns);
  const strip = readStripEntries(address.value, new Set([...patterns, ...missing]));
  if (!strip.ok) return strip;
  return {
    ok: true,
    value: {
      ...(notebook.value && { notebook: notebook.value }),
      ...(strip.value && { strip: missing.reduce(withoutLayout, strip.value) }),
      ...(missing.length > 0 && { missing }),
    },
  };
}

function withoutLayout(strip: StripChoice, slug: string): StripChoice {
  return AXES.reduce((rest, axis) => dropFrom(rest, axis, slug), strip);
}

/** Names that could be a layout's; anything else is no address that was written here. */
function missingIn(
  values: ReadonlyMap<string, string>,
  patterns: ReadonlySet<string>,
): readonly string[] {
  const names = AXES.flatMap((axis) => readList(values.get(axis) ?? "") ?? []).flatMap(
    (entry) => patternIn(entry) ?? [],
  );
  return [...new Set(names)].filter((name) => isSlug(name) && !patterns.has(name));
}

/** The entries of a strip; none for one that carries nothing. */
function stripEntries(choice: StripChoice): AddressEntries {
  if (choice.across.length + choice.down.length === 0) return [];
  const fields = stripFieldsOf(choice);
  return [
    ...AXES.map(
      (axis) => [axis, writeList(choice[axis].map((entry) => entrySource(entry, axis)))] as const,
    ),
    ...FIELD_KEYS.map((key) => {
      const field = FIELD_OF_KEY[key];
      return [key, fields[field] === USUAL_STRIP_FIELDS[field] ? "" : fields[field]] as const;
    }),
  ];
}

/** The strip of an address's values; nothing where they name nothing for it. A layout that is not there is a problem. */
export function readStripEntries(
  values: ReadonlyMap<string, string>,
  patterns: ReadonlySet<string>,
): AddressReading<StripChoice | undefined> {
  if (!STRIP_ADDRESS_KEYS.some((key) => values.has(key))) return { ok: true, value: undefined };
  if (!values.has("across") && !values.has("down"))
    return failed({ kind: "missing-key", key: "across" });
  const across = readSide(values.get("across") ?? "", "across", patterns);
  if (!across.ok) return across;
  const down = readSide(values.get("down") ?? "", "down", patterns);
  if (!down.ok) return down;
  const given = FIELD_KEYS.flatMap((key) => {
    const word = values.get(key) ?? (key === "stripfile" ? values.get("sfile") : undefined);
    // Beside a pattern they are its days, from the time when the fit page had the strip.
    const isOfPattern = key === "dates" && values.has("pattern");
    return word === undefined || isOfPattern ? [] : [[FIELD_OF_KEY[key], word] as const];
  });
  const lists = { across: across.value, down: down.value };
  const reading = readStripFields({ ...USUAL_STRIP_FIELDS, ...Object.fromEntries(given) }, lists);
  if (reading.ok) return reading;
  const [field] = reading.issues;
  const key = FIELD_KEYS.find((each) => FIELD_OF_KEY[each] === field?.field) ?? "strip";
  return failed(field ? { kind: "bad-value", key, field } : { kind: "missing-key", key });
}

/** Read as the build reads a strip's file. A division that is called as a pattern is gets another name. */
function readSide(
  text: string,
  axis: Axis,
  patterns: ReadonlySet<string>,
): AddressReading<readonly StripEntry[]> {
  const written = readList(text);
  if (!written) return failed({ kind: "spoilt-text", key: axis });
  if (written.length > STRIP_BOUNDS.patterns)
    return failed({ kind: "too-many-patterns", key: axis, limit: STRIP_BOUNDS.patterns });
  const names = written.flatMap((entry) => patternIn(entry) ?? []);
  const wrong = names.find((name, index) => !patterns.has(name) || names.indexOf(name) !== index);
  if (wrong !== undefined) return failed({ kind: "unknown-pattern", key: axis, slug: wrong });
  const issues: Issue[] = [];
  const node = treeOf(written);
  const source = node && { key: axis, keyAt: node.at, value: node };
  const placed = readEntryNodes(source, axis, (issue) => issues.push(issue));
  if (!node || issues.length > 0) return failed({ kind: "spoilt-text", key: axis });
  const entries = placed.map(({ entry }) => withFreeTitle(entry, patterns));
  const slugs = entries.map(({ slug }) => slug);
  return { ok: true, value: entries.filter(({ slug }, index) => slugs.indexOf(slug) === index) };
}

function failed(issue: AddressIssue): { readonly ok: false; readonly issue: AddressIssue } {
  return { ok: false, issue };
}
