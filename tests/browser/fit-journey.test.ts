/** A keeper's way through the fit page, on a phone and on a large screen, from disk and from a web server. */
import type { Locator, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, it } from "vitest";
import { readNotebook } from "../../src/notebook/read-notebook.ts";
import { gateWay } from "../sweep/sweep-size.ts";
import { downloaded, onDisk, openTestBrowser } from "./test-browser.ts";
import { type WatchedPage, watchedPage } from "./watched-page.ts";

const book = inject("book");
const testBrowser = openTestBrowser(book);

const WIDTHS = [390, 1440] as const;
const PLACES = ["disk", "a sub-path of a server"] as const;

const WAYS = PLACES.map((place, index) => [place, WIDTHS[index] ?? 390] as const);

describe.each(gateWay(WAYS, 1))("from %s, %i px wide, a keeper", (place, width) => {
  let watched: WatchedPage;
  let page: Page;

  beforeAll(async () => {
    watched = await watchedPage(testBrowser.browser, {
      viewport: { width, height: 900 },
      serviceWorkers: "allow",
    });
    page = watched.page;
    const home = place === "disk" ? onDisk("/") : testBrowser.address;
    await page.goto(`${home}fit/index.html`);
  });

  afterAll(() => watched.close());

  it("says what the notebook is, and sees it counted", async () => {
    await page.getByLabel("Paper").selectOption("own");
    await page.getByLabel("Width (mm)", { exact: true }).fill("120");
    await page.getByLabel("Height (mm)").fill("180");
    await page.getByLabel("Dots across").fill("23");
    await page.getByLabel("Dots down").fill("35");
    await expectText(page.locator('[data-part="tally"]'), "23 across");
    expect(await svgTitle(page, "picture")).toBe("The grid of 120 × 180 mm, 23 × 35");
    expect(await svgTitle(page, "plate")).toContain("on 120 × 180 mm, 23 × 35");
  });

  it("is told at the field what is not valid, keeps the last good drawing, and gets no advice on it", async () => {
    const advice = page.getByRole("button", { name: "Count down from edge to edge" });
    expect(await advice.count()).toBe(1);
    const before = await page.locator('[data-part="plate"]').innerHTML();
    const field = page.getByLabel("Dots across");
    await field.fill("99");
    const words = page.locator("#dots-across-fault");
    await expectText(words, "99 dots at 5 mm need 490 mm; the sheet is 120 mm wide; 24 fit.");
    expect(await field.getAttribute("aria-invalid")).toBe("true");
    expect(await field.getAttribute("aria-describedby")).toBe("dots-across-fault");
    expect(await page.locator('[data-part="plate"]').innerHTML()).toBe(before);
    expect(await advice.count()).toBe(0);
    await field.fill("23");
    expect(await advice.count()).toBe(1);
    expect(await words.isHidden()).toBe(true);
    expect(await field.getAttribute("aria-invalid")).toBeNull();
  });

  it("takes a proposed way of counting, by keyboard", async () => {
    const take = page.getByRole("button", { name: "Count down from edge to edge" });
    await take.focus();
    await page.keyboard.press("Enter");
    expect(await page.getByLabel("Counted down").inputValue()).toBe("edge-to-edge");
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("count-down");
    expect(await take.count()).toBe(0);
  });

  it("sees which patterns fit, and which leave nothing over", async () => {
    await expectText(page.locator('[data-part="summary"]'), "fit this notebook, and");
    const shown = page.locator(".group .card:visible");
    const all = await shown.count();
    await page.getByRole("radio", { name: "nothing left over" }).check();
    const others = page.locator('.group .card:visible:not([data-state="even"])');
    await expect.poll(() => others.count()).toBe(0);
    const even = await shown.count();
    expect(even).toBeGreaterThan(0);
    expect(even).toBeLessThan(all);
    await page.getByRole("radio", { name: "all of them" }).check();
    const card = page.locator(".card").filter({ hasText: "Seed list" });
    await card.scrollIntoViewIfNeeded();
    await card.locator("img.thumb").waitFor({ state: "visible" });
    expect(await card.locator("img").getAttribute("src")).toMatch(/^data:image\/svg\+xml,/);
  });

  it("draws one of them large", async () => {
    const open = page.getByRole("button", { name: "Seed list", exact: true });
    await open.press("Enter");
    expect(await page.getByLabel("Pattern").inputValue()).toBe("seed-list");
    expect(await svgTitle(page, "plate")).toMatch(/^Seed list, on 120/);
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("pattern");
  });

  it("adds it to the strip, and is told what lies there", async () => {
    await page.getByRole("button", { name: "Add to strip", exact: true }).press("Enter");
    const added = page.locator('[data-part="added"]');
    await expectText(added, "Added to your strip: 1 layout is on it now.");
    const card = page.locator(".card").filter({ hasText: "Seed list" });
    expect(await card.getByRole("button", { name: "On your strip" }).count()).toBe(1);
    const week = page.locator(".card").filter({ hasText: "Week in two rows" });
    await week.getByRole("button", { name: "Add to strip" }).press("Enter");
    await expectText(page.locator('[data-part="status"]'), "2 layouts are on it now.");
    const href = await added.getByRole("link").getAttribute("href");
    expect(href).toBe("../strip/index.html");
  });

  it("saves files that the build reads as what the page shows", async () => {
    const notebook = await saved(page, "save-notebook");
    expect(notebook.name).toBe("120-180-mm-23-35.md");
    const read = readNotebook({ path: `notebooks/${notebook.name}`, text: notebook.text });
    if (!read.ok) throw new Error("the build refuses the notebook");
    expect(read.value.axes.across).toMatchObject({ dots: 23, count: "edge-to-dot" });
    expect(read.value.axes.down).toMatchObject({ dots: 35, count: "edge-to-edge" });
  });

  it("saves drawings and data as they are shown", async () => {
    const plan = await saved(page, "save-plan");
    expect(plan.name).toBe("seed-list-120-180-mm-23-35.json");
    expect(plan.text).toBe(await page.locator("#plan-data").textContent());
    const drawing = await saved(page, "save-page-svg");
    expect(drawing.text).toMatch(/^<svg xmlns="http:\/\/www.w3.org\/2000\/svg"/);
    expect(drawing.text).toContain("Seed list, on 120 × 180 mm");
  });

  it("saves PDF files, whose part is loaded only then", async () => {
    const scripts = () =>
      page.evaluate(() => [...document.scripts].map(({ src }) => src.split("/").pop()));
    expect(await scripts()).not.toContain("print.js");
    const sheet = await saved(page, "save-page-pdf");
    expect(await scripts()).toContain("print.js");
    expect(sheet.name).toBe("seed-list-120-180-mm-23-35.pdf");
    expect(sheet.text.slice(0, 8)).toBe("%PDF-1.7");
  });

  it("brings all of it back with a link, on a device that knows nothing", async () => {
    const field = page.getByLabel("Link to this notebook");
    await expect.poll(async () => (await field.inputValue()) === page.url()).toBe(true);
    const link = await field.inputValue();
    const other = await watchedPage(testBrowser.browser);
    await other.page.goto(link);
    expect(await other.page.locator("#plan-data").textContent()).toBe(
      await page.locator("#plan-data").textContent(),
    );
    expect(other.complaints).toEqual([]);
    await other.close();
  });

  it("finds it again on this device", async () => {
    const plan = await page.locator("#plan-data").textContent();
    await page.goto(page.url().replace(/#.*/, ""));
    await page.reload();
    expect(await page.locator("#plan-data").textContent()).toBe(plan);
  });

  it("opens files, good and bad", async () => {
    const good = "---\ntitle: Shed\npaper: A6\npitch: 5\ndots: [20, 28]\nfirstDot: [5, 5]\n---\n";
    await open(page, "shed.md", good);
    await expectText(page.locator('[data-part="tally"]'), "20 across");
    expect(JSON.parse((await page.locator("#plan-data").textContent()) ?? "").notebook).toBe(
      "shed",
    );
    await open(page, "shed.md", good.replace("A6", "A99"));
    const words = page.locator('[data-part="file-faults"]');
    await expectText(words, "notebooks/shed.md:3:8");
    await expectText(words, "paper: A99");
    expect(await page.getByLabel("Dots across").inputValue()).toBe("20");
  });

  it("is told of a broken link, and shown what was kept", async () => {
    const fit = page.url().replace(/#.*/, "");
    // From elsewhere, as one follows a link: else only the address changes, and the page is not opened anew.
    await page.goto("about:blank");
    await page.goto(`${fit}#v=1&paper=A5&pitch=wide&dots=26,38`);
    await expectText(
      page.locator('[data-part="notice"]'),
      "The value of “pitch” is not valid. This needs a number of millimetres from 0.5 to 100. What was kept on this device is shown instead.",
    );
  });

  it("meets nothing that does not belong to a page", async () => {
    expect(watched.complaints).toEqual([]);
    const sideways = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(sideways).toBeLessThanOrEqual(0);
  });
});

async function svgTitle(page: Page, part: string): Promise<string> {
  return (await page.locator(`[data-part="${part}"] svg > title`).textContent()) ?? "";
}

/** Waits until a part of the page says so. */
async function expectText(part: Locator, words: string): Promise<void> {
  await expect.poll(() => part.textContent()).toContain(words);
}

async function saved(page: Page, doing: string): Promise<{ name: string; text: string }> {
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.locator(`[data-do="${doing}"]`).press("Enter"),
  ]);
  const text = String(await downloaded(download));
  return { name: download.suggestedFilename(), text };
}

async function open(page: Page, name: string, text: string): Promise<void> {
  const file = { name, mimeType: "text/markdown", buffer: Buffer.from(text) };
  await page.getByLabel("Open the file of a notebook").setInputFiles(file);
}
