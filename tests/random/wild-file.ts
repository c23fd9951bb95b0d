/** Files as people write them, rightly and wrongly: of the demo, of what the program writes, and made from the tables of keys; most with slips. */
import fc from "fast-check";
import { arbitraryDated } from "../oracle/arbitrary-dated.ts";
import { fileOf } from "../oracle/written-pattern.ts";
import { type Choices, chosen, chosenFrom } from "./choices.ts";
import { edited } from "./edited-text.ts";
import { keysOf, WORDS } from "./written-keys.ts";
import { yamlOf } from "./written-yaml.ts";

export interface FileSources {
  /** The group of keys that such a file has. */
  readonly owner: "recipe" | "notebook" | "strip" | "setup" | "book";
  /** Files that are valid. */
  readonly texts: fc.Arbitrary<string>;
  /** The patterns that may be named. */
  readonly slugs: readonly [string, ...string[]];
}

/** As many as there are without a slip as there are with some; front matter of every size is among them. */
export function wildFile({ owner, texts, slugs }: FileSources): fc.Arbitrary<string> {
  const made = chosen((choices) => {
    const wild = choices.one([0, 0, 3, 15]);
    const yaml = yamlOf(keysOf(owner, choices, { wild, slugs, depth: 0 }), choices);
    const text = owner === "book" ? `${yaml}\n` : `---\n${yaml}\n---\n\nA text.\n`;
    return choices.isIn100(30) ? edited(text, { choices, words: WORDS }) : text;
  });
  const slips = chosenFrom(texts, (text, choices) => edited(text, { choices, words: WORDS }));
  return fc.oneof(
    { weight: 20, arbitrary: texts },
    { weight: 40, arbitrary: slips },
    { weight: 60, arbitrary: made },
    { weight: 2, arbitrary: large },
  );
}

/** Dated patterns as their authors write them. */
export function datedTexts(): fc.Arbitrary<string> {
  return arbitraryDated().map((pattern) => fileOf(pattern).text);
}

/** Whatever is large: deep, wide, long, or said over and over. */
const large = chosen((choices) => `---\n${bombOf(choices)}\n---\n`, 8);

function bombOf({ one, below }: Choices): string {
  const many = one([20, 100, 1_000, 6_000, 20_000]) + below(9);
  const rows = (inner: string) => `title: T\npurpose: page\npage: ${inner}`;
  return one([
    rows(`${"{rows: {count: 2, each: ".repeat(Math.min(many, 3_000))}{}${"}}".repeat(many)}`),
    rows(`{rows: {tracks: [${"{}, ".repeat(many)}{}]}}`),
    rows(`{label: "${"é".repeat(many)}"}`),
    rows(`{columns: {count: 200, each: {rows: {count: 200, each: {rows: ${1 + below(9)}}}}}}`),
    rows(`{rows: ${"[".repeat(Math.min(many, 3_000))}}`),
    rows(`{rows: {tracks: [${Array.from({ length: 30 }, (_, n) => `{same: n${n}}`)}]}}`),
    `%YAML 1.2\n---\n${rows("{}")}`,
    `${rows("{}")}\n<<: {tags: [a]}`,
    `a: &a [x, x]\n${"b: &b [*a, *a, *a, *a]\n".repeat(Math.min(many, 1_000))}`,
    "title: T\n".repeat(many),
    `tags: [${"a, ".repeat(many)}a]`,
    `${"x".repeat(many)}: 1`,
    `? ${"- ".repeat(Math.min(many, 2_000))}a`,
    `across: [${"seed-list, ".repeat(many)}]`,
    `title: T\ndates: 2027\npages: [${"{each: day, pages: [".repeat(Math.min(many, 500))}]`,
    `title: T\ndates: 2027/2036\npages: [{pattern: seed-list, times: 400}, seed-list]\nfirst: 9999`,
    "\t".repeat(many),
    `# ${"x".repeat(many)}`,
    `title: ${"\\".repeat(many)}`,
  ]);
}
