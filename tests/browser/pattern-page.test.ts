/** A pattern's page in a browser, from disk: what it keeps, copies and prints. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { afterEach, beforeEach, describe, expect, inject, it } from "vitest";
import { demoText } from "../setup/demo-files.ts";
import { expectedSteps } from "./expected-steps.ts";
import { onDisk, openTestBrowser } from "./test-browser.ts";
import { type WatchedPage, watchedPage } from "./watched-page.ts";

const book = inject("book");
const folder = "patterns/two-row-week/a5";
const home = onDisk(`${folder}/index.html`);
const steps = expectedSteps({ pattern: "two-row-week", notebook: "a5" });

const testBrowser = openTestBrowser();

const isShown = (page: Page, selector: string) =>
  page
    .locator(selector)
    .first()
    .evaluate((part) => getComputedStyle(part).display !== "none");

describe("a pattern's page", () => {
  let watched: WatchedPage;
  let page: Page;

  beforeEach(async () => {
    watched = await watchedPage(testBrowser.browser, {
      viewport: { width: 390, height: 844 },
      hasTouch: true,
    });
    page = watched.page;
    await page.goto(home);
  });
  afterEach(async () => {
    expect(watched.complaints).toEqual([]);
    await watched.close();
  });

  it.each([
    ["Grid", ".d-grid"],
    ["Counts", ".d-count"],
    ["Labels", ".d-label"],
  ])(
    "shows the drawing without its %s when told to, on paper too, and remembers it",
    async (name, part) => {
      expect(await isShown(page, `.plate ${part}`)).toBe(true);
      await page.getByLabel(name, { exact: true }).uncheck();
      expect(await isShown(page, `.plate ${part}`)).toBe(false);
      await page.reload();
      expect(await page.getByLabel(name, { exact: true }).isChecked()).toBe(false);
      expect(await isShown(page, `.plate ${part}`)).toBe(false);
      await page.emulateMedia({ media: "print" });
      expect(await isShown(page, `.plate ${part}`)).toBe(false);
    },
  );

  it("opens at the step that its address names, and follows it", async () => {
    await page.goto(`${home}#stroke=5`);
    await page.reload();
    const words = page.locator('[data-part="words"]');
    expect(await words.textContent()).toBe(steps.find(({ hash }) => hash === "#stroke=5")?.words);
    await page.goto(`${home}#marks=2`);
    expect(await words.textContent()).toBe(steps.find(({ hash }) => hash === "#marks=2")?.words);
  });

  it("draws with the left hand, and remembers it", async () => {
    const left = expectedSteps({ pattern: "two-row-week", notebook: "a5", hand: "left" });
    await page.getByLabel("I draw with my left hand").check();
    await page.reload();
    await page.getByRole("button", { name: "Start drawing" }).click();
    await page.keyboard.press("ArrowRight");
    await page.keyboard.press("ArrowRight");
    for (const step of left.filter(({ hash }) => hash.startsWith("#stroke"))) {
      expect(await page.locator(".along-now").getAttribute("d")).toBe(step.d);
      expect(await page.locator('[data-part="words"]').textContent()).toBe(step.words);
      await page.keyboard.press("ArrowRight");
    }
  });

  it("goes on and back by swipes", async () => {
    await page.getByRole("button", { name: "Start drawing" }).click();
    const hash = () => page.evaluate(() => location.hash);
    await swipe(page, 300, 120);
    expect(await hash()).toBe("#marks=2");
    await swipe(page, 300, 120);
    expect(await hash()).toBe("#stroke=1");
    await swipe(page, 120, 300);
    expect(await hash()).toBe("#marks=2");
    await swipe(page, 200, 190);
    expect(await hash()).toBe("#marks=2");
  });

  it("leads from the list of strokes to each of them, and marks the one of now", async () => {
    await page.getByText("All lines in their order").click();
    await page.getByRole("button", { name: steps[6]?.words ?? "", exact: true }).click();
    expect(await page.evaluate(() => location.hash)).toBe(steps[6]?.hash);
    expect(await page.locator("[aria-current='step']").allTextContents()).toEqual([
      steps[6]?.words,
    ]);
  });

  it("prints the whole page while someone draws along", async () => {
    await page.getByRole("button", { name: "Start drawing" }).click();
    expect(await isShown(page, ".plate .d-edge")).toBe(false);
    await page.emulateMedia({ media: "print" });
    expect(await isShown(page, ".plate .d-edge")).toBe(true);
    expect(await isShown(page, ".along-lines")).toBe(false);
    expect(await isShown(page, ".along")).toBe(false);
  });

  it("leads to files that are there", async () => {
    const recipe = await page.getByRole("link", { name: "Recipe, Markdown" }).getAttribute("href");
    expect(readFileSync(join(book, folder, recipe ?? ""), "utf8")).toBe(
      demoText("patterns/two-row-week.md"),
    );
    await page.getByRole("link", { name: "Edit this recipe" }).click();
    await page.locator('[data-part="recipe"]').waitFor();
    expect(page.url()).toContain("fit/recipe/index.html#");
    expect(await page.locator("#recipe-text").inputValue()).toContain("title: Week in two rows");
  });
});

describe("a table of marks", () => {
  const table =
    "Step\tDot\tmm\n1\t1\t12.5\n4\t4\t27.5\n5\t5\t32.5\n21\t21\t112.5\n22\t22\t117.5\n38\t38\t197.5";

  it.each([
    ["is copied", true, "The marks are copied."],
    [
      "is selected where copying is refused",
      false,
      "The marks are selected: copy them with Ctrl and C, or with Command and C.",
    ],
  ])("%s", async (_, isAllowed, words) => {
    const { page, close } = await watchedPage(testBrowser.browser);
    await page.addInitScript((allowed) => {
      const writeText = (text: string) => {
        document.documentElement.dataset.copied = text;
        return allowed ? Promise.resolve() : Promise.reject(new Error("no"));
      };
      Object.defineProperty(navigator, "clipboard", { value: { writeText } });
    }, isAllowed);
    await page.goto(home);
    await page.getByRole("button", { name: "Copy the marks down" }).click();
    await page.getByText(words).waitFor();
    expect(await page.evaluate(() => document.documentElement.dataset.copied)).toBe(table);
    const selected = await page.evaluate(() =>
      String(window.getSelection()).replace(/\s+/g, " ").trim(),
    );
    expect(selected).toBe(isAllowed ? "" : table.replace(/\s+/g, " "));
    await close();
  });
});

/** A finger over the drawing, from one place across to another. */
async function swipe(page: Page, from: number, to: number): Promise<void> {
  const session = await page.context().newCDPSession(page);
  const touch = (type: "touchStart" | "touchMove" | "touchEnd", x?: number) =>
    session.send("Input.dispatchTouchEvent", {
      type,
      touchPoints: x === undefined ? [] : [{ x, y: 250 }],
    });
  await touch("touchStart", from);
  await touch("touchMove", (from + to) / 2);
  await touch("touchMove", to);
  await touch("touchEnd");
  await session.detach();
}
