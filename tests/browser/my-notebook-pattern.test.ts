/** A pattern's page on a notebook of the keeper's own: all of it is worked out for that, and leads back to the book's. */
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { gateWay } from "../sweep/sweep-size.ts";
import { axeFindings } from "./axe-findings.ts";
import { keepNotebook, OTHER, OWN, openOwnBook, planOn, withoutFiles } from "./own-book.ts";
import { downloaded, openTestBrowser } from "./test-browser.ts";
import { watchedPage } from "./watched-page.ts";

const testBrowser = openTestBrowser();
const book = openOwnBook();

async function openPattern(path: string, width = 1440) {
  const watched = await watchedPage(testBrowser.browser, { viewport: { width, height: 900 } });
  await keepNotebook(watched.page, book.address("fit/index.html"));
  await watched.page.goto(book.address(path));
  return watched;
}

const HALVES = "patterns/halves/plain/index.html";
const lede = (page: Page) => page.locator(".lede").textContent();
const whose = (page: Page) => page.locator('[data-part="whose"]').textContent();
const shown = (page: Page) => expect.poll(async () => (await planOn(page))?.notebook ?? null);

describe.each(gateWay([390, 1440], 1))("%i px wide, a pattern", (width) => {
  it("is drawn for the keeper's notebook, and for the book's when that is asked", async () => {
    const { page, complaints, close } = await openPattern(HALVES, width);
    await shown(page).toBe("a5-24-35");
    // (24 − 1) ÷ 2 is 11, and one step is left over.
    const [first] = (await planOn(page)).pages;
    expect(first.splits[0]).toMatchObject({ length: 24, sizes: [11, 11], gaps: [1], after: 1 });
    expect(await lede(page)).toBe(
      "Drawn for your notebook, A5, 24 × 35. Across: 1 step left over, at the end.",
    );
    expect(await whose(page)).toBe("Show it for Plain.");
    expect(page.url()).toContain(`#v=1&${OWN}`);
    expect(await axeFindings(page)).toEqual([]);
    await page.getByRole("link", { name: "Plain", exact: true }).first().press("Enter");
    await expect.poll(() => lede(page)).toContain("Drawn for Plain.");
    expect(await whose(page)).toBe("Show it for your notebook, A5, 24 × 35.");
    expect(page.url()).toContain("#v=1&on=plain");
    await page.reload();
    expect(await lede(page)).toContain("Drawn for Plain.");
    await page.goBack();
    await expect.poll(() => lede(page)).toContain("your notebook");
    expect(complaints).toEqual([]);
    await close();
  });

  it("moves nothing while it turns to the keeper's notebook", async () => {
    const { page, close } = await watchedPage(testBrowser.browser, {
      viewport: { width, height: 900 },
    });
    await page.addInitScript(() => {
      const shifts = { sum: 0 };
      Object.assign(window, { shifts });
      new PerformanceObserver((list) => {
        for (const entry of list.getEntries()) shifts.sum += Number(Reflect.get(entry, "value"));
      }).observe({ type: "layout-shift", buffered: true });
    });
    await keepNotebook(page, book.address("fit/index.html"));
    // Its own sheet is far smaller than the one that is drawn in its place.
    await page.goto(book.address("patterns/halves/small/index.html"));
    await shown(page).toBe("a5-24-35");
    await page.waitForFunction(() => !document.documentElement.classList.contains("turning"));
    const sum = await page.evaluate(async () => {
      for (let frames = 0; frames < 4; frames += 1)
        await new Promise((resolve) => requestAnimationFrame(resolve));
      await new Promise((resolve) => setTimeout(resolve, 50));
      return Number(Reflect.get(Reflect.get(window, "shifts"), "sum"));
    });
    expect(sum).toBeLessThan(0.02);
    await close();
  });
});

