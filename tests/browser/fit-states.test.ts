/** The fit page, the recipe page, the measure page and the strip page in their less usual states: nobody is shut out there either. */
import type { Page } from "playwright-core";
import { describe, expect, inject, it } from "vitest";
import { IS_SWEEP } from "../sweep/sweep-size.ts";
import { axeFindings } from "./axe-findings.ts";
import { onDisk, openTestBrowser } from "./test-browser.ts";

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
      for (const fold of await page.locator("summary:visible").all()) await fold.click();
    },
  ],
  "a pattern that does not fit": [
    "fit/index.html#v=1&paper=A8&pitch=7&dots=6,8&pattern=week-by-the-hour",
    async (page) => {
      await page.getByText("Why it does not fit").waitFor();
    },
  ],
  "a link with a strip from before": [
    "fit/index.html#v=1&across=seed-list,two-row-week,week-on-one-page&down=seed-list,two-row-week",
    async (page) => {
      await page.getByText("This link brings a strip as well").waitFor();
    },
  ],
  "a full strip with faults at its fields": [
    "strip/index.html#v=1&across=seed-list:3,two-row-week:9,week-on-one-page&down=seed-list,two-row-week&lanes=1",
    async (page) => {
      await page.locator('[data-side="across"] .left-out li').first().waitFor();
      await page.getByLabel("Lanes a side").fill("99");
      await page.getByLabel("Uses of Seed list, across").fill("x");
    },
  ],
  "offers for the strip": [
    "strip/index.html",
    async (page) => {
      await page.getByLabel("Layout or division").fill("thir");
      await page.getByRole("option").first().waitFor();
    },
  ],
  "a set-up with a fault in an entry, in a field and in the days": [
    "setup/index.html#v=1&dates=2027-03&from=43&pages=%5B%22month-grid%22,%7B%22each%22:%22week%22,%22pages%22:%5B%22two-row-week%22%5D%7D,%22seed-list%22%5D",
    async (page) => {
      await page.locator(".facing svg.drawing").first().waitFor();
      await page.locator('[data-part="strip"] svg').waitFor();
      await page.getByLabel("Times of Seed list").fill("x");
      await page.getByRole("textbox", { name: "Dates" }).fill("2027-13");
    },
  ],
  "offers for a set-up's pages": [
    "setup/index.html#v=1&dates=2027-03&pages=no-such",
    async (page) => {
      await page.getByLabel("Add a layout").press("ArrowDown");
      await page.locator("#offers").getByRole("option").first().waitFor();
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

/** Colours change with the light and not with the width; what is shown changes with the width and not with the light. */
const VIEWS = [
  ["light", 390],
  ["dark", 1440],
] as const;

/** In the gate each state is looked at in one of the views, in turns: the pages themselves are looked at in both. */
const LOOKS = Object.entries(STATES).flatMap(([state, [path, act]], index) =>
  VIEWS.filter((_, view) => IS_SWEEP || view === index % VIEWS.length).map(
    ([colorScheme, width]) => ({ state, path, act, colorScheme, width }),
  ),
);

describe("axe objects to nothing", () => {
  it.each(LOOKS)("$state, in the $colorScheme, $width px wide", async (look) => {
    const options = { colorScheme: look.colorScheme, viewport: { width: look.width, height: 900 } };
    await testBrowser.onPage(onDisk(look.path, inject("few")), options, async (page) => {
      await look.act(page);
      expect(await axeFindings(page)).toEqual([]);
    });
  });
});

const PAGES = [
  "fit/index.html",
  "fit/recipe/index.html",
  "measure/index.html",
  "strip/index.html",
  "setup/index.html",
];

describe.each(PAGES)("%s", (path) => {
  const address = () => onDisk(path, inject("few"));

  it("has nothing to press that is too small for a finger: 24 px at least (WCAG 2.2, 2.5.8)", async () => {
    await testBrowser.onPage(address(), { viewport: { width: 390, height: 900 } }, async (page) => {
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
    });
  });

  it("is read at four times the size without pushing it sideways (WCAG 2.2, 1.4.10: 320 px)", async () => {
    await testBrowser.onPage(address(), { viewport: { width: 320, height: 256 } }, async (page) => {
      const over = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect(over).toBeLessThanOrEqual(0);
    });
  });

  it("says without scripts what to do instead, and shows nothing that would do nothing", async () => {
    await testBrowser.onPage(address(), { javaScriptEnabled: false }, async (page) => {
      expect(await page.locator("noscript").textContent()).toContain("scripts are switched off");
      const dead = page.locator("main :is(button, input, select, textarea):visible");
      expect(await dead.evaluateAll((all) => all.map(({ outerHTML }) => outerHTML))).toEqual([]);
    });
  });
});
