/** The reference of the guide: every key of every file with what it takes and means, from the tables that check them. */
import { OWNERS, type Owner } from "../../issue/facts/shape-issue.ts";
import type { Form, ValueType } from "../../issue/facts/value-type.ts";
import { sayList } from "../../issue/words/say-count.ts";
import { asOwner, ownerPlace } from "../../issue/words/say-owner.ts";
import { sayValueType } from "../../issue/words/say-value-type.ts";
import { NOTEBOOK_KEYS } from "../../notebook/notebook-keys.ts";
import { BOOK_KEYS } from "../../recipe/book-keys.ts";
import { RECIPE_KEYS } from "../../recipe/recipe-keys.ts";
import { SETUP_KEYS } from "../../recipe/setup-keys.ts";
import { STRIP_KEYS } from "../../recipe/strip-keys.ts";
import { WORDS_KEYS } from "../../recipe/words-keys.ts";
import type { Grammar, KeyEntry } from "../../source/schema/keys.ts";
import { neededKeys } from "./reference-needed.ts";

/** One kind of file. */
export interface ReferenceFile {
  readonly id: string;
  readonly title: string;
  readonly about: string;
  readonly groups: readonly ReferenceGroup[];
}

interface ReferenceGroup {
  readonly id: string;
  readonly title: string;
  /** Where its keys are written. */
  readonly place: string;
  /** Such as `count or tracks`; "" where no key stands for another. */
  readonly oneOf: string;
  /** Whose keys it has as well. */
  readonly also?: Owner;
  readonly keys: readonly ReferenceKey[];
}

interface ReferenceKey {
  readonly name: string;
  /** What follows `takes`. */
  readonly expected: string;
  /** Sentences. */
  readonly meaning: string;
  readonly isNeeded: boolean;
  /** The group that its value is made of, where it has one. */
  readonly group?: Owner;
}

const FILES: readonly (Omit<ReferenceFile, "groups"> & { readonly grammar: Grammar })[] = [
  {
    id: "patterns",
    title: "A pattern",
    about: "patterns/NAME.md, between two lines of dashes",
    grammar: RECIPE_KEYS,
  },
  {
    id: "notebooks",
    title: "A notebook",
    about: "notebooks/NAME.md, between two lines of dashes",
    grammar: NOTEBOOK_KEYS,
  },
  {
    id: "strips",
    title: "A strip",
    about: "strips/NAME.md, between two lines of dashes",
    grammar: STRIP_KEYS,
  },
  {
    id: "setups",
    title: "A set-up",
    about: "setups/NAME.md, between two lines of dashes",
    grammar: SETUP_KEYS,
  },
  { id: "book", title: "The book", about: "book.yaml, the whole file", grammar: BOOK_KEYS },
  {
    id: "words",
    title: "Words that mean the same",
    about: "words.yaml, the whole file",
    grammar: WORDS_KEYS,
  },
];

/** All files with all groups of keys, the outer groups first. */
export function reference(): readonly ReferenceFile[] {
  return FILES.map(({ grammar, ...file }) => ({
    ...file,
    groups: OWNERS.flatMap((owner) => {
      const keys = grammar[owner];
      return keys ? [groupOf(owner, keys)] : [];
    }),
  }));
}

function groupOf(owner: Owner, keys: Readonly<Record<string, KeyEntry>>): ReferenceGroup {
  const { all, oneOf } = neededKeys(owner);
  return {
    id: `of-${owner}`,
    title: asOwner(owner),
    place: ownerPlace(owner),
    oneOf: oneOf.length > 1 ? sayList(oneOf, "or") : "",
    ...(owner === "track" ? { also: "area" } : {}),
    keys: Object.entries(keys).map(([name, { expected, meaning }]) => ({
      name,
      expected: sayValueType(expected),
      meaning,
      isNeeded: all.has(name) || (oneOf.length === 1 && oneOf[0] === name),
      ...groupLink(expected),
    })),
  };
}

function groupLink(expected: ValueType): { readonly group?: Owner } {
  const group = expected.kind === "form" ? FORM_GROUPS[expected.form] : undefined;
  return group === undefined ? {} : { group };
}

/** Undefined for a form without keys of its own. */
export const FORM_GROUPS: Readonly<Record<Form, Owner | undefined>> = {
  area: "area",
  spread: "spread",
  attempts: "attempt",
  attempt: "attempt",
  split: "split",
  tracks: "track",
  track: "track",
  gap: "gap",
  margin: "margin",
  leftover: undefined,
  labels: undefined,
  tags: undefined,
  paper: undefined,
  pitch: undefined,
  dots: undefined,
  "first-dot": undefined,
  count: undefined,
  "strip-entries": "strip-entry",
  "strip-entry": "strip-entry",
  "division-margin": undefined,
  day: undefined,
  days: undefined,
  slug: undefined,
  "chosen-notebooks": undefined,
  "chosen-patterns": undefined,
  "chosen-strips": undefined,
  "chosen-setups": undefined,
  pack: undefined,
  packs: undefined,
  "setup-entries": "setup-entry",
  "setup-entry": "setup-entry",
  address: undefined,
  printer: undefined,
  calendar: "calendar",
  region: undefined,
  language: undefined,
  "utc-offset": undefined,
  repeat: undefined,
  "unit-count": undefined,
  "unit-number": undefined,
  "word-groups": undefined,
};
