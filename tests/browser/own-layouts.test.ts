/** What a keeper does with a layout of their own: found among the book's, drawn for a month, put on a strip that another device reads, and looked back on. */
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, it } from "vitest";
import { gateWay } from "../sweep/sweep-size.ts";
import { axeFindings } from "./axe-findings.ts";
import { downloaded, onDisk, openTestBrowser } from "./test-browser.ts";
import { type WatchedPage, watchedPage } from "./watched-page.ts";

const testBrowser = openTestBrowser(inject("book"));

/** Three parts across 24 steps with a gap of 1: 7 · 7 · 7. */
const OWN =
  '---\ntitle: Sleep month\npurpose: tracker\ndates: month\npage: {rows: {tracks: [{label: "{month} {year}", steps: 2}, {columns: {count: 3, gap: 1, labels: [Sleep, Mood, Water]}}]}}\n---\nFor the nights.\n';
const setUp = (month: string, pages: string) =>
  `---\ntitle: Set-up of ${month}\ndates: ${month}\npages: [${pages}]\n---\n`;

const button = (page: Page, name: string) => page.getByRole("button", { name, exact: true });
const marksOn = async (page: Page, axis: string): Promise<readonly unknown[]> => {
  const data = JSON.parse((await page.locator("#strip-data").textContent()) ?? "null");
  const side = data?.sides.find((one: { readonly axis: string }) => one.axis === axis);
  return side?.lanes.flatMap(({ runs }: { readonly runs: readonly unknown[] }) => runs) ?? [];
};
const pick = (page: Page, files: Readonly<Record<string, string>>) =>
  page.getByLabel("Open files or a zip").setInputFiles(
    Object.entries(files).map(([name, content]) => ({
      name,
      mimeType: "text/markdown",
      buffer: Buffer.from(content),
    })),
  );

const WAYS = [
  ["a sub-path of a server", 390],
  ["disk", 1440],
] as const;

