/** A value that a key takes, by what its table says; in wild files now and then one that it does not take. */
import type { ValueType } from "../../src/issue/facts/value-type.ts";
import type { Choices } from "./choices.ts";
import type { Written } from "./written-yaml.ts";

export interface KeyContext {
  /** How many values of a hundred are wrong. */
  readonly wild: number;
  /** The patterns that may be named. */
  readonly slugs: readonly [string, ...string[]];
  readonly depth: number;
}

interface ValueContext extends KeyContext {
  readonly keysOf: (owner: string, choices: Choices, context: KeyContext) => Written;
}

/** Scalars as no key takes them, as YAML reads them otherwise than it looks, and of every size. */
const STRANGE = [
  ...[
    "",
    "~",
    "null",
    "true",
    "no",
    "0",
    "-1",
    "1e9",
    ".nan",
    "-.inf",
    "0x1F",
    "1_000",
    "2027-03-01",
  ],
  ...["99999999999999999999", "0.1234567", "3,5", "&a b", "*a", "!!set x", '"', "'", "| x", "> x"],
  ...[
    "[",
    "]",
    "{",
    "}",
    "{}",
    "[]",
    "[[[[[[[[[[[]]]]]]]]]]]",
    "{a: {b: {c: {d: {e: {}}}}}}",
    "a: b",
  ],
  ...[
    '"\\ud800"',
    '"\\u0000"',
    '"\\u202e"',
    '"\\x"',
    "👩‍🌾",
    "苗",
    "<script>",
    "__proto__",
    "#",
    "%",
    "@a",
  ],
  ...["{day", "{dya}", '"{moon}"', '"{{"', '"{week} {year}"', "../x", "con", "a".repeat(300)],
] as const;

const TEXTS = [
  ...[
    "Peas",
    "Beans",
    '"{day}"',
    '"{weekday} {day}"',
    '"{month} {year}"',
    '"{week}, {year}"',
    '""',
  ],
  ...[
    '"{moon}"',
    '"{last day}"',
    '"{{"',
    "To do",
    '"Größe"',
    "end",
    '"苗"',
    '"a, b"',
    '"10"',
    "Tuesday",
    "Seed list",
  ],
] as const;

const DAYS = [
  ...[
    "2027",
    "2027-03",
    "2027-W09",
    "2027-03-05",
    "2027-03/2027-05",
    "2027-03-05/2027-03-09",
    "0001-01",
  ],
  ...[
    "9999-12",
    "2028-02-29",
    "2027-02-30",
    "2027-W53",
    "2026-W53",
    "2027-05/2027-03",
    "P1M",
    "2027/..",
  ],
  ...["2027/2036", "2027/2040", "27-03", "2027-13", "March 2027", "0000-01-01", "9999-W52", "0001"],
] as const;

/** The value as it is written. */
export function writtenValue(
  expected: ValueType | undefined,
  choices: Choices,
  context: ValueContext,
): Written {
  const { one, below, isIn100 } = choices;
  if (!expected || isIn100(context.wild)) return strange(choices, context);
  switch (expected.kind) {
    case "text":
      return one(TEXTS);
    case "whole":
      return numberIn(choices, expected);
    case "millimetres":
      return `${expected.min + below(80) / 2}`;
    case "share":
      return one(["1", "2", "0.5", "3", "1.25", "10000"]);
    case "choice":
      return expected.allowed[below(expected.allowed.length)] ?? "";
    case "form":
      return formOf(expected, choices, context);
  }
}

function strange(choices: Choices, context: ValueContext): Written {
  const { one, isIn100 } = choices;
  if (isIn100(70)) return one(STRANGE);
  const owner = one(["area", "split", "track", "margin", "gap", "strip-entry", "setup-entry"]);
  const value = context.depth > 9 ? "" : context.keysOf(owner, choices, deeper(context));
  return isIn100(50) ? [value] : value;
}

function deeper(context: ValueContext): ValueContext {
  return { ...context, depth: context.depth + 1 };
}

/** Mostly such as fits on a page; now and then the most. */
function numberIn(
  { below, isIn100 }: Choices,
  { min = 0, max = 9, unit = "" }: { min?: number; max?: number; unit?: string },
): string {
  if (isIn100(2)) return `${max}`;
  const usual = unit === "dots" ? 12 + below(36) : min + below(Math.min(8, max - min + 1));
  return `${usual}`;
}

type Form = Extract<ValueType, { kind: "form" }>;

/** How many entries a list of each form has, at most. */
function listOf(make: () => Written, { below, isIn100 }: Choices, most: number): Written {
  const count = isIn100(2) ? most * 8 : 1 + below(most);
  return Array.from({ length: count }, make);
}

