/** The front page answers how a notebook divides: typed, tapped, by keys, printed, sent, and remembered. */
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { onDisk, openTestBrowser } from "./test-browser.ts";
import { watchedPage } from "./watched-page.ts";

const testBrowser = openTestBrowser();

const data = async (page: Page) =>
  JSON.parse((await page.locator("#division-data").textContent()) ?? "");
const answer = (page: Page) => page.locator('[data-part="answer"]').textContent();

describe.each([390, 1440])("on a screen %d px wide", (width) => {
  it("thirds with a gap of 1 of 24 dots are read off after three fields, and kept everywhere", async () => {
    const { page, close, complaints } = await watchedPage(testBrowser.browser, {
      viewport: { width, height: 844 },
    });
    await page.goto(onDisk("index.html"));
    await page.getByLabel("Dots across").fill("24");
    await page.getByLabel("Dots down").fill("35");
    expect(await answer(page)).toBe("Thirds with a gap of 1: 7 · 7 · 7");
    expect(await data(page)).toMatchObject({ sizes: [7, 7, 7], marks: [0, 7, 8, 15, 16, 23] });
    expect(await page.locator('[data-part="division-plate"] svg').count()).toBe(1);
    await page.getByRole("button", { name: "Quarters, gap 0: 6 steps" }).click();
    expect(await answer(page)).toBe("Quarters: 6 · 6 · 6 · 6");
    expect(await page.getByLabel("Parts").inputValue()).toBe("4");
    await page.getByText("Other parts, gaps and margins").click();
    await page.getByLabel("Divide it").selectOption("down");
    expect(await data(page)).toMatchObject({ axis: "down", sizes: [8, 8, 8, 8], leftover: 3 });
    const width100 = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(width100).toBeLessThanOrEqual(width);
    await page.goto(onDisk("guide/index.html"));
    expect(await page.locator('[data-part="mine"]').textContent()).toBe("A5, 24 × 35");
    await page.goto(onDisk("index.html"));
    expect(await page.getByLabel("Dots across").inputValue()).toBe("24");
    expect(complaints).toEqual([]);
    await close();
  });
});

describe("what is not valid", () => {
  it("is said at its field, and the drawing is marked as the one before", async () => {
    const { page, close } = await watchedPage(testBrowser.browser);
    await page.goto(onDisk("index.html"));
    const before = await answer(page);
    await page.getByText("Other parts, gaps and margins").click();
    await page.getByLabel("Parts").fill("0");
    await expect.poll(() => page.locator("#parts-fault").isVisible()).toBe(true);
    expect(await answer(page)).toBe(before);
    const plate = page.locator('[data-part="division-plate"]');
    expect(await plate.getAttribute("class")).toContain("stale");
    await page.getByLabel("Parts").fill("90");
    expect(await answer(page)).toContain("need at least");
    expect(await page.locator("#division-data").textContent()).toBe("null");
    await close();
  });
});

describe("its address", () => {
  it("brings notebook and division to another device", async () => {
    const { page, close } = await watchedPage(testBrowser.browser);
    await page.goto(
      `${onDisk("index.html")}#v=1&paper=B6&pitch=5&dots=24,35&first=5,5&parts=5&gap=1`,
    );
    expect(await answer(page)).toBe("Fifths with a gap of 1: 4 · 4 · 4 · 4 · 4");
    expect(await page.getByLabel("Parts").isVisible()).toBe(true);
    await close();
  });

  it("that is broken is said, and the usual is shown", async () => {
    const { page, close } = await watchedPage(testBrowser.browser);
    await page.goto(`${onDisk("index.html")}#v=1&parts=many`);
    expect(await page.locator('[data-part="notice"]').textContent()).toContain("cannot be read");
    expect(await answer(page)).toContain("Thirds");
    await close();
  });
});

describe("this month and this week", () => {
  it("are drawn for the notebook by the device's day, and their links open what is seen", async () => {
    const { page, close, complaints } = await watchedPage(testBrowser.browser, {
      viewport: { width: 390, height: 844 },
    });
    await page.clock.setFixedTime(new Date(2027, 1, 3, 12));
    await page.goto(onDisk("index.html"));
    await page.getByRole("heading", { name: "This month and this week" }).scrollIntoViewIfNeeded();
    const links = page.locator("[data-today] a");
    await expect
      .poll(() => links.allTextContents())
      .toEqual(["Month on one page, February 2027", "Week in two rows, week 5 of 2027"]);
    // 1 February 2027 is a Monday, and the month has 28 days: four rows, as `cal 2 2027` prints them.
    // A drawing's numbers of one size stand in one element.
    const words = await page.locator('[data-today="month-grid"] svg text').allTextContents();
    expect(words.filter((word) => word.endsWith("262728"))).toHaveLength(1);
    await page.getByLabel("Dots across").fill("24");
    const month = page.getByRole("link", { name: "Month on one page, February 2027" });
    await expect.poll(() => month.getAttribute("href")).toContain("dots=24,38&dates=2027-02");
    await month.click();
    await page.getByText("February 2027: 28 days").waitFor();
    expect(await page.locator(".lede").textContent()).toContain("A5, 24 × 38");
    expect(complaints).toEqual([]);
    await close();
  });
});

describe("its print", () => {
  it("is the drawing alone, at actual size", async () => {
    const { page, close } = await watchedPage(testBrowser.browser);
    await page.addInitScript(() => {
      window.print = () => {};
    });
    await page.goto(onDisk("index.html"));
    await page.getByRole("button", { name: "Print it at actual size" }).click();
    await page.emulateMedia({ media: "print" });
    const paper = await page
      .locator(".print-out svg .d-paper")
      .evaluate((sheet) => (sheet.getBoundingClientRect().width / 96) * 25.4);
    expect(paper).toBeCloseTo(148, 0);
    await close();
  });
});
