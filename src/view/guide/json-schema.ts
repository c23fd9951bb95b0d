/** The keys of each kind of file as a JSON Schema (draft 7), from the tables that check them, for editors that read one. Readers know more: what a schema refuses is wrong, what it takes may be. */
import type { Owner } from "../../issue/facts/shape-issue.ts";
import type { Form, ValueType } from "../../issue/facts/value-type.ts";
import { NOTEBOOK_KEYS } from "../../notebook/notebook-keys.ts";
import { GENERAL } from "../../recipe/book-file.ts";
import { BOOK_KEYS } from "../../recipe/book-keys.ts";
import { RECIPE_KEYS } from "../../recipe/recipe-keys.ts";
import { SETUP_KEYS } from "../../recipe/setup-keys.ts";
import { STRIP_KEYS } from "../../recipe/strip-keys.ts";
import { WORDS_KEYS } from "../../recipe/words-keys.ts";
import type { Grammar, Keys } from "../../source/schema/keys.ts";
import { LONGEST_SLUG, SLUG } from "../../source/slug.ts";
import { neededKeys } from "./reference-needed.ts";

type Json = string | number | boolean | null | readonly Json[] | Schema;
interface Schema {
  readonly [key: string]: Json;
}

/** Which group a file begins with, and what its schema is called. */
const FILES: Readonly<Record<string, Owner>> = {
  pattern: "recipe",
  notebook: "notebook",
  strip: "strip",
  setup: "setup",
  book: "book",
  words: "words",
};

const GRAMMAR: Grammar = {
  ...NOTEBOOK_KEYS,
  ...RECIPE_KEYS,
  ...STRIP_KEYS,
  ...SETUP_KEYS,
  ...BOOK_KEYS,
  ...WORDS_KEYS,
};

/** One file for each kind, by its path in the book. */
export function schemaFiles(): readonly { readonly path: string; readonly text: string }[] {
  return Object.entries(FILES).map(([name, owner]) => ({
    path: `schema/${name}.schema.json`,
    text: `${JSON.stringify(schemaOf(owner), null, 1)}\n`,
  }));
}

/** The schema of a group, with those of all groups in it. */
function schemaOf(owner: Owner): Schema {
  const definitions: Record<string, Schema> = {};
  const define = (name: Owner) => {
    if (name in definitions) return;
    const group = groupSchema(name);
    definitions[name] = group;
    for (const [, inner = ""] of JSON.stringify(group).matchAll(/"#\/definitions\/([^"]+)"/g)) {
      if (isOwner(inner)) define(inner);
    }
  };
  define(owner);
  const { [owner]: root = {}, ...others } = definitions;
  return { ...root, ...(Object.keys(others).length > 0 ? { definitions: others } : {}) };
}

function isOwner(name: string): name is Owner {
  return Object.hasOwn(GRAMMAR, name);
}

function groupSchema(owner: Owner): Schema {
  // A track is an area as well.
  const keys: Keys = { ...(owner === "track" ? GRAMMAR.area : {}), ...GRAMMAR[owner] };
  const { all, oneOf } = neededKeys(owner);
  return {
    type: "object",
    properties: Object.fromEntries(
      Object.entries(keys).map(([key, { expected, meaning }]) => [
        key,
        { description: meaning, ...valueSchema(expected) },
      ]),
    ),
    additionalProperties: false,
    ...(all.size > 0 ? { required: [...all] } : {}),
    ...(oneOf.length > 0 ? { anyOf: oneOf.map((key) => ({ required: [key] })) } : {}),
  };
}

function valueSchema(expected: ValueType): Schema {
  switch (expected.kind) {
    case "text":
      return { ...TEXT, maxLength: expected.longest };
    case "whole":
      return { type: "integer", minimum: expected.min, maximum: expected.max };
    case "millimetres":
      return { type: "number", minimum: expected.min, maximum: expected.max };
    case "share":
      return { type: "number", exclusiveMinimum: 0, maximum: expected.max };
    case "choice":
      return { enum: expected.allowed };
    case "form":
      return FORMS[expected.form](limitsOf(expected));
  }
}

interface Limits {
  readonly range: Schema;
  readonly names: readonly string[];
  readonly max: number;
}

