/** The fit page, the recipe page and the measure page in their less usual states: nobody is shut out there either. */
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Page } from "playwright-core";
import { describe, expect, inject, it } from "vitest";
import { axeFindings } from "./axe-findings.ts";
import { openTestBrowser } from "./test-browser.ts";
import { watchedPage } from "./watched-page.ts";

const book = inject("book");
const testBrowser = openTestBrowser();

const STATES: Readonly<
  Record<string, readonly [path: string, act: (page: Page) => Promise<void>]>
> = {
  "faults at fields and everything unfolded": [
    "fit/index.html",
    async (page) => {
      await page.getByLabel("Paper").selectOption("own");
      await page.getByLabel("Dots across").fill("x");
      await page.getByLabel("Pitch (mm)").fill("");
      await page.getByLabel("Lanes a side").fill("99");
      for (const fold of await page.locator("summary").all()) await fold.click();
    },
  ],
  "a pattern that does not fit": [
    "fit/index.html#v=1&paper=A8&pitch=7&dots=6,8&pattern=day-by-the-hour",
    async (page) => {
      await page.getByText("Why it does not fit").waitFor();
    },
  ],
  "a full strip": [
    "fit/index.html#v=1&across=seed-list,two-row-week,seven-row-week&down=seed-list,two-row-week",
    async (page) => {
      await page.locator('[data-side="across"] li').nth(2).waitFor();
    },
  ],
  "a broken address": [
    "fit/index.html#v=9",
    async (page) => {
      await page.getByText("cannot be read").waitFor();
    },
  ],
  "a recipe with problems": [
    "fit/recipe/index.html#v=1&from=two-row-week",
    async (page) => {
      const editor = page.getByRole("textbox", { name: "The recipe" });
      await editor.press("Control+End");
      await editor.press("Control+Home");
      await page.keyboard.type("x");
      await page.locator(".problems li").first().waitFor();
    },
  ],
  "a measured screen and a bar that is off": [
    "measure/index.html",
    async (page) => {
      await page.getByRole("button", { name: "Wider" }).click();
      await page.getByLabel("What is shown").selectOption("strip");
      await page.getByLabel("Bar along the short side (mm)").fill("50");
      await page.getByLabel("Steps between them").fill("20");
      await page.getByLabel("Length (mm)").fill("100");
    },
  ],
};

describe.each(["light", "dark"] as const)("in the %s", (colorScheme) => {
  describe.each([390, 1440])("%i px wide", (width) => {
    it.each(Object.entries(STATES))("%s: axe objects to nothing", async (_, [path, act]) => {
      const options = { colorScheme, viewport: { width, height: 900 } };
      const { page, complaints, close } = await watchedPage(testBrowser.browser, options);
      await page.goto(pathToFileURL(join(book, "x")).href.replace(/x$/, path));
      await act(page);
      expect(await axeFindings(page)).toEqual([]);
      expect(complaints).toEqual([]);
      await close();
    });
  });
});

describe("what can be pressed", () => {
  it.each(["fit/index.html", "fit/recipe/index.html", "measure/index.html"])(
    "is large enough for a finger on %s: 24 px at least (WCAG 2.2, 2.5.8)",
    async (path) => {
      const { page, close } = await watchedPage(testBrowser.browser, {
        viewport: { width: 390, height: 900 },
      });
      await page.goto(pathToFileURL(join(book, path)).href);
      const small = await page.evaluate(() =>
        [...document.querySelectorAll("main :is(button, select, input, summary, label:has(input))")]
          .filter((element) => element.checkVisibility())
          .filter((element) => !element.matches("label input"))
          .map((element) => ({ element, box: element.getBoundingClientRect() }))
          .filter(({ box }) => box.width < 24 || box.height < 24)
          .map(
            ({ element, box }) => `${element.outerHTML.slice(0, 80)} ${box.width} × ${box.height}`,
          ),
      );
      expect(small).toEqual([]);
      await close();
    },
  );
});

describe("at four times the size", () => {
  it.each(["fit/index.html", "fit/recipe/index.html", "measure/index.html"])(
    "%s is read without pushing it sideways (WCAG 2.2, 1.4.10: 320 px)",
    async (path) => {
      const { page, close } = await watchedPage(testBrowser.browser, {
        viewport: { width: 320, height: 256 },
      });
      await page.goto(pathToFileURL(join(book, path)).href);
      const over = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect(over).toBeLessThanOrEqual(0);
      await close();
    },
  );
});

describe("without scripts", () => {
  it.each(["fit/index.html", "fit/recipe/index.html", "measure/index.html"])(
    "%s says what to do instead, and shows nothing that would do nothing",
    async (path) => {
      const { page, close } = await watchedPage(testBrowser.browser, { javaScriptEnabled: false });
      await page.goto(pathToFileURL(join(book, path)).href);
      expect(await page.locator("noscript").textContent()).toContain("scripts are switched off");
      const dead = page.locator("main :is(button, input, select, textarea):visible");
      expect(await dead.evaluateAll((all) => all.map(({ outerHTML }) => outerHTML))).toEqual([]);
      await close();
    },
  );
});