describe.each(gateWay(WAYS, 1))("from %s, %i px wide, a layout of one's own", (place, width) => {
  let watched: WatchedPage;
  let page: Page;
  let link: string;
  const home = () => (place === "disk" ? onDisk("/") : testBrowser.address);

  beforeAll(async () => {
    watched = await watchedPage(testBrowser.browser, { viewport: { width, height: 900 } });
    page = watched.page;
    await page.goto(`${home()}fit/index.html#v=1&paper=A5&pitch=5&dots=24,34`);
    await page.getByLabel("Dots down").fill("35");
    await page.locator('[data-part="mine"]', { hasText: "A5, 24 × 35" }).waitFor();
    await page.goto(`${home()}kept/index.html`);
    await page.locator('[data-part="no-patterns"]').waitFor();
    await pick(page, { "sleep-month.md": OWN });
    await page.locator('[data-part="kept-patterns"] a').waitFor();
  });

  afterAll(() => watched.close());

  it("is found in the gallery by its words and its purpose, and by no other", async () => {
    const own = page.locator('[data-part="own-cards"] .card');
    await page.goto(`${home()}patterns/index.html#for=tracker`);
    await expect.poll(() => own.count()).toBe(1);
    await page.goto(`${home()}patterns/index.html#for=week`);
    await expect.poll(() => page.locator('[data-part="yours"]').isVisible()).toBe(false);
    await page.goto(`${home()}patterns/index.html#find=mood`);
    await expect.poll(() => own.count()).toBe(1);
    expect(await page.locator('[data-part="found"]').textContent()).not.toContain("nearly");
    await page.goto(`${home()}patterns/index.html#find=frost`);
    await expect.poll(() => page.locator('[data-part="yours"]').isVisible()).toBe(false);
  });

  it("is drawn, drawn along and printed for the days that are picked", async () => {
    await page.goto(`${home()}fit/recipe/index.html#v=1&mine=sleep-month`);
    await page.locator(".editor-host").waitFor();
    await page.getByLabel("Month", { exact: true }).fill("2027-03");
    await expect
      .poll(() => page.locator('[data-part="plate"] svg > title').textContent())
      .toBe("Sleep month, March 2027, on A5, 24 × 35");
    expect(await page.locator("#plan-data").textContent()).toContain('"from": "2027-03-01"');
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      button(page, "Page, PDF").press("Enter"),
    ]);
    expect(download.suggestedFilename()).toBe("sleep-month-a5-24-35-2027-03.pdf");
    expect((await downloaded(download)).length).toBeGreaterThan(1_000);
    await button(page, "Start drawing").press("Enter");
    await page.keyboard.press("ArrowRight");
    expect(await page.locator('[data-part="count"]').textContent()).toMatch(/ of \d+$/);
    await button(page, "Show the whole page").press("Enter");
    expect(await axeFindings(page)).toEqual([]);
  });

  it("goes on the strip from its page, with its marks, and is found there by its words", async () => {
    await button(page, "Add to strip").press("Enter");
    await page.getByRole("link", { name: "Go to your strip" }).press("Enter");
    await expect
      .poll(() => marksOn(page, "across"))
      .toMatchObject([{ patterns: ["sleep-month"], marks: [0, 7, 8, 15, 16, 23] }]);
    await page.locator("#find").fill("water");
    const offers = page.locator("#offers li");
    await expect.poll(() => offers.first().textContent()).toBe("Sleep month Yours");
    await page.locator("#find").fill("halves");
    await page.keyboard.press("Enter");
    await expect.poll(() => marksOn(page, "across")).toHaveLength(2);
    link = await page.locator("#link").inputValue();
    expect(link.length).toBeLessThan(2_000);
  });

  it("comes along with the strip's link to a device that does not keep it", async () => {
    const other = await watchedPage(testBrowser.browser, { viewport: { width, height: 900 } });
    await other.page.goto(link);
    await expect.poll(() => marksOn(other.page, "across")).toEqual(await marksOn(page, "across"));
    await other.page.goto("about:blank");
    await other.page.goto(link.replace(/&own=.*$/, ""));
    await expect
      .poll(() => other.page.locator('[data-part="notice"]').textContent())
      .toContain("“sleep-month” is neither in this book nor kept on this device");
    await expect.poll(() => marksOn(other.page, "across")).toHaveLength(1);
    expect(other.complaints).toEqual([]);
    await other.close();
  });

  it("is copied, and counted by month over the set-ups that are kept", async () => {
    await page.goto(`${home()}kept/index.html`);
    await button(page, "Make a copy Sleep month").press("Enter");
    const titles = page.locator('[data-part="kept-patterns"] .kept-title a');
    await expect
      .poll(() => titles.allTextContents())
      .toEqual(["Sleep month", "Sleep month (copy)"]);
    const words = page.locator('[data-part="uses-words"]');
    await pick(page, {
      "one.md": setUp("2026-10", "sleep-month, two-row-week"),
      "two.md": setUp("2027-03", "sleep-month, sleep-month-copy"),
    });
    // October has the weeks from 28 September, 5, 12, 19 and 26 October.
    await expect
      .poll(() => words.textContent())
      .toBe(
        "2 set-ups, September 2026 to March 2027: 8 pages planned, none of them ticked as drawn.",
      );
    const rows = page.locator('[data-part="uses-table"] tbody tr');
    expect(
      await rows.allInnerTexts().then((all) => all.map((row) => row.split(/\s*\t\s*/).slice(0, 2))),
    ).toEqual([
      ["Week in two rows", "5"],
      ["Sleep month", "2"],
      ["Sleep month (copy)", "1"],
    ]);
    expect(await page.locator('[data-part="uses-unused"]').textContent()).toBe(
      "Not used in the three months up to 31 March 2027: Week in two rows (last until 1 November 2026).",
    );
    expect(await axeFindings(page)).toEqual([]);
    await page.getByRole("link", { name: "Make my strip from these" }).press("Enter");
    await expect.poll(() => marksOn(page, "across")).not.toEqual([]);
    expect(await page.locator('[data-side="down"] input.uses').first().inputValue()).toBe("5");
  });

  it("meets nothing that does not belong to a page", () => {
    expect(watched.complaints).toEqual([]);
  });
});
