/** A strip behind the # of an address, what is usual left out. */
import { STRIP_BOUNDS } from "../../recipe/strip-bounds.ts";
import {
  readStripFields,
  type StripChoice,
  type StripFields,
  stripFieldsOf,
  USUAL_STRIP_FIELDS,
} from "../fields/strip-fields.ts";
import type { AddressEntries, AddressReading } from "./hash-params.ts";

/** Which field stands behind each key. */
const FIELD_OF_KEY = {
  lanes: "lanes",
  make: "make",
  width: "width",
  strip: "title",
  sfile: "slug",
} as const satisfies Readonly<Record<string, keyof StripFields>>;

const FIELD_KEYS = ["lanes", "make", "width", "strip", "sfile"] as const;

export const STRIP_ADDRESS_KEYS = ["across", "down", ...FIELD_KEYS] as const;

/** The entries of a strip; none for one that carries nothing. */
export function stripEntries(choice: StripChoice): AddressEntries {
  if (choice.across.length + choice.down.length === 0) return [];
  const fields = stripFieldsOf(choice);
  return [
    ["across", choice.across.join(",")],
    ["down", choice.down.join(",")],
    ...FIELD_KEYS.map((key) => {
      const field = FIELD_OF_KEY[key];
      return [key, fields[field] === USUAL_STRIP_FIELDS[field] ? "" : fields[field]] as const;
    }),
  ];
}

/** The strip of an address's values; nothing where they name no pattern for it. */
export function readStripEntries(
  values: ReadonlyMap<string, string>,
  patterns: ReadonlySet<string>,
): AddressReading<StripChoice | undefined> {
  const named = STRIP_ADDRESS_KEYS.filter((key) => values.has(key));
  if (named.length === 0) return { ok: true, value: undefined };
  if (!values.has("across") && !values.has("down"))
    return { ok: false, issue: { kind: "missing-key", key: "across" } };
  const lists = { across: slugsOf(values.get("across")), down: slugsOf(values.get("down")) };
  for (const key of ["across", "down"] as const) {
    const wrong = wrongSlug(lists[key], patterns);
    if (wrong !== undefined)
      return { ok: false, issue: { kind: "unknown-pattern", key, slug: wrong } };
    if (lists[key].length > STRIP_BOUNDS.patterns)
      return {
        ok: false,
        issue: { kind: "too-many-patterns", key, limit: STRIP_BOUNDS.patterns },
      };
  }
  const given = FIELD_KEYS.flatMap((key) => {
    const word = values.get(key);
    return word === undefined ? [] : [[FIELD_OF_KEY[key], word] as const];
  });
  const reading = readStripFields({ ...USUAL_STRIP_FIELDS, ...Object.fromEntries(given) }, lists);
  if (reading.ok) return reading;
  const [field] = reading.issues;
  const key = FIELD_KEYS.find((each) => FIELD_OF_KEY[each] === field?.field) ?? "strip";
  return field
    ? { ok: false, issue: { kind: "bad-value", key, field } }
    : { ok: false, issue: { kind: "missing-key", key } };
}

function slugsOf(word: string | undefined): readonly string[] {
  return word ? word.split(",") : [];
}

/** The first slug that is no pattern of the book, or that is named twice. */
function wrongSlug(slugs: readonly string[], patterns: ReadonlySet<string>): string | undefined {
  return slugs.find((slug, index) => !patterns.has(slug) || slugs.indexOf(slug) !== index);
}
