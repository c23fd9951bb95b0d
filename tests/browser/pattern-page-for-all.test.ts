/** A pattern's page without scripts, and for everybody, from disk. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { axeFindings } from "./axe-findings.ts";
import { expectedSteps } from "./expected-steps.ts";
import { onDisk, openTestBrowser } from "./test-browser.ts";
import { type WatchedPage, watchedPage } from "./watched-page.ts";

const home = onDisk("patterns/two-row-week/a5/index.html");
const steps = expectedSteps({ pattern: "two-row-week", notebook: "a5" });

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
    await page.getByText("All lines in their order").click();
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
  // The page as it is opened is looked at with all other kinds of pages.
  it.each(["#stroke=5", "#marks=1", "#drawn"])("%s: axe objects to nothing", async (hash) => {
    await testBrowser.onPage(home + hash, { colorScheme }, async (page) => {
      expect(await axeFindings(page)).toEqual([]);
    });
  });
});
