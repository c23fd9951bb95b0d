/** The fit page and the desk after one visit on the web, without a connection: all of their parts are there. */
import { readFileSync } from "node:fs";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, it } from "vitest";
import { launchChromium } from "./launch.ts";
import { type Served, serveFolder } from "./serve-folder.ts";

let browser: Browser;
let served: Served;

beforeAll(async () => {
  browser = await launchChromium();
  served = await serveFolder(inject("book"));
});

afterAll(async () => {
  await browser.close();
  await served.close();
});

describe("without a connection, after one visit", () => {
  it.each([
    ["the fit page makes PDF files", "fit/index.html", "print.js", 'data-do="save-strip-pdf"'],
    ["the desk reads and saves", "fit/recipe/index.html", "editor.js", 'data-do="save-recipe"'],
  ])("%s", async (_, path, part, button) => {
    const context = await browser.newContext();
    const page = await context.newPage();
    await page.goto(served.address + path);
    await page.locator(".plate svg").first().waitFor();
    const isKept = () =>
      page.evaluate(async (name) => {
        for (const key of await caches.keys()) {
          const kept = await (await caches.open(key)).keys();
          if (kept.some(({ url }) => url.endsWith(`/${name}`))) return true;
        }
        return false;
      }, part);
    await expect.poll(isKept).toBe(true);
    await context.setOffline(true);
    await page.reload();
    await page.locator(".plate svg").first().waitFor();
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.locator(`[${button}]`).click(),
    ]);
    expect(readFileSync(await download.path()).length).toBeGreaterThan(300);
    await context.close();
  });
});
