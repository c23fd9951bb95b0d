/** A large book is written in parts: each page once, the lists once, and the same bytes as at once. */
import { describe, expect, it } from "vitest";
import { emptyBook } from "../../src/build/pages/book.ts";
import { openPageParts } from "../../src/build/pages/page-parts.ts";

/** So many pages of patterns, and two of strips. */
function bookOf(count: number) {
  const pairs = Array.from({ length: count }, (_, index) => ({
    pattern: `p${index}`,
    notebook: "plain",
  }));
  const strips = ["one", "two"].map((strip) => ({ strip, notebook: "plain" }));
  const book = emptyBook();
  return { ...book, all: { ...book.all, pairs, strips, notebooks: ["plain"] } };
}

/** The parts as they are written: how many pages of each kind, and whether the guide and the lists are among them. */
function partsOf(count: number, most: number) {
  const [book, parts] = [bookOf(count), openPageParts(most)];
  const all = [];
  do {
    all.push(parts.stale(book));
    parts.settle();
  } while (parts.hasMore());
  return { book, all };
}

describe("the parts of a book", () => {
  it.each([
    [0, 4, [0]],
    [3, 4, [3]],
    [4, 4, [4]],
    [5, 4, [4, 1]],
    [9, 3, [3, 3, 3]],
  ])("of %i pages, %i at a time", (count, most, sizes) => {
    const { book, all } = partsOf(count, most);
    expect(all.map(({ pairs }) => pairs.length)).toEqual(sizes);
    expect(all.flatMap(({ pairs }) => pairs)).toEqual(book.all.pairs);
    const [first, ...others] = all;
    expect(first).toMatchObject({ strips: book.all.strips, hasGuide: true, hasLists: true });
    for (const part of others)
      expect(part).toMatchObject({ strips: [], notebooks: [], hasGuide: false, hasLists: false });
  });

  it("are tried again where one could not be written", () => {
    const [book, parts] = [bookOf(5), openPageParts(4)];
    expect(parts.stale(book)).toEqual(parts.stale(book));
    expect(parts.stale(book).pairs).toHaveLength(4);
  });
});
