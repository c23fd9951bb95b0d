/** The fit page, filled in as a person does, says byte for byte what the build wrote. */
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, inject, it } from "vitest";
import { bookContent } from "../setup/demo-content.ts";
import { pdfContent } from "./pdf-content.ts";
import { plansInPage } from "./plans-in-page.ts";
import { downloaded, onDisk, openTestBrowser } from "./test-browser.ts";
import { type WatchedPage, watchedPage } from "./watched-page.ts";

const book = inject("book");
const content = await bookContent(inject("content"));
const { notebooks, recipes } = content;
const built = (path: string) => readFileSync(join(book, path), "utf8");

const testBrowser = openTestBrowser();
let watched: WatchedPage;

beforeAll(async () => {
  watched = await watchedPage(testBrowser.browser);
  await watched.page.goto(onDisk("fit/index.html"));
});

afterAll(async () => {
  await watched.close();
});

/** Every pattern is drawn on some notebook and every notebook has some patterns; a sweep has them all. */
const SHARES = 6;
const CASES = notebooks.map((notebook, index) => {
  const patterns = recipes.filter((_, other) => (index + other) % SHARES === 0);
  return [notebook.slug, notebook, patterns.map(({ slug }) => slug)] as const;
});

describe("what the page says of a plan", () => {
  it("is said of every pattern", async () => {
    const options = watched.page.locator("#pattern option");
    const slugs = await options.evaluateAll((all) => all.map((one) => one.getAttribute("value")));
    expect(slugs.toSorted()).toEqual(recipes.map(({ slug }) => slug).toSorted());
  });

  it.each(CASES)("is the build's plan.json, on %s", async (slug, notebook, patterns) => {
    const plans = await plansInPage(watched.page, notebook, patterns);
    expect(Object.keys(plans)).toEqual(patterns);
    for (const [pattern, text] of Object.entries(plans))
      expect(text).toBe(built(`patterns/${pattern}/${slug}/plan.json`));
  });
});

describe("the fields that others rely on", () => {
  it.each(["Paper", "Pitch (mm)", "Dots across", "Dots down", "Pattern"])(
    "include exactly one that is labelled %s",
    async (label) => {
      expect(await watched.page.getByLabel(label).count()).toBe(1);
    },
  );

  it("can be filled in by those labels alone", async () => {
    const { page, close } = await watchedPage(testBrowser.browser);
    await page.goto(watched.page.url().replace(/#.*/, ""));
    await page.getByLabel("Paper").selectOption("A6");
    await page.getByLabel("Pitch (mm)").fill("4");
    await page.getByLabel("Dots across").fill("25");
    await page.getByLabel("Dots down").fill("36");
    await page.getByLabel("Pattern").selectOption("seed-list");
    const plan = JSON.parse((await page.locator("#plan-data").textContent()) ?? "");
    expect(plan.pattern).toBe("seed-list");
    expect(plan.pages[0].steps).toEqual({ across: 25, down: 36 });
    await close();
  });
});

describe("a file that the page makes", () => {
  it.each([
    ["save-page-svg", "patterns/two-row-week/a6/page.svg"],
    ["save-page-pdf", "patterns/two-row-week/a6/page.pdf"],
  ])("by %s is the build's %s", async (doing, path) => {
    const { page } = watched;
    await page.getByLabel("Start from").first().selectOption("a6");
    await page.getByLabel("Pattern").selectOption("two-row-week");
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.locator(`[data-do="${doing}"]`).click(),
    ]);
    const [made, written] = [await downloaded(download), readFileSync(join(book, path))];
    if (path.endsWith(".pdf")) expect(pdfContent(made)).toBe(pdfContent(written));
    else expect(made.equals(written)).toBe(true);
  });
});

describe("the page from disk", () => {
  it("has nothing to complain of", () => {
    expect(existsSync(join(book, "fit/book.js"))).toBe(true);
    expect(watched.complaints).toEqual([]);
  });
});
