/** A book on the web that is still there when the connection is not, in a real browser's service worker. */
import { cpSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import type { BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { TINY } from "../setup/tiny-content.ts";
import { openTestBrowser } from "./test-browser.ts";
import { openTinyBooks, type TinyBooks } from "./tiny-books.ts";

const HALVES = "patterns/halves/plain/index.html";
const WIDE = "patterns/wide/plain/index.html";

let books: TinyBooks;
/** The same with another title for one pattern. */
let second: string;
const testBrowser = openTestBrowser((path) => (path.includes(breaksAt) ? undefined : folder));
/** What the server has at this moment; none is a dead connection. */
let folder: string | undefined;
/** The connection breaks at each address that has this in it. */
let breaksAt = "nothing";
let context: BrowserContext;
let page: Page;

beforeAll(async () => {
  books = openTinyBooks();
  const changed = TINY["patterns/halves.md"]?.replace("title: Halves", "title: Two halves") ?? "";
  second = await books.build("second", { ...TINY, "patterns/halves.md": changed });
});

afterAll(() => books.close());

/** A device that has been nowhere, and looks at some pages of a book until the worker is at work and at rest again. */
async function visit(book: string, paths: readonly string[]): Promise<void> {
  folder = book;
  context = await testBrowser.browser.newContext();
  page = await context.newPage();
  for (const path of paths) await open(path);
}

/** Opens a page and waits until what the page asks to be kept is kept. */
async function open(path: string): Promise<void> {
  await page.goto(testBrowser.address + path);
  await page.evaluate(async () => {
    const { active } = await navigator.serviceWorker.ready;
    await new Promise<void>((resolve) => {
      navigator.serviceWorker.addEventListener("message", ({ data }) => {
        if (data.of === 0 && data.failures === 0) resolve();
      });
      navigator.serviceWorker.startMessages();
      active?.postMessage({ keep: [] });
    });
  });
}

async function headingAt(path: string): Promise<string> {
  await page.goto(testBrowser.address + path);
  return (await page.locator("h1").textContent()) ?? "";
}

describe("a book that was opened once", () => {
  beforeAll(() => visit(books.first, ["index.html", HALVES]));
  afterAll(() => context.close());

  it("is there without a connection, with its styles, wherever it was looked at", async () => {
    folder = undefined;
    expect(await headingAt(HALVES)).toBe("Halves");
    const font = await page.locator("h1").evaluate((h1) => getComputedStyle(h1).fontFamily);
    expect(font).toContain("Vollkorn");
    expect(await headingAt("index.html")).toBe("Tiny");
  });

  it("has its lists and its guide from the start", async () => {
    folder = undefined;
    expect(await headingAt("patterns/index.html")).toBe("Patterns");
    expect(await headingAt("guide/counting/index.html")).toBe("Counting dots");
    expect(await headingAt("guide/")).toBe("Guide");
  });

  it("says so where a page was never opened, and leads back", async () => {
    folder = undefined;
    expect(await headingAt(WIDE)).toBe("This page is not on this device yet");
    await page.getByRole("link", { name: "The front page" }).click();
    expect(await page.locator("h1").textContent()).toBe("Tiny");
  });

  it("keeps nothing that was not asked for: no PDF file", async () => {
    const kept = await page.evaluate(async () => {
      const names = await caches.keys();
      const files = await Promise.all(names.map(async (name) => (await caches.open(name)).keys()));
      return files.flat().map(({ url }) => url);
    });
    expect(kept.length).toBeGreaterThan(20);
    expect(kept.filter((url) => url.endsWith(".pdf"))).toEqual([]);
  });
});

describe("a keeper who asks for a notebook's pages", () => {
  beforeAll(() => visit(books.first, ["notebooks/plain/index.html"]));
  afterAll(() => context.close());

  it("is told how far it is, and has them all when the connection goes", async () => {
    const button = page.getByRole("button", { name: "Keep its pages offline" });
    await button.click();
    await page.getByText("All 2 pages open without a connection now.").waitFor();
    expect(await button.isVisible()).toBe(false);
    folder = undefined;
    expect(await headingAt(WIDE)).toBe("Wide");
    expect(await headingAt(HALVES)).toBe("Halves");
  });
});

describe("a new build", () => {
  beforeAll(() => visit(books.first, ["index.html", HALVES]));
  afterAll(() => context.close());

  it("is seen at once", async () => {
    folder = second;
    expect(await headingAt(HALVES)).toBe("Two halves");
  });

  it("takes over: what was looked at before is there in the new form, and the old one is gone", async () => {
    folder = second;
    await open("index.html");
    await page.waitForFunction(async () => (await caches.keys()).length === 1, null, {
      polling: 100,
    });
    folder = undefined;
    expect(await headingAt(HALVES)).toBe("Two halves");
  });
});

describe("a new build over a connection that breaks", () => {
  beforeAll(() => visit(books.first, ["index.html", HALVES, WIDE]));
  afterAll(() => context.close());

  it("loses nothing: what does not come stays as it was, with its styles", async () => {
    folder = second;
    breaksAt = HALVES;
    await open("index.html");
    // The new worker is at work, and has what came: a page that was looked at is in both builds.
    await expect.poll(() => cachesWith(WIDE)).toBe(2);
    folder = undefined;
    expect(await headingAt(HALVES)).toBe("Halves");
    const font = await page.locator("h1").evaluate((h1) => getComputedStyle(h1).fontFamily);
    expect(font).toContain("Vollkorn");
    expect(await headingAt(WIDE)).toBe("Wide");
  });

  it("takes over with the next page that is opened over a good one", async () => {
    folder = second;
    breaksAt = "nothing";
    await open("index.html");
    await expect.poll(() => cachesWith("index.html")).toBe(1);
    folder = undefined;
    expect(await headingAt(HALVES)).toBe("Two halves");
    expect(await headingAt(WIDE)).toBe("Wide");
  });
});

/** How many builds keep a file. */
async function cachesWith(path: string): Promise<number> {
  return page.evaluate(async (address) => {
    const names = await caches.keys();
    const found = await Promise.all(
      names.map(async (name) => (await caches.open(name)).match(address)),
    );
    return found.filter((one) => one).length;
  }, testBrowser.address + path);
}

describe("a build that is put up by half", () => {
  const half = () => join(books.folder, "half");
  beforeAll(async () => {
    cpSync(second, half(), { recursive: true });
    rmSync(join(half(), "guide/counting/index.html"));
    await visit(books.first, ["index.html", HALVES]);
  });
  afterAll(() => context.close());

  it("does not take over, and the last good one stays", async () => {
    folder = half();
    await page.goto(`${testBrowser.address}index.html`);
    const state = await page.evaluate(async () => {
      const registration = await navigator.serviceWorker.ready;
      await registration.update().catch(() => undefined);
      const { installing } = registration;
      await new Promise<void>((resolve) => {
        if (!installing) resolve();
        else installing.addEventListener("statechange", () => resolve());
      });
      return installing?.state;
    });
    expect(state).toBe("redundant");
    folder = undefined;
    expect(await headingAt("guide/counting/index.html")).toBe("Counting dots");
  });
});

describe("two books on one host", () => {
  it("leave each other alone", async () => {
    folder = books.folder;
    const other = await testBrowser.browser.newContext();
    page = await other.newPage();
    const stored = async () => page.evaluate(async () => (await caches.keys()).sort());
    for (const name of ["first", "second", "first"]) {
      await open(`${name}/index.html`);
    }
    const names = await stored();
    expect(names).toHaveLength(2);
    expect(names.map((name) => name.split(" ")[1])).toEqual([
      `${testBrowser.address}first/`,
      `${testBrowser.address}second/`,
    ]);
    await other.close();
  });

  it("even where one lies in the other's folder", async () => {
    cpSync(books.first, join(books.folder, "around"), { recursive: true });
    cpSync(second, join(books.folder, "around/inner"), { recursive: true });
    folder = books.folder;
    const other = await testBrowser.browser.newContext();
    page = await other.newPage();
    for (const path of ["around/index.html", `around/inner/${HALVES}`]) await open(path);
    const mixed = await page.evaluate(async (inner) => {
      const outer = (await caches.keys()).filter((name) => !name.includes("/inner/"));
      const files = await Promise.all(outer.map(async (name) => (await caches.open(name)).keys()));
      return { outer: outer.length, inner: files.flat().filter(({ url }) => url.includes(inner)) };
    }, "/inner/");
    expect(mixed).toEqual({ outer: 1, inner: [] });
    await other.close();
  });
});

describe("the worker's file", () => {
  const workerOf = (book: string) => readFileSync(join(book, "worker.js"), "utf8");

  // That it changes with nothing else is said of every file of a book, where two builds are compared.
  it("changes with the content", () => {
    expect(workerOf(books.first)).not.toBe(workerOf(second));
  });

  it("names only files that are there", () => {
    const shell = /"shell":(\[.*?\])/.exec(workerOf(books.first))?.[1] ?? "[]";
    const paths: readonly string[] = JSON.parse(shell);
    expect(paths).toContain("index.html");
    expect(paths.filter((path) => !readable(join(books.first, path)))).toEqual([]);
  });
});

function readable(path: string): boolean {
  try {
    return readFileSync(path).length > 0;
  } catch {
    return false;
  }
}