function limitsOf({ min, max, names = [] }: Extract<ValueType, { kind: "form" }>): Limits {
  const range = {
    ...(min === undefined ? {} : { minimum: min }),
    ...(max === undefined ? {} : { maximum: max }),
  };
  return { range, names, max: max ?? Number.MAX_SAFE_INTEGER };
}

/** Where text is wanted, a number and a word like `true` are text, too. */
const TEXT = { type: ["string", "number", "boolean"] } as const;
/** Names of files may be numbers, `true` and `null`, which no pattern is asked of. */
const NAME = {
  type: ["string", "number", "boolean", "null"],
  pattern: SLUG.source,
  maxLength: LONGEST_SLUG,
} as const;
const CHOSEN: Schema = { anyOf: [{ const: "all" }, { type: "array", items: NAME }] };
const ref = (owner: Owner) => ({ $ref: `#/definitions/${owner}` });
const either = (...anyOf: readonly Schema[]): Schema => ({ anyOf });
const listOf = (items: Schema, maxItems?: number): Schema => ({
  type: "array",
  items,
  ...(maxItems === undefined ? {} : { maxItems }),
});
const pair = (item: Schema): Schema => ({ ...listOf(item, 2), minItems: 2 });
const keyed = (keys: readonly string[], value: Schema): Schema => ({
  type: "object",
  properties: Object.fromEntries(keys.map((key) => [key, value])),
  additionalProperties: false,
});
const axes = (value: Schema) => either(value, keyed(["across", "down"], value));
const whole = ({ range }: Limits): Schema => ({ type: "integer", ...range });
const number = ({ range }: Limits): Schema => ({ type: "number", ...range });
const wordOr = ({ names }: Limits, other: Schema) => either({ enum: names }, other);

const FORMS: Readonly<Record<Form, (limits: Limits) => Schema>> = {
  area: () => ref("area"),
  spread: () => ref("spread"),
  attempt: () => ref("attempt"),
  attempts: ({ max }) => listOf(ref("attempt"), max),
  split: (limits) => either(whole(limits), ref("split")),
  tracks: () => listOf(ref("track")),
  track: () => ref("track"),
  gap: (limits) => either(whole(limits), ref("gap")),
  margin: (limits) => either(whole(limits), ref("margin")),
  leftover: () => TEXT,
  labels: () => listOf(TEXT),
  tags: ({ max }) => listOf(TEXT, max),
  paper: (limits) => wordOr(limits, pair(number(limits))),
  pitch: (limits) => axes(number(limits)),
  dots: (limits) => pair(whole(limits)),
  "first-dot": (limits) => pair(number(limits)),
  count: ({ names }) => axes({ enum: names }),
  "strip-entries": ({ max }) => listOf(either(NAME, ref("strip-entry")), max),
  "strip-entry": () => either(NAME, ref("strip-entry")),
  "division-margin": (limits) =>
    either(whole(limits), keyed(["left", "right", "top", "bottom"], whole(limits))),
  day: () => ({ type: "string", pattern: "^\\d{4}-\\d{2}-\\d{2}$" }),
  days: () => ({ type: ["string", "integer"] }),
  slug: () => NAME,
  "chosen-notebooks": () => CHOSEN,
  "chosen-patterns": () => CHOSEN,
  "chosen-strips": () => CHOSEN,
  "chosen-setups": () => CHOSEN,
  pack: () => either({ const: GENERAL }, NAME),
  packs: ({ max }) => listOf(either({ const: GENERAL }, NAME), max),
  "setup-entries": ({ max }) => listOf(either(NAME, ref("setup-entry")), max),
  "setup-entry": () => either(NAME, ref("setup-entry")),
  address: () => ({ type: "string" }),
  printer: (limits) => keyed(["x", "y"], number(limits)),
  calendar: () => ref("calendar"),
  region: () => TEXT,
  language: () => TEXT,
  "utc-offset": () => TEXT,
  repeat: (limits) => wordOr(limits, whole(limits)),
  "unit-count": (limits) => wordOr(limits, whole(limits)),
  "word-groups": ({ max }) => listOf({ ...listOf(TEXT), minItems: 2 }, max),
  "unit-number": () => ({ type: "integer", not: { const: 0 } }),
};
