/** What the first view of the gallery and of a notebook weighs, compressed, and that nothing in it moves. */
import { readFileSync } from "node:fs";
import { extname, join } from "node:path";
import { gzipSync } from "node:zlib";
import type { Page } from "playwright-core";
import { describe, expect, inject, it } from "vitest";
import { openTestBrowser } from "./test-browser.ts";
import { watchedPage } from "./watched-page.ts";

const book = inject("book");
const testBrowser = openTestBrowser(book);

interface FirstView {
  readonly files: readonly string[];
  readonly bytes: number;
  /** The sum of all layout shifts: https://web.dev/articles/cls, where less than 0.1 is good. */
  readonly shift: number;
}

/** Opens a page as a reader does who has chosen a notebook before, and does nothing. */
async function firstView(path: string, width: number, chosen: string): Promise<FirstView> {
  const { page, complaints, close } = await watchedPage(testBrowser.browser, {
    viewport: { width, height: 900 },
  });
  const files: string[] = [];
  page.on("request", (request) => files.push(request.url().replace(testBrowser.address, "")));
  await page.addInitScript((slug) => localStorage.setItem("spanbook.notebook", slug), chosen);
  await page.goto(testBrowser.address + path, { waitUntil: "networkidle" });
  const shift = await shiftOf(page);
  expect(complaints).toEqual([]);
  await close();
  return { files, shift, bytes: files.reduce((sum, file) => sum + weightOf(file), 0) };
}

/** As a server sends it: a font is compressed already. */
function weightOf(file: string): number {
  const bytes = readFileSync(join(book, file));
  return extname(file) === ".woff2" ? bytes.length : gzipSync(bytes, { level: 9 }).length;
}

function shiftOf(page: Page): Promise<number> {
  return page.evaluate(
    () =>
      new Promise<number>((resolve) => {
        let sum = 0;
        new PerformanceObserver((list) => {
          for (const entry of list.getEntries()) sum += Number(Reflect.get(entry, "value"));
        }).observe({ type: "layout-shift", buffered: true });
        setTimeout(() => resolve(sum), 300);
      }),
  );
}

const VIEWS = [390, 820, 1440].flatMap((width) =>
  ["a5", "a6"].map((notebook) => [width, notebook] as const),
);

describe.each(VIEWS)("the first view of the gallery, %i px wide, on %s", (width, notebook) => {
  it("weighs less than 100 KB with everything, nothing in it moves, and no picture of another notebook comes, and none twice", async () => {
    const { files, bytes, shift } = await firstView("patterns/index.html", width, notebook);
    expect(files).toContain("assets/gallery.js");
    // What grows with the number of patterns comes when somebody goes on.
    expect(files.filter((file) => /facts|search/.test(file))).toEqual([]);
    expect(bytes, files.join("\n")).toBeLessThan(100_000);
    expect(shift).toBeLessThan(0.01);
    const pictures = files.filter((file) => file.endsWith("thumb.svg"));
    expect(pictures.length).toBeGreaterThan(5);
    expect(pictures.filter((file) => !file.endsWith(`/${notebook}/thumb.svg`))).toEqual([]);
    expect(new Set(pictures).size).toBe(pictures.length);
  });
});

describe("what the search brings along", () => {
  it("weighs less than 30 KB", () => {
    const bytes = weightOf("assets/search.js") + weightOf("patterns/search-index.js");
    expect(bytes).toBeLessThan(30_000);
  });
});

describe.each([
  "notebooks/a5/index.html",
  "notebooks/a6/index.html",
  "notebooks/index.html",
  "index.html",
])("%s", (path) => {
  it.each([390, 1440])(
    "weighs less than 150 KB, %i px wide, and nothing in it moves",
    async (width) => {
      const { bytes, shift } = await firstView(path, width, "a5");
      expect(bytes).toBeLessThan(150_000);
      expect(shift).toBeLessThan(0.01);
    },
  );
});
