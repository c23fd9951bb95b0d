/** A set-up's page keeps what was ticked on the device, for each notebook by itself, and copies its contents. */
import { describe, expect, it } from "vitest";
import { onDisk, openTestBrowser } from "./test-browser.ts";
import { watchedPage } from "./watched-page.ts";

const testBrowser = openTestBrowser();
const PAGE = "setups/march-on-the-lane/a5/index.html";

describe("the page of a set-up", () => {
  it("keeps its ticks, and shows those of another tab", async () => {
    const { page, close, complaints } = await watchedPage(testBrowser.browser);
    await page.goto(onDisk(PAGE));
    const first = page.getByLabel("42 Opening page of a month");
    await first.check();
    const drawn = page.locator('[data-part="drawn"]');
    expect(await drawn.textContent()).toMatch(/^1 of \d+ pages drawn\.$/);
    const tab = await page.context().newPage();
    await tab.goto(onDisk(PAGE));
    expect(await tab.getByLabel("42 Opening page of a month").isChecked()).toBe(true);
    await tab.getByLabel("42 Opening page of a month").uncheck();
    await expect.poll(() => first.isChecked()).toBe(false);
    await first.check();
    await page.goto(onDisk("setups/march-on-the-lane/a6/index.html"));
    expect(await page.locator(".ticks input:checked").count()).toBe(0);
    await page.goto(onDisk(PAGE));
    expect(await first.isChecked()).toBe(true);
    expect(complaints).toEqual([]);
    await close();
  });

  it("prints each page's number on the line of its words, also where it is the only one of its layout", async () => {
    const { page, close } = await watchedPage(testBrowser.browser);
    await page.setViewportSize({ width: 718, height: 1000 });
    await page.goto(onDisk(PAGE));
    await page.emulateMedia({ media: "print" });
    const ticks = await page.locator(".ticks label").evaluateAll((labels) =>
      labels.map((label) => {
        const [number, words] = [...label.querySelectorAll("b, span")].map(
          (part) => part.getClientRects()[0] ?? new DOMRect(),
        );
        return { words: label.textContent, before: (words?.left ?? 0) - (number?.right ?? 0) };
      }),
    );
    const perLayout = await page
      .locator(".ticks")
      .evaluateAll((lists) => lists.map((list) => list.childElementCount));
    expect(perLayout).toContain(1);
    expect(ticks.length).toBeGreaterThan(10);
    expect(ticks.filter(({ before }) => before < 0 || before > 30)).toEqual([]);
    await close();
  });
});