const FORMS: Readonly<
  Partial<Record<Form["form"], (choices: Choices, context: ValueContext, form: Form) => Written>>
> = {
  area: nested("area"),
  spread: nested("spread"),
  attempt: nested("attempt"),
  track: nested("track"),
  calendar: nested("calendar"),
  attempts: (choices, context) => listOf(() => nested("attempt")(choices, context), choices, 2),
  tracks: (choices, context) => listOf(() => nested("track")(choices, context), choices, 5),
  split: (choices, context) =>
    choices.isIn100(50) ? nested("split")(choices, context) : numberIn(choices, { min: 1 }),
  gap: (choices, context) =>
    choices.isIn100(30) ? nested("gap")(choices, context) : numberIn(choices, { max: 2 }),
  margin: (choices, context) =>
    choices.isIn100(50) ? nested("margin")(choices, context) : numberIn(choices, { max: 3 }),
  leftover: (choices, _, { names = [] }) =>
    choices.isIn100(20) ? choices.one(TEXTS) : (names[choices.below(names.length)] ?? "end"),
  labels: (choices) => listOf(() => choices.one(TEXTS), choices, 3),
  tags: (choices) => listOf(() => choices.one(["plan", "look back", "seeds"]), choices, 2),
  "unit-number": ({ below }) => `${below(12) - 4}`,
  "division-margin": (choices, { keysOf, ...context }) =>
    choices.isIn100(40) ? keysOf("margin", choices, context) : numberIn(choices, { max: 3 }),
  day: ({ one }) => one(DAYS),
  days: ({ one }) => one(DAYS),
  slug: (choices, context) => slugIn(choices, context),
  "strip-entries": (choices, context) =>
    listOf(() => entryOf("strip-entry", choices, context), choices, 4),
  "setup-entries": (choices, context) =>
    listOf(() => entryOf("setup-entry", choices, context), choices, 3),
  paper: ({ isIn100, one, below }, _, { names = [] }) =>
    isIn100(30) ? [`${60 + below(200)}`, `${80 + below(250)}.5`] : one(["A5", ...names]),
  pitch: ({ isIn100, one }) =>
    isIn100(20)
      ? {
          map: [
            ["across", one(["5", "4.5", "7"])],
            ["down", one(["5", "6.35", "8"])],
          ],
        }
      : one(["5", "4", "3.7", "5.08", "6", "6.35", "7", "0.5"]),
  dots: (choices) => [
    numberIn(choices, { unit: "dots", max: 400 }),
    numberIn(choices, { unit: "dots", max: 400 }),
  ],
  "first-dot": ({ below }) => [`${below(40) / 2}`, `${below(40) / 2}`],
  count: ({ isIn100, one, below }, _, { names = [] }) => {
    const name = () => names[below(names.length)] ?? "";
    return isIn100(30)
      ? {
          map: [
            ["across", name()],
            ["down", name()],
          ],
        }
      : one([name(), "dot-to-dot"]);
  },
  address: ({ one }) =>
    one([
      "https://example.org/",
      "http://a:b@example.org/x?y#z",
      "ftp://example.org",
      "example.org/a b",
    ]),
  region: ({ one }) => one(["GB", "001", "XX", "United Kingdom", "gb"]),
  language: ({ one }) => one(["en", "de", "pt-BR", "xx-YY", "deutsch", "ar"]),
  "utc-offset": ({ one }) => one(['"+01:00"', "UTC", '"+25:00"', "Z", '"-03:30"', "Europe/London"]),
};

function nested(owner: string) {
  return (choices: Choices, context: ValueContext): Written =>
    context.depth > 14 ? "" : context.keysOf(owner, choices, deeper(context));
}

function formOf(form: Form, choices: Choices, context: ValueContext): Written {
  const { below, isIn100, one } = choices;
  const make = FORMS[form.form];
  if (make) return make(choices, context, form);
  const { names = [] } = form;
  if (form.form === "repeat" || form.form === "unit-count") {
    return isIn100(30) ? (names[below(names.length)] ?? "days") : numberIn(choices, { min: 1 });
  }
  return one(["all", "[]", "[a5]", one(STRANGE)]);
}

function entryOf(owner: string, choices: Choices, context: ValueContext): Written {
  return choices.isIn100(40) ? nested(owner)(choices, context) : slugIn(choices, context);
}

function slugIn({ below, isIn100 }: Choices, { slugs, wild }: KeyContext): string {
  return isIn100(wild) ? "no-such-thing" : (slugs[below(slugs.length)] ?? slugs[0]);
}
