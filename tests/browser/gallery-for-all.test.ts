/** The gallery for everybody: without scripts, by keyboard, by touch, enlarged, in the system's colours, on paper. */
import type { BrowserContextOptions, Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { FIRST_CARDS } from "../../src/view/gallery/gallery-groups.ts";
import { axeFindings } from "./axe-findings.ts";
import { onDisk, openTestBrowser } from "./test-browser.ts";

const testBrowser = openTestBrowser();

const on = (path: string, options: BrowserContextOptions, look: (page: Page) => Promise<void>) =>
  testBrowser.onPage(onDisk(path), options, look);

const PHONE = { viewport: { width: 390, height: 844 } };
const DESKTOP = { viewport: { width: 1440, height: 900 } };

describe("without scripts", () => {
  it.each([PHONE, DESKTOP])("the gallery leads to all patterns by purpose: %j", async (view) => {
    await on("patterns/index.html", { ...view, javaScriptEnabled: false }, async (page) => {
      expect(await page.locator(".choose").isVisible()).toBe(false);
      expect(await page.locator(".found").isVisible()).toBe(false);
      expect(await page.locator("section[data-group]:visible").count()).toBe(10);
      const all = await page.locator(".card").count();
      expect(await page.locator(".card:visible").count()).toBe(FIRST_CARDS);
      await page.locator(".jump a", { hasText: "Tracker" }).click();
      expect(page.url()).toMatch(/#tracker$/);
      await page.locator("[data-group=tracker] .whole a").click();
      expect(page.url()).toMatch(/all\.html#tracker$/);
      expect(await page.locator(".card:visible").count()).toBe(all);
    });
  });

  it("a notebook's page says everything, and offers nothing that needs them", async () => {
    await on("notebooks/a5/index.html", { ...PHONE, javaScriptEnabled: false }, async (page) => {
      expect(await page.locator("button:visible").count()).toBe(0);
      expect(await page.locator(".way:visible").count()).toBe(8);
    });
  });
});

describe("by keyboard", () => {
  it("every control is reached in order and shows that it is", async () => {
    await on("patterns/index.html", DESKTOP, async (page) => {
      await page.getByLabel("Find").focus();
      const names: string[] = [];
      for (let press = 0; press < 16; press++) {
        names.push(await page.evaluate(() => document.activeElement?.getAttribute("name") ?? ""));
        await page.keyboard.press("Tab");
      }
      const order = names.filter((name, index) => name !== names[index - 1]);
      expect(order).toEqual(["find", "on", "sort", "for", "fit", "pages", "lines"]);
      await page.locator("[name=fit]").first().focus();
      await page.keyboard.press("ArrowRight");
      await page.keyboard.press("ArrowRight");
      expect(await page.evaluate(() => location.hash)).toBe("#on=a5&fit=even");
      const outline = await page
        .locator("[name=fit][value=even] + span")
        .evaluate((words) => getComputedStyle(words).outlineStyle);
      expect(outline).toBe("solid");
    });
  });

  it("the panel of a phone opens and closes, and says so", async () => {
    await on("patterns/index.html", PHONE, async (page) => {
      const narrow = page.getByRole("button", { name: "Filters" });
      expect(await narrow.getAttribute("aria-expanded")).toBe("false");
      expect(await page.locator("#filters").isVisible()).toBe(false);
      await narrow.press("Enter");
      expect(await narrow.getAttribute("aria-expanded")).toBe("true");
      await page.locator("[name=for][value=day]").press("Space");
      expect(await narrow.textContent()).toContain("Filters (1)");
      await narrow.press("Enter");
      expect(await page.locator("#filters").isVisible()).toBe(false);
    });
  });
});

describe("by touch", () => {
  /** 44 CSS pixels, as WCAG 2.2 has it in 2.5.5 (enhanced). */
  it("every control of a phone is at least 44 px high and wide", async () => {
    await on("patterns/index.html", { ...PHONE, hasTouch: true }, async (page) => {
      await page.getByRole("button", { name: "Filters" }).click();
      const small = await page
        .locator(".choose :is(input[type=search], select, button, fieldset label):visible")
        .evaluateAll((all) =>
          all.flatMap((one) => {
            const { width, height } = one.getBoundingClientRect();
            return width < 44 || height < 44 ? [`${one.outerHTML}: ${width} × ${height}`] : [];
          }),
        );
      expect(small).toEqual([]);
    });
  });
});

describe("enlarged to 400 %", () => {
  /** 1280 px at 400 % are 320 px: WCAG 2.2, 1.4.10. */
  it.each([
    "patterns/index.html",
    "patterns/index.html#find=sowing&for=week",
    "notebooks/a5/index.html",
    "notebooks/a4/index.html",
    "notebooks/index.html",
    "index.html",
  ])("%s needs no pushing aside", async (path) => {
    await on(path, { viewport: { width: 320, height: 256 } }, async (page) => {
      const width = await page.evaluate(() => document.documentElement.scrollWidth);
      expect(width).toBeLessThanOrEqual(320);
    });
  });
});

describe("in the system's own colours", () => {
  it("a filter that is set is told apart from one that does not", async () => {
    await on("patterns/index.html", { ...DESKTOP, forcedColors: "active" }, async (page) => {
      const outlines = await page
        .locator("[name=pages] + span")
        .evaluateAll((all) => all.map((words) => getComputedStyle(words).outlineStyle));
      expect(outlines).toEqual(["solid", "none", "none"]);
    });
  });
});

describe("on paper", () => {
  it("there are patterns, and no controls", async () => {
    await on("patterns/index.html", DESKTOP, async (page) => {
      await page.emulateMedia({ media: "print" });
      expect(await page.locator(".choose").isVisible()).toBe(false);
      expect(await page.locator(".found").isVisible()).toBe(false);
      expect(await page.locator(".card").first().isVisible()).toBe(true);
    });
  });
});

describe("what the gallery looks like after a search and a filter", () => {
  it.each([
    ["light", PHONE],
    ["dark", DESKTOP],
  ] as const)("has nothing that axe objects to, in the %s", async (colorScheme, view) => {
    await on("patterns/index.html#for=year&find=slug", { ...view, colorScheme }, async (page) => {
      await page.getByRole("button", { name: "Without year" }).waitFor();
      const narrow = page.getByRole("button", { name: "Filters" });
      if (await narrow.isVisible()) await narrow.click();
      expect(await axeFindings(page)).toEqual([]);
      await page.getByRole("button", { name: "Without year" }).click();
      await page.locator(".card:visible").first().waitFor();
      expect(await axeFindings(page)).toEqual([]);
    });
  });
});
