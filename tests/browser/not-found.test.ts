/** The page for what is not there, in Chromium, at any depth: of a book that tells no address, and of one that was moved. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { TINY } from "../setup/tiny-content.ts";
import { type Served, serveFolder } from "./serve-folder.ts";
import { openTestBrowser } from "./test-browser.ts";
import { openTinyBooks, type TinyBooks } from "./tiny-books.ts";

const testBrowser = openTestBrowser();
let books: TinyBooks;
let served: readonly Served[];

beforeAll(async () => {
  books = openTinyBooks();
  const moved = await books.build("moved", {
    ...TINY,
    "book.yaml": `${TINY["book.yaml"]}url: http://127.0.0.1:9/where/it/was/\n`,
  });
  served = await Promise.all(
    [books.first, moved].map((book) => serveFolder(book, "/society/2031/book/", "404.html")),
  );
});

afterAll(async () => {
  await Promise.all(served.map((one) => one.close()));
  books.close();
});

describe.each([
  ["a book without an address", 0],
  ["a book that was moved", 1],
])("the page for what is not there, of %s", (_, index) => {
  it.each([
    "no-such.html",
    "patterns/no/such/page.html",
    "a/b/c/d/e/f/",
    "patterns/halves/plain/no",
  ])("at %s has its styles and leads to the book", async (path) => {
    const page = await testBrowser.browser.newPage();
    const faults: string[] = [];
    page.on("pageerror", (error) => faults.push(error.message));
    const { address = "" } = served[index] ?? {};
    await page.goto(address + path);
    const brand = page.locator(".brand");
    // The script has found the book when a link leads there; its styles are there when a link looks like the book's.
    const home = async () => new URL((await brand.getAttribute("href")) ?? "", page.url()).href;
    await expect.poll(home).toBe(`${address}index.html`);
    await expect
      .poll(() => brand.evaluate((link) => getComputedStyle(link).textDecorationLine))
      .toBe("none");
    const hrefs = await page
      .locator("main a, header a")
      .evaluateAll((all) => all.map((link) => link.getAttribute("href") ?? ""));
    const links = hrefs.map((href) => new URL(href, page.url()).href);
    expect(links.length).toBeGreaterThan(7);
    const statuses = await Promise.all(links.map(async (to) => (await fetch(to)).status));
    expect(statuses).toEqual(links.map(() => 200));
    expect(links.every((to) => to.startsWith(address))).toBe(true);
    expect(faults).toEqual([]);
    await page.close();
  });
});
