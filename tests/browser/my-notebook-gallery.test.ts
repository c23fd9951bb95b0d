/** The gallery on a notebook of the keeper's own: the first choice, drawn and filtered for it, with a way back. */
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { gateWay } from "../sweep/sweep-size.ts";
import { axeFindings } from "./axe-findings.ts";
import { keepNotebook, OWN, openOwnBook, withoutFiles } from "./own-book.ts";
import { openTestBrowser } from "./test-browser.ts";
import { watchedPage } from "./watched-page.ts";

const testBrowser = openTestBrowser();
const book = openOwnBook();

async function openGallery(width: number) {
  const watched = await watchedPage(testBrowser.browser, { viewport: { width, height: 900 } });
  await keepNotebook(watched.page, book.address("fit/index.html"));
  await watched.page.goto(book.address("patterns/index.html"));
  return watched;
}

/** The titles that are shown. */
async function shownOn(page: Page): Promise<readonly string[]> {
  return await page.locator(".card:visible h3").allTextContents();
}

const drawn = (page: Page) => page.locator('.card img[src^="data:image/svg+xml,%3Csvg%20"]');

describe.each(gateWay([390, 1440], 0))("%i px wide, the gallery", (width) => {
  it("opens on the keeper's notebook, and draws and counts for it", async () => {
    const { page, complaints, close } = await openGallery(width);
    const select = page.getByLabel("Notebook", { exact: true });
    expect(await select.locator("option").first().textContent()).toBe(
      "your notebook (A5, 24 × 35)",
    );
    expect(await select.inputValue()).toBe("_mine");
    await expect.poll(() => drawn(page).count()).toBeGreaterThan(2);
    // 25 columns do not fit 24 steps; 24 are three times 8; two with a gap of 1 are 11 and one is left over.
    const words = (title: string) =>
      page.locator(".card", { hasText: title }).locator("p [data-when]:visible").textContent();
    await expect.poll(() => words("Broad")).toContain("Does not fit");
    expect(await words("Thirds")).toContain("Nothing left over");
    expect(await words("Halves")).not.toMatch(/Does not fit|Nothing left over/);
    expect(await axeFindings(page)).toEqual([]);
    expect(complaints).toEqual([]);
    await close();
  });
});

describe("the gallery", () => {
  it("filters by how patterns come out on it, keeps that in the address, and leads back to the book's", async () => {
    const { page, close } = await openGallery(390);
    await page.getByRole("button", { name: "Filters" }).click();
    await page.getByRole("radio", { name: "Nothing left over" }).press("Space");
    await expect.poll(() => shownOn(page)).toEqual(["Thirds"]);
    expect(page.url()).toContain("#on=_mine&fit=even");
    await page.reload();
    await expect.poll(() => shownOn(page)).toEqual(["Thirds"]);
    await page.getByLabel("Notebook", { exact: true }).selectOption("plain");
    await expect.poll(() => page.url()).toContain("#on=plain");
    expect(await page.locator(".card img").first().getAttribute("src")).toContain("thumb.svg");
    await page.goto(book.address("patterns/index.html"));
    expect(await page.getByLabel("Notebook", { exact: true }).inputValue()).toBe("_mine");
    await close();
  });

  it("leads to pages that open on it, and on the book's where that was chosen", async () => {
    const { page, close } = await openGallery(1440);
    const link = page.getByRole("link", { name: "Halves" });
    expect(await link.getAttribute("href")).toBe(`../patterns/halves/plain/index.html#v=1&${OWN}`);
    await page.getByLabel("Notebook", { exact: true }).selectOption("small");
    expect(await link.getAttribute("href")).toBe(
      "../patterns/halves/small/index.html#v=1&on=small",
    );
    await link.focus();
    await page.keyboard.press("Enter");
    await expect.poll(() => page.locator(".lede").textContent()).toContain("Drawn for Small.");
    await close();
  });
});

it("a page of one of the book's notebooks leads to patterns on that", async () => {
  const { page, close } = await openGallery(1440);
  await page.goto(book.address("notebooks/small/index.html"));
  await page.getByRole("link", { name: "Halves" }).click();
  await expect.poll(() => page.url()).toContain("halves/small/index.html#v=1&on=small");
  await expect.poll(() => page.locator(".lede").textContent()).toContain("Drawn for Small.");
  await close();
});

it("shows the book's first notebook, and says why, where the engine does not come", async () => {
  const folder = withoutFiles(book.folder, ["assets/dates.js"]);
  const { page, close } = await watchedPage(testBrowser.browser);
  await keepNotebook(page, `file://${folder}/fit/index.html`);
  await page.goto(`file://${folder}/patterns/index.html`);
  const found = page.locator('[data-part="found"]');
  await expect.poll(() => found.textContent()).toContain("could not be worked out");
  expect(await page.getByLabel("Notebook", { exact: true }).inputValue()).toBe("plain");
  expect(await page.locator(".card img").first().getAttribute("src")).toContain("thumb.svg");
  await close();
});
