/** The fit page, the strip page and the recipe page after one visit on the web, without a connection: all of their parts are there. */
import { describe, expect, inject, it } from "vitest";
import { downloaded, openTestBrowser } from "./test-browser.ts";

const testBrowser = openTestBrowser(inject("book"));

describe("without a connection, after one visit", () => {
  it.each([
    ["the fit page makes PDF files", "fit/index.html", "print.js", 'data-do="save-page-pdf"'],
    [
      "the strip page makes PDF files",
      "strip/index.html#v=1&across=seed-list",
      "print.js",
      'data-do="save-strip-pdf"',
    ],
    [
      "the recipe page reads and saves",
      "fit/recipe/index.html",
      "editor.js",
      'data-do="save-recipe"',
    ],
  ])("%s", async (_, path, part, button) => {
    const context = await testBrowser.browser.newContext();
    const page = await context.newPage();
    await page.goto(testBrowser.address + path);
    await page.locator(".plate svg").first().waitFor();
    // The worker keeps what the page has loaded and what it may load later, in any order.
    const isKept = () =>
      page.evaluate(async (name) => {
        const all = await Promise.all((await caches.keys()).map((key) => caches.open(key)));
        const kept = (await Promise.all(all.map((cache) => cache.keys()))).flat();
        const scripts = [...document.scripts].map(({ src }) => src).filter((src) => src !== "");
        const needed = [location.href.split("#")[0], ...scripts];
        const isThere = (address?: string) => kept.some(({ url }) => url === address);
        return needed.every(isThere) && kept.some(({ url }) => url.endsWith(`/${name}`));
      }, part);
    await expect.poll(isKept).toBe(true);
    await context.setOffline(true);
    await page.reload();
    await page.locator(".plate svg").first().waitFor();
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.locator(`[${button}]`).click(),
    ]);
    expect((await downloaded(download)).length).toBeGreaterThan(300);
    await context.close();
  });
});
