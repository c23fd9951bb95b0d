/** Which pages a served book writes: those that somebody opens, and after an edit all that a whole build writes otherwise. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import markdownIt from "markdown-it";
import { afterAll, describe, expect, it } from "vitest";
import { openCaches } from "../../src/build/artifacts/caches.ts";
import { loadContent } from "../../src/build/content/load-content.ts";
import { filesIn } from "../../src/build/output/files-in.ts";
import type { Book, BookPages } from "../../src/build/pages/book.ts";
import { makeBook } from "../../src/build/pages/make-book.ts";
import { removeStrays } from "../../src/build/pages/remove-strays.ts";
import { openServedPages, type PagesToWrite } from "../../src/build/pages/served-pages.ts";
import { withReport } from "../../src/build/pages/template-filters.ts";
import { askProgram } from "../setup/ask-program.ts";
import { TINY } from "../setup/tiny-content.ts";
import { bytesIn } from "./files-in.ts";
import { scratchFolder, writeContent } from "./write-content.ts";

const THIRDS =
  "---\ntitle: Thirds\npurpose: list\npage: {columns: {count: 3, gap: 1}}\n---\nThree.\n";
const FILES: Readonly<Record<string, string>> = {
  ...TINY,
  "patterns/thirds.md": THIRDS,
  "strips/daily.md": "---\ntitle: Daily\nacross: [halves]\ndown: [halves]\n---\nBoth.\n",
  "setups/may.md":
    "---\ntitle: May\ndates: 2027-05\npages: [halves, {each: week, pages: [halves]}]\n---\nMay.\n",
};

const STRIP_OF_THIRDS = "---\ntitle: Daily\nacross: [thirds]\n---\n";
const MAY_OF_THIRDS = "---\ntitle: May\ndates: 2027-05\npages: [thirds]\n---\n";

const HALVES = { pattern: "halves", notebook: "plain" };
const NOTHING: PagesToWrite = {
  pairs: [],
  strips: [],
  setups: [],
  notebooks: [],
  hasGuide: false,
  hasLists: false,
};

async function bookOf(files: Readonly<Record<string, string>>): Promise<Book> {
  const reading = await loadContent(writeContent(files));
  if (!reading.ok) throw new Error("the content has a problem");
  return makeBook({
    content: reading.value,
    caches: openCaches(scratchFolder()),
    version: "1",
    markdown: markdownIt(),
    highlight: (_, text) => text,
  });
}

/** What is ready is kept from build to build: that changes no byte, as is tested elsewhere. */
const CACHE = mkdtempSync(join(tmpdir(), "spanbook-stale-"));
afterAll(() => rmSync(CACHE, { recursive: true, force: true }));

/** All pages, as a whole build writes them. */
async function pagesOf(
  files: Readonly<Record<string, string>>,
): Promise<ReadonlyMap<string, string>> {
  const output = join(scratchFolder(), "book");
  const words = ["build", `--content=${writeContent(files)}`, `--output=${output}`];
  expect(await askProgram(words, { cache: CACHE })).toMatchObject({ code: 0, stderr: "" });
  const pages = [...bytesIn(output)].filter(([path]) => path.endsWith(".html"));
  return new Map(pages);
}

const pathsOf = ({ pairs, strips, setups, notebooks }: BookPages) => [
  ...pairs.map(({ pattern, notebook }) => `patterns/${pattern}/${notebook}/index.html`),
  ...strips.map(({ strip, notebook }) => `strips/${strip}/${notebook}/index.html`),
  ...setups.map(({ setup, notebook }) => `setups/${setup}/${notebook}/index.html`),
  ...notebooks.map((slug) => `notebooks/${slug}/index.html`),
];

const edited = (path: string, from: string, to: string) => ({
  ...FILES,
  [path]: FILES[path]?.replace(from, to) ?? "",
});

/** The page of a pattern or a strip on a notebook, or of a notebook. */
const ONE_OF_MANY = /^(patterns|strips|setups)\/.+\/.+\/index|^notebooks\/.+\/index/;

/** Pages of which each was opened once, and written. */
function allOpened(book: Book) {
  const pages = openServedPages(() => undefined);
  for (const path of [...pathsOf(book.all), "index.html", "guide/book/index.html"]) {
    void pages.open(path, book);
  }
  const atFirst = pages.stale(book, "");
  pages.settle();
  return { pages, atFirst };
}

