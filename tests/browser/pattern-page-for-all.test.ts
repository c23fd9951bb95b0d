/** A pattern's page without scripts, and for everybody, from disk. */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { afterAll, beforeAll, describe, expect, inject, it } from "vitest";
import { expectedSteps } from "./expected-steps.ts";
import { openTestBrowser } from "./test-browser.ts";
import { type WatchedPage, watchedPage } from "./watched-page.ts";

const book = inject("book");
const home = pathToFileURL(join(book, "patterns/two-row-week/a5/index.html")).href;
const steps = expectedSteps(book, { pattern: "two-row-week", notebook: "a5" });

const testBrowser = openTestBrowser();

describe("without scripts", () => {
  let watched: WatchedPage;
  beforeAll(async () => {
    watched = await watchedPage(testBrowser.browser, {
      javaScriptEnabled: false,
      viewport: { width: 390, height: 844 },
    });
    await watched.page.goto(home);
  });
  afterAll(() => watched.close());

  it("the strokes are a list under the drawing", async () => {
    const { page } = watched;
    await page.getByText("All strokes in their order").click();
    const list = page.locator('[data-part="order"] li');
    expect(await list.allTextContents()).toEqual(steps.map(({ words }) => words));
    expect(await list.first().isVisible()).toBe(true);
  });

  it("no button stands there that would do nothing", async () => {
    expect(await watched.page.locator("main button:visible").count()).toBe(0);
  });

  it("the switches work", async () => {
    await watched.page.getByLabel("Counts").uncheck();
    expect(await watched.page.locator(".plate .d-count").first().isVisible()).toBe(false);
  });
});

describe.each(["light", "dark"] as const)("in %s", (colorScheme) => {
  it.each(["", "#stroke=5", "#marks=1", "#drawn"])(
    "%s nothing bars anybody (axe-core, WCAG 2.2 A and AA)",
    async (hash) => {
      const { page, close } = await watchedPage(testBrowser.browser, { colorScheme });
      await page.goto(home + hash);
      await page.evaluate(readFileSync(createRequire(import.meta.url).resolve("axe-core"), "utf8"));
      const violations = await page.evaluate(
        "axe.run({ runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] }).then((told) => told.violations.map(({ id, nodes }) => [id, ...nodes.map(({ html }) => html)]))",
      );
      expect(violations).toEqual([]);
      await close();
    },
  );
});
