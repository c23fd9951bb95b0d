/** The list of a set-up's pages: added to, changed, moved in and out of blocks. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { setupEntrySource } from "../../src/recipe/setup-entry-source.ts";
import type { SetupEntry } from "../../src/recipe/setup-recipe.ts";
import {
  addEntry,
  changeEntry,
  countEntries,
  dropEntry,
  entryAt,
  moveEntry,
  patternOnce,
  stepEntry,
  withoutEmptyBlocks,
} from "../../src/view/setup/edit-setup.ts";

/** `a [b c] d`: names, and blocks of them. */
function listOf(text: string): readonly SetupEntry[] {
  return [...text.matchAll(/\[([^\]]*)\]|(\w+)/g)].map(([, block, name]) =>
    block === undefined
      ? patternOnce(name ?? "")
      : { kind: "each", each: "week", borders: "both", pages: listOf(block) },
  );
}

function textOf(pages: readonly SetupEntry[]): string {
  return pages
    .map((entry) => (entry.kind === "each" ? `[${textOf(entry.pages)}]` : entry.pattern))
    .join(" ");
}

describe("an entry one line on", () => {
  it.each([
    ["a b", "0", 1, "b a", "1"],
    ["a b", "1", -1, "b a", "0"],
    ["a b", "1", 1, "a b", "1"],
    ["a b", "0", -1, "a b", "0"],
    ["a [b c] d", "0", 1, "[a b c] d", "0.0"],
    ["a [b c] d", "2", -1, "a [b c d]", "1.2"],
    ["a [b c] d", "1.0", -1, "a b [c] d", "1"],
    ["a [b c] d", "1.1", 1, "a [b] c d", "2"],
    ["a [b c] d", "1.0", 1, "a [c b] d", "1.1"],
    ["a [b c] d", "1", 1, "a d [b c]", "2"],
    ["a [b c] d", "1", -1, "[b c] a d", "0"],
    ["a [b]", "1.0", 1, "a [] b", "2"],
    ["[a] [b]", "0", 1, "[b] [a]", "1"],
    ["a [] b", "0", 1, "[a] b", "0.0"],
    ["a b", "7", 1, "a b", "7"],
  ] as const)("%s: %s by %i", (before, path, by, after, at) => {
    const moved = stepEntry(listOf(before), path, by);
    expect([textOf(moved.pages), moved.path]).toEqual([after, at]);
  });

  it("is itself there, and back again where it was", () => {
    const names = fc.array(fc.constantFrom("[a b]", "c", "[d]", "e"), {
      minLength: 1,
      maxLength: 5,
    });
    fc.assert(
      fc.property(names, fc.nat(20), fc.constantFrom(1, -1), (parts, pick, by) => {
        const pages = listOf(parts.join(" "));
        const paths = pages.flatMap((entry, index) => [
          `${index}`,
          ...(entry.kind === "each" ? entry.pages.map((_, inner) => `${index}.${inner}`) : []),
        ]);
        const path = paths[pick % paths.length] ?? "0";
        const there = stepEntry(pages, path, by);
        expect(entryAt(there.pages, there.path)).toEqual(entryAt(pages, path));
        expect(countEntries(there.pages)).toBe(countEntries(pages));
        if (there.path === path && there.pages === pages) return;
        const back = stepEntry(there.pages, there.path, by === 1 ? -1 : 1);
        expect([textOf(back.pages), back.path]).toEqual([textOf(pages), path]);
      }),
      { seed: 41_208, numRuns: 300 },
    );
  });
});

describe("the list", () => {
  it.each([
    ["a [b] c", "", "a [b] c new"],
    ["a [b] c", "1", "a [b new] c"],
    ["a [b] c", "0", "a [b] c"],
  ])("%s with another one into “%s” is %s", (before, into, after) => {
    expect(textOf(addEntry(listOf(before), patternOnce("new"), into))).toBe(after);
  });

  it.each([
    ["a [b c] d", "1.0", "a [c] d"],
    ["a [b c] d", "1", "a d"],
    ["a", "0", ""],
  ])("%s without %s is %s", (before, path, after) => {
    expect(textOf(dropEntry(listOf(before), path))).toBe(after);
  });

  it.each([
    ["a b c", "0", 2, "b c a", "2"],
    ["a b c", "2", -9, "c a b", "0"],
    ["a [b c]", "1.1", -1, "a [c b]", "1.0"],
  ])("%s, %s dragged by %i, is %s", (before, path, by, after, at) => {
    const moved = moveEntry(listOf(before), path, by);
    expect([textOf(moved.pages), moved.path]).toEqual([after, at]);
  });

  it("has one entry changed, in a block too", () => {
    const pages = changeEntry(listOf("a [b c]"), "1.1", (entry) =>
      entry.kind === "pattern" ? { ...entry, times: 3 } : entry,
    );
    expect(pages.map(setupEntrySource)).toEqual([
      "a",
      { each: "week", pages: ["b", { pattern: "c", times: 3 }] },
    ]);
  });

  it("takes no more than a file may hold, and none of its blocks is empty in one", () => {
    const full = Array.from({ length: 100 }, () => patternOnce("a"));
    expect(addEntry(full, patternOnce("b"))).toBe(full);
    expect(textOf(withoutEmptyBlocks(listOf("a [] [b]")))).toBe("a [b]");
  });
});
