/** Front matter made from the tables of keys: what each key takes, and in wild files whatever it does not. */
import { NOTEBOOK_KEYS } from "../../src/notebook/notebook-keys.ts";
import { BOOK_KEYS } from "../../src/recipe/book-keys.ts";
import { RECIPE_KEYS } from "../../src/recipe/recipe-keys.ts";
import { SETUP_KEYS } from "../../src/recipe/setup-keys.ts";
import { STRIP_KEYS } from "../../src/recipe/strip-keys.ts";
import type { Keys } from "../../src/source/schema/keys.ts";
import type { Choices } from "./choices.ts";
import { type KeyContext, writtenValue } from "./written-value.ts";
import type { Written } from "./written-yaml.ts";

/** Groups of keys; of an alternative all needed keys are there, of the others any. */
type Alternative = readonly [needed: readonly string[], others: readonly string[]];

const KEYS: Readonly<Record<string, Keys>> = {
  ...NOTEBOOK_KEYS,
  ...RECIPE_KEYS,
  ...STRIP_KEYS,
  ...SETUP_KEYS,
  ...BOOK_KEYS,
  track: { ...RECIPE_KEYS.track, ...RECIPE_KEYS.area },
};

/** The plainest first: that is what deep nesting ends with. */
const ALTERNATIVES: Readonly<Record<string, readonly [Alternative, ...Alternative[]]>> = {
  recipe: [
    [
      ["title", "purpose", "page"],
      ["tags", "otherwise", "date"],
    ],
    [
      ["title", "purpose", "spread"],
      ["tags", "otherwise"],
    ],
    [
      ["title", "purpose", "dates", "page"],
      ["outside", "otherwise"],
    ],
  ],
  attempt: [
    [["page"], []],
    [["spread"], []],
  ],
  spread: [[["left", "right"], []]],
  area: [
    [[], ["label", "margin", "fill", "every"]],
    [["columns"], ["label", "margin"]],
    [["rows"], ["label", "margin"]],
  ],
  track: [
    [[], ["label", "fill"]],
    [["steps"], ["label", "fill", "margin"]],
    [["columns"], ["share", "min", "label"]],
    [["rows"], ["share", "max", "repeat"]],
    [["same"], ["label", "share", "min", "max"]],
    [["repeat"], ["label", "share", "from", "to", "least"]],
  ],
  split: [
    [["count"], ["gap"]],
    [["tracks"], ["gap", "leftover"]],
    [
      ["count", "labels"],
      ["gap", "leftover"],
    ],
    [
      ["count", "each"],
      ["gap", "leftover", "from", "to", "least"],
    ],
  ],
  gap: [[["max"], ["min"]]],
  margin: [[[], ["top", "bottom", "left", "right", "inner", "outer"]]],
  notebook: [
    [
      ["title", "paper", "pitch", "dots"],
      ["firstDot", "count", "ruling", "binding", "middle"],
    ],
  ],
  strip: [
    [
      ["title", "across"],
      ["down", "dates", "lanes", "make", "width"],
    ],
  ],
  "strip-entry": [
    [["pattern"], ["uses"]],
    [
      ["title", "split"],
      ["margin", "uses"],
    ],
  ],
  setup: [
    [
      ["title", "dates", "pages"],
      ["first", "fill", "lanes", "make", "width"],
    ],
  ],
  "setup-entry": [
    [["pattern"], ["times", "borders"]],
    [["each", "pages"], ["borders"]],
  ],
  book: [[["title"], Object.keys(BOOK_KEYS.book)]],
  calendar: [[[], Object.keys(BOOK_KEYS.calendar)]],
};

/** Every key there is. */
export const WORDS: readonly string[] = [
  ...new Set(Object.values(KEYS).flatMap((keys) => Object.keys(keys))),
];

/** The keys of a group with their values. */
export function keysOf(owner: string, choices: Choices, context: KeyContext): Written {
  const { one, isIn100, below } = choices;
  const { wild } = context;
  const [needed, others] = one(ALTERNATIVES[owner] ?? [[[], []]]);
  const chosen = [
    ...needed.filter(() => !isIn100(wild)),
    ...others.filter(() => isIn100(25)),
    ...(isIn100(wild) ? [WORDS[below(WORDS.length)] ?? "rows"] : []),
    ...(isIn100(wild) ? needed.slice(0, 1) : []),
  ];
  const entries = chosen.map((key) => {
    const expected = KEYS[owner]?.[key]?.expected;
    const value = writtenValue(expected, choices, { ...context, keysOf });
    return [isIn100(wild) ? `${key}${one(["s", "", " ", "\u200b"])}` : key, value] as const;
  });
  return { map: entries };
}
