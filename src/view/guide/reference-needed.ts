/** Which keys a group cannot do without, asked of the readers themselves: they are given next to nothing and complain. */
import type { Reading, TextFile } from "../../issue/facts/reading.ts";
import type { Owner } from "../../issue/facts/shape-issue.ts";
import { readNotebook } from "../../notebook/read-notebook.ts";
import { readBook } from "../../recipe/read/read-book.ts";
import { readRecipe } from "../../recipe/read/read-recipe.ts";
import { readSetup } from "../../recipe/read/read-setup.ts";
import { readStripRecipe } from "../../recipe/read/read-strip-recipe.ts";
import { readWords } from "../../recipe/read/read-words.ts";

/** Keys that must be there, and sets of which one must. */
export interface NeededKeys {
  readonly all: ReadonlySet<string>;
  readonly oneOf: readonly string[];
}

type Read = (file: TextFile) => Reading<unknown>;

/** Every group is there, and empty: the second pattern has a page, and in it all that a page can hold. */
const PROBES: readonly (readonly [Read, string])[] = [
  [readRecipe, "---\n---\n"],
  [
    readRecipe,
    "---\npage: {columns: {gap: {}, each: {}, tracks: [{}]}, margin: {}}\nspread: {}\notherwise: [{}]\n---\n",
  ],
  [readRecipe, "---\npage: {rows: {}}\n---\n"],
  [readNotebook, "---\n---\n"],
  [readStripRecipe, "---\n---\n"],
  [readStripRecipe, "---\nacross: [{}]\n---\n"],
  [readSetup, "---\npages: [{}]\n---\n"],
  [readSetup, "---\n---\n"],
  [readBook, "{}\n"],
  [readWords, "{}\n"],
];

/** What a group cannot do without. */
export function neededKeys(owner: Owner): NeededKeys {
  const issues = PROBES.flatMap(([read, text]) => {
    const reading = read({ path: "probe.md", text });
    return reading.ok ? [] : reading.issues;
  });
  const all = new Set<string>();
  let oneOf: readonly string[] = [];
  for (const issue of issues) {
    if (issue.about !== "shape") continue;
    if (issue.kind === "missing-key" && issue.owner === owner) all.add(issue.key);
    if (issue.kind === "needs-one" && issue.owner === owner) oneOf = issue.keys;
  }
  return { all, oneOf };
}
