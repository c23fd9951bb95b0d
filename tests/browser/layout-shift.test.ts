/** Nothing that is seen moves while a page comes to be: not by fonts that come late, not by its script, on no kind of page. */
import { setTimeout } from "node:timers/promises";
import type { Page } from "playwright-core";
import { describe, expect, inject, it } from "vitest";
import { PAGE_KINDS } from "./page-kinds.ts";
import { testBrowser } from "./test-browser.ts";
import { watchedPage } from "./watched-page.ts";

const book = inject("book");
const chromium = testBrowser(book);

/**
 * A fifth of what still counts as good: 0.1 (Web Vitals, cumulative layout shift, web.dev/articles/cls). One short line
 * that the device's own face breaks elsewhere is as much.
 */
const MOST_SHIFT = 0.02;

/** Long after the first paint, in milliseconds, so that every visit begins with the stand-ins. */
const FONTS_COME_AFTER = 400;

/** What a page may look for in its address or on the device, as kept there by name. */
interface Visit {
  readonly path: string;
  readonly kept?: Readonly<Record<string, string>>;
}

const KEPT = { "spanbook.notebook": "a6" };

const VISITS: Readonly<Record<string, Visit>> = {
  ...Object.fromEntries(Object.entries(PAGE_KINDS).map(([kind, path]) => [kind, { path }])),
  "the list of patterns, on a kept notebook": {
    path: PAGE_KINDS["the list of patterns"] ?? "",
    kept: KEPT,
  },
  "the front page, on a kept notebook": { path: "index.html", kept: KEPT },
  "the list of patterns, narrowed down": { path: "patterns/index.html#on=a6&for=week" },
  "the list of patterns, by title": { path: "patterns/index.html#sort=title", kept: KEPT },
  "the list of patterns, searched": { path: "patterns/index.html#find=greenhouse" },
  "the fit page with another's link": {
    path: "fit/index.html#v=1&paper=A6&pitch=4&dots=24,35",
    kept: { "spanbook.fit": "#v=1&paper=A5&pitch=5&dots=26,38" },
  },
  "the fit page with a broken link": { path: "fit/index.html#v=9" },
  "the recipe page with a recipe": { path: "fit/recipe/index.html#v=1&from=two-row-week" },
};

/** The sum of all shifts so far, as the browser measures them (Layout Instability API). */
async function shiftOf(page: Page): Promise<number> {
  return await page.evaluate(
    () =>
      new Promise<number>((resolve) => {
        new PerformanceObserver((list) => {
          const values = list.getEntries().map((entry) => Number(Reflect.get(entry, "value")));
          resolve(values.reduce((sum, each) => sum + each, 0));
        }).observe({ type: "layout-shift", buffered: true });
        // Nobody is told of no shift at all.
        window.setTimeout(() => resolve(0), 1_000);
      }),
  );
}

/** Opens a page that has been there for a while; what moves later on is moved by its reader. */
async function settled(page: Page, { path, kept = {} }: Visit): Promise<void> {
  await page.addInitScript((texts) => {
    for (const [name, text] of Object.entries(texts)) localStorage.setItem(name, text);
  }, kept);
  await page.route("**/*.woff2", async (route) => {
    await setTimeout(FONTS_COME_AFTER);
    await route.continue();
  });
  await page.goto(`${chromium.address}${path}`, { waitUntil: "networkidle" });
  await page.evaluate(() => document.fonts.ready);
  await page.waitForTimeout(300);
}

describe.each([390, 1440])("%i px wide", (width) => {
  it.each(Object.entries(VISITS))("%s stands still", async (_, visit) => {
    const { page, complaints, close } = await watchedPage(chromium.browser, {
      viewport: { width, height: 900 },
    });
    await settled(page, visit);
    expect(await shiftOf(page)).toBeLessThan(MOST_SHIFT);
    expect(complaints).toEqual([]);
    await close();
  });

  it("a planted push is found", async () => {
    const { page, close } = await watchedPage(chromium.browser, {
      viewport: { width, height: 900 },
    });
    await settled(page, { path: "index.html" });
    await page.evaluate(() => {
      const push = document.createElement("p");
      push.style.height = "300px";
      document.querySelector("main")?.prepend(push);
    });
    await page.waitForTimeout(300);
    expect(await shiftOf(page)).toBeGreaterThan(MOST_SHIFT);
    await close();
  });
});
