/** Which pages are written anew after an edit: never fewer than those that a whole build writes otherwise. */
import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import markdownIt from "markdown-it";
import { afterAll, describe, expect, it } from "vitest";
import { openCaches } from "../../src/build/artifacts/caches.ts";
import { loadContent } from "../../src/build/content/load-content.ts";
import type { Book } from "../../src/build/pages/book.ts";
import { makeBook } from "../../src/build/pages/make-book.ts";
import { openStalePages } from "../../src/build/pages/stale-pages.ts";
import { PROJECT } from "../setup/run-command.ts";
import { TINY } from "../setup/tiny-content.ts";
import { bytesIn } from "./files-in.ts";
import { scratchFolder, writeContent } from "./write-content.ts";

const THIRDS =
  "---\ntitle: Thirds\npurpose: list\npage: {columns: {count: 3, gap: 1}}\n---\nThree.\n";
const FILES: Readonly<Record<string, string>> = {
  ...TINY,
  "patterns/thirds.md": THIRDS,
  "strips/daily.md": "---\ntitle: Daily\nacross: [halves]\ndown: [halves]\n---\nBoth.\n",
};

async function bookOf(files: Readonly<Record<string, string>>): Promise<Book> {
  const reading = await loadContent(writeContent(files));
  if (!reading.ok) throw new Error("the content has a problem");
  return makeBook({
    content: reading.value,
    caches: openCaches(scratchFolder(), "serve"),
    version: "1",
    markdown: markdownIt(),
    highlight: (_, text) => text,
  });
}

/** What is ready is kept from build to build: that changes no byte, as is tested elsewhere. */
const CACHE = mkdtempSync(join(tmpdir(), "spanbook-stale-"));
afterAll(() => rmSync(CACHE, { recursive: true, force: true }));

/** The pages of patterns, as a whole build writes them. */
function pagesOf(files: Readonly<Record<string, string>>): ReadonlyMap<string, string> {
  const output = join(scratchFolder(), "book");
  const script = join(PROJECT, "tests/bench/build-once.mjs");
  execFileSync(process.execPath, [script, writeContent(files), output, CACHE]);
  const pages = [...bytesIn(output)].filter(([path]) => /^patterns\/.+\/.+\/index/.test(path));
  return new Map(pages);
}

const pathsOf = (pairs: Book["pairs"]) =>
  pairs.map(({ pattern, notebook }) => `patterns/${pattern}/${notebook}/index.html`).toSorted();

const edited = (path: string, from: string, to: string) => ({
  ...FILES,
  [path]: FILES[path]?.replace(from, to) ?? "",
});

describe("the pages that are due", () => {
  let before: ReadonlyMap<string, string> | undefined;

  it.each([
    ["a recipe's text", edited("patterns/wide.md", "Twenty.", "Twenty of them."), 2],
    ["a recipe's layout", edited("patterns/thirds.md", "count: 3", "count: 40"), 6],
    ["a recipe's title", edited("patterns/halves.md", "Halves", "Two halves"), 6],
    ["a strip's title", edited("strips/daily.md", "Daily", "Every day"), 2],
    ["a notebook's title", edited("notebooks/plain.md", "Plain", "Plainer"), 6],
    ["a notebook's grid", edited("notebooks/plain.md", "26, 38", "25, 37"), 6],
    ["the book's title", edited("book.yaml", "Tiny", "Small"), 6],
  ])("after an edit of %s are all that it changes", async (_, files, most) => {
    const pages = openStalePages();
    before ??= pagesOf(FILES);
    expect(pages.of(await bookOf(FILES), "")).toHaveLength(before.size);
    pages.settle();
    const due = pathsOf(pages.of(await bookOf(files), ""));
    const after = pagesOf(files);
    const changed = [...after].filter(([path, page]) => before?.get(path) !== page);
    expect(changed.length).toBeGreaterThan(0);
    expect(due).toEqual(expect.arrayContaining(changed.map(([path]) => path)));
    expect(due.length).toBeLessThanOrEqual(most);
  });

  it("are none when nothing changed, and all when what stands on every page did", async () => {
    const pages = openStalePages();
    const book = await bookOf(FILES);
    pages.of(book, "");
    expect(pages.of(book, "")).toHaveLength(6);
    pages.settle();
    expect(pages.of(book, "")).toEqual([]);
    expect(pages.of(book, "a problem")).toHaveLength(6);
  });
});