describe("the pages that are stale", () => {
  let before: ReadonlyMap<string, string> | undefined;

  it.each([
    ["a recipe's text", edited("patterns/wide.md", "Twenty.", "Twenty of them."), 2, false],
    ["a recipe's layout", edited("patterns/thirds.md", "count: 3", "count: 40"), 10, false],
    ["a recipe's title", edited("patterns/halves.md", "Halves", "Two halves"), 12, false],
    ["a strip's title", edited("strips/daily.md", "Daily", "Every day"), 6, false],
    ["a notebook's title", edited("notebooks/plain.md", "Plain", "Plainer"), 12, true],
    ["a notebook's grid", edited("notebooks/plain.md", "26, 38", "25, 37"), 12, true],
    ["the book's title", edited("book.yaml", "Tiny", "Small"), 12, true],
    ["a set-up's dates", edited("setups/may.md", "2027-05", "2027-06"), 2, false],
  ])("after an edit of %s are all that it changes", async (_, files, most, hasGuide) => {
    before ??= await pagesOf(FILES);
    const { pages, atFirst } = allOpened(await bookOf(FILES));
    expect(pathsOf(atFirst)).toHaveLength(12);
    const stale = pages.stale(await bookOf(files), "");
    const after = await pagesOf(files);
    const changed = [...after].flatMap(([path, page]) => (before?.get(path) === page ? [] : path));
    const one = changed.filter((path) => ONE_OF_MANY.test(path));
    const lists = changed.filter((path) => !ONE_OF_MANY.test(path) && !path.startsWith("guide/"));
    expect(changed.length).toBeGreaterThan(0);
    expect(pathsOf(stale)).toEqual(expect.arrayContaining(one));
    if (lists.length > 0) expect(stale.hasLists).toBe(true);
    expect(pathsOf(stale).length).toBeLessThanOrEqual(most);
    expect(stale.hasGuide).toBe(hasGuide);
    if (changed.some((path) => path.startsWith("guide/"))) expect(hasGuide).toBe(true);
  });

  it("are none when nothing changed, and all when what stands on every page did", async () => {
    const book = await bookOf(FILES);
    const { pages } = allOpened(book);
    expect(pages.stale(book, "")).toEqual(NOTHING);
    expect(pathsOf(pages.stale(book, "other code"))).toHaveLength(12);
    // That was not written.
    expect(pathsOf(pages.stale(book, "other code"))).toHaveLength(12);
  });

  it.each<[string, string, Partial<PagesToWrite>]>([
    ["a pattern on a notebook", "patterns/halves/plain/index.html", { pairs: [HALVES] }],
    ["the same by its folder", "patterns/halves/plain/", { pairs: [HALVES] }],
    ["a notebook", "notebooks/plain/index.html", { notebooks: ["plain"] }],
    ["the guide", "guide/strip/index.html", { hasGuide: true }],
    ["the front page", "", { hasLists: true }],
    ["the gallery", "patterns/", { hasLists: true }],
    [
      "no page of the book, which gets the page for that",
      "patterns/none/plain/",
      { hasLists: true },
    ],
  ])("are, when somebody opens %s, that one", async (_, path, wanted) => {
    let builds = 0;
    const pages = openServedPages(() => {
      builds += 1;
    });
    const book = await bookOf(FILES);
    const ready = pages.open(path, book);
    expect(pages.stale(book, "")).toEqual({ ...NOTHING, ...wanted });
    pages.settle();
    pages.release();
    await ready;
    await pages.open(path, book);
    expect(builds).toBe(1);
  });

  it("are those of a pattern that comes back as it was, too", async () => {
    const { "patterns/halves.md": _, ...without } = FILES;
    const rest = { "strips/daily.md": STRIP_OF_THIRDS, "setups/may.md": MAY_OF_THIRDS };
    const whole = await bookOf({ ...FILES, ...rest });
    const { pages } = allOpened(whole);
    pages.stale(await bookOf({ ...without, ...rest }), "");
    pages.settle();
    expect(pathsOf(pages.stale(whole, ""))).toContain("patterns/halves/plain/index.html");
  });
});

describe("a served folder", () => {
  it("loses the pages of what the book no longer has, and nothing else", async () => {
    const output = join(scratchFolder(), "served");
    for (const path of [
      "assets/book.css",
      "guide/index.html",
      "notebooks/index.html",
      "notebooks/gone/index.html",
      "notebooks/plain/index.html",
      "patterns/index.html",
      "patterns/gone/plain/index.html",
      "patterns/halves/gone/index.html",
      "patterns/halves/halves.md",
      "patterns/halves/plain/index.html",
      "strips/daily/gone/index.html",
      "strips/daily/plain/index.html",
    ]) {
      mkdirSync(dirname(join(output, path)), { recursive: true });
      writeFileSync(join(output, path), path);
    }
    removeStrays(output, (await bookOf(FILES)).all);
    expect(filesIn(output)).toEqual([
      "assets/book.css",
      "guide/index.html",
      "notebooks/index.html",
      "notebooks/plain/index.html",
      "patterns/halves/halves.md",
      "patterns/halves/plain/index.html",
      "patterns/index.html",
      "strips/daily/plain/index.html",
    ]);
  });
});

describe("a page that is sent while something is wrong", () => {
  it.each([
    ["carries the report as text", "<a & $&>", "<pre>&lt;a &amp; $&amp;&gt;</pre>"],
    ["is as it was without one", "", "<!-- report -->"],
  ])("%s", (_, report, part) => {
    expect(withReport("<body><!-- report --></body>", report)).toContain(part);
  });
});
