/** Very many keys that nobody knows: each is told, and hardly any is compared letter by letter. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Reading, TextFile } from "../../src/issue/facts/reading.ts";
import { NOTEBOOK_KEYS } from "../../src/notebook/notebook-keys.ts";
import { readNotebook } from "../../src/notebook/read-notebook.ts";
import { readRecipe } from "../../src/recipe/read/read-recipe.ts";
import { RECIPE_KEYS } from "../../src/recipe/recipe-keys.ts";
import { leastEdits, letterEdits, mostEdits } from "../../src/source/nearest-word.ts";

const KEYS = Array.from({ length: 5_000 }, (_, index) => `k${index}`);

const FILES: readonly (readonly [
  name: string,
  keys: string,
  read: (file: TextFile) => Reading<unknown>,
  allowed: readonly string[],
])[] = [
  [
    "a recipe",
    "title: A\npurpose: page\npage: {rows: 2}",
    readRecipe,
    Object.keys(RECIPE_KEYS.recipe),
  ],
  [
    "a notebook",
    "title: A\npaper: A5\npitch: 5\ndots: [26, 38]",
    readNotebook,
    Object.keys(NOTEBOOK_KEYS.notebook),
  ],
];

describe.each(FILES)("%s with 5,000 unknown keys", (_, keys, read, allowed) => {
  it("is told every one", () => {
    const text = `---\n${keys}\n${KEYS.map((key) => `${key}: 1`).join("\n")}\n---\n`;
    const reading = read({ path: "a.md", text });
    expect(reading.ok ? 0 : reading.issues.length).toBe(KEYS.length);
  });

  it("compares fewer than one in a hundred with a known key", () => {
    const compared = KEYS.flatMap((key) =>
      allowed.filter((word) => leastEdits(key, word) <= mostEdits(key, word)),
    );
    expect(compared.length).toBeLessThan((KEYS.length * allowed.length) / 100);
  });
});

describe("the quick look", () => {
  const word = fc.array(fc.constantFrom("a", "b", "c", "d"), { maxLength: 8 });

  it("never says more edits than there are", () => {
    fc.assert(
      fc.property(word, word, (a, b) => {
        const [one, other] = [a.join(""), b.join("")];
        expect(leastEdits(one, other)).toBeLessThanOrEqual(letterEdits(one, other));
      }),
      { seed: 1965, numRuns: 2000 },
    );
  });
});