describe("a pattern on the keeper's notebook", () => {
  it("is drawn along stroke by stroke, with its own marks", async () => {
    const { page, close } = await openPattern(HALVES);
    await shown(page).toBe("a5-24-35");
    await page.getByRole("button", { name: "Start drawing" }).press("Enter");
    const words = page.locator('[data-part="words"]');
    await expect.poll(() => words.textContent()).toContain("11, 12 and 23");
    await page.keyboard.press("ArrowRight");
    await expect.poll(() => page.url()).toContain(`#v=1&${OWN}&marks=2`);
    const marks = page.locator('[data-part="live-marks"] tbody').first();
    await expect
      .poll(() => marks.locator("tr td:first-of-type").allTextContents())
      .toEqual(["11", "12", "23"]);
    await close();
  });

  it("is saved as it is drawn, and fills the row of notebooks and the patterns near it", async () => {
    const { page, complaints, close } = await openPattern(HALVES);
    await shown(page).toBe("a5-24-35");
    for (const [name, file] of [
      ["Page, SVG", "halves-a5-24-35.svg"],
      ["Page, PDF", "halves-a5-24-35.pdf"],
      ["Plan, JSON", "halves-a5-24-35.json"],
    ] as const) {
      const saved = page.waitForEvent("download");
      await page.getByRole("link", { name }).click();
      const download = await saved;
      expect(download.suggestedFilename()).toBe(file);
      const text = (await downloaded(download)).toString("utf8");
      if (file.endsWith(".json")) expect(JSON.parse(text)).toEqual(await planOn(page));
      else expect(text).toMatch(file.endsWith(".pdf") ? /^%PDF/ : /^<svg|^<\?xml/);
    }
    const own = page.locator(".lineup li").first();
    expect(await own.locator("b").textContent()).toBe("A5, 24 × 35");
    const near = page.locator(".kin .card", { hasText: "Thirds" });
    await expect.poll(() => near.locator("p").textContent()).toBe("Nothing left over");
    expect(complaints).toEqual([]);
    await close();
  });

  it("says why it does not fit, on a page that was built for one that it does", async () => {
    const { page, close } = await openPattern("patterns/broad/plain/index.html");
    await expect.poll(() => lede(page)).toContain("It does not fit your notebook, A5, 24 × 35.");
    expect(await page.getByRole("heading", { name: "Make it fit" }).isVisible()).toBe(true);
    expect(await page.getByRole("heading", { name: "Downloads" }).isVisible()).toBe(false);
    expect(await page.getByRole("heading", { name: "The strip" }).isVisible()).toBe(false);
    await close();
  });

  it("has all that a fitting one has, on a page that was built for one that it does not fit", async () => {
    const { page, close } = await openPattern("patterns/wide/small/index.html");
    await expect.poll(() => lede(page)).toContain("Drawn for your notebook");
    for (const name of ["Draw along", "Downloads", "The marks", "The strip"])
      expect(await page.getByRole("heading", { name, exact: true }).isVisible(), name).toBe(true);
    await close();
  });

  it("keeps the notebook while days are picked", async () => {
    const { page, close } = await openPattern("patterns/month-grid/small/index.html");
    await shown(page).toBe("a5-24-35");
    await page.getByLabel("Month", { exact: true }).fill("2027-05");
    await expect.poll(async () => (await planOn(page)).dates?.from).toBe("2027-05-01");
    // 35 − 2 − 1 are 32: six rows of 5, two left over. 24 are seven columns of 3, three left over.
    const [page1] = (await planOn(page)).pages;
    expect(page1.splits[0].sizes).toEqual([2, 1, 5, 5, 5, 5, 5, 5]);
    expect(page1.splits[1].sizes).toEqual([3, 3, 3, 3, 3, 3, 3]);
    await expect.poll(() => page.url()).toContain(`#v=1&${OWN}&dates=2027-05`);
    await page.reload();
    await expect.poll(async () => (await planOn(page))?.dates?.from).toBe("2027-05-01");
    expect((await planOn(page)).notebook).toBe("a5-24-35");
    await close();
  });
});

describe("an address with another notebook", () => {
  it("is a visit: it is shown, and the kept one stays", async () => {
    const { page, close } = await openPattern(`${HALVES}#v=1&${OTHER}`);
    await shown(page).toBe("a6-20-28");
    expect(await lede(page)).toMatch(/^Drawn for A6, 20 × 28\./);
    expect(await whose(page)).toBe("Show it for Plain or for your notebook, A5, 24 × 35.");
    expect(await page.locator('[data-part="mine"]').textContent()).toBe("A5, 24 × 35");
    await page.getByRole("link", { name: "your notebook, A5, 24 × 35" }).click();
    await shown(page).toBe("a5-24-35");
    await close();
  });

  it("shows what was built and says what is wrong where it cannot be read", async () => {
    const { page, close } = await watchedPage(testBrowser.browser);
    await page.goto(book.address(`${HALVES}#v=1&paper=A5&pitch=5&dots=0,35`));
    await page.locator('[data-part="notice"]').waitFor();
    expect(await page.locator('[data-part="notice"]').textContent()).toContain("cannot be read");
    expect(await lede(page)).toContain("Drawn for Plain.");
    await close();
  });

  it("shows what was built where the engine does not come", async () => {
    const folder = withoutFiles(book.folder, ["assets/dates.js"]);
    const { page, close } = await watchedPage(testBrowser.browser);
    await page.goto(`file://${folder}/${HALVES}#v=1&${OWN}`);
    await expect
      .poll(() => page.locator('[data-part="status"]').textContent())
      .toContain("could not be worked out");
    expect(await page.locator(".lede").isVisible()).toBe(true);
    expect(await lede(page)).toContain("Drawn for Plain.");
    await close();
  });
});
