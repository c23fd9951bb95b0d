/** What the fit page and the strip page print is in true size, and stretched as the printer needs it. */
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { onDisk, openTestBrowser } from "./test-browser.ts";
import { type WatchedPage, watchedPage } from "./watched-page.ts";

const testBrowser = openTestBrowser();
let watched: WatchedPage;
let page: Page;

/** A millimetre in CSS pixels (CSS Values and Units, section 6.2). */
const MM = 96 / 25.4;

/** Opens the page with a print dialog that nobody sees: what is to be printed stays in the document. */
async function openPage(path: string, hash: string): Promise<void> {
  watched = await watchedPage(testBrowser.browser);
  page = watched.page;
  await page.addInitScript(() => {
    window.print = () => {};
  });
  await page.goto(onDisk(path) + hash);
  await page.emulateMedia({ media: "print" });
}

/** Widths and heights of the printed drawings, in mm. */
function printedMm(): Promise<readonly (readonly [number, number])[]> {
  return page.locator(".print-out svg").evaluateAll(
    (drawings, mm) =>
      drawings.map((drawing) => {
        const { width, height } = drawing.getBoundingClientRect();
        return [width / mm, height / mm] as const;
      }),
    MM,
  );
}

const press = (doing: string) => page.locator(`[data-do="${doing}"]`).dispatchEvent("click");
const pagesOf = (pdf: Buffer) => pdf.toString("latin1").match(/\/Type \/Page\b/g)?.length ?? 0;
const boxOf = (pdf: Buffer) =>
  (/\/MediaBox \[([^\]]+)\]/.exec(pdf.toString("latin1"))?.[1] ?? "").split(" ").map(Number);

describe("a printed strip", () => {
  it.each([
    ["A4", [297, 210]],
    ["letter", [279.4, 215.9]],
  ] as const)("lies on a sheet of %s on its side, in true size", async (paper, [width, height]) => {
    await openPage("strip/index.html", "#v=1&across=two-row-week,seed-list&down=two-row-week");
    await page.locator("#sheet").evaluate((select, name) => {
      if (select instanceof HTMLSelectElement) select.value = name;
    }, paper);
    await press("print-strip");
    const [[w = 0, h = 0] = []] = await printedMm();
    expect(w).toBeCloseTo(width, 1);
    expect(h).toBeCloseTo(height, 1);
    const pdf = await page.pdf({ preferCSSPageSize: true });
    expect(pagesOf(pdf)).toBe(1);
    const [, , right = 0, top = 0] = boxOf(pdf);
    expect((right / 72) * 25.4).toBeCloseTo(width, 0);
    expect((top / 72) * 25.4).toBeCloseTo(height, 0);
    await watched.close();
  });

  it("is stretched along the sides that the printer draws in", async () => {
    await openPage("strip/index.html", "#v=1&across=two-row-week&down=two-row-week");
    for (const [id, factor] of [
      ["stretch-x", "1.02"],
      ["stretch-y", "0.99"],
    ] as const) {
      await page.locator(`#${id}`).evaluate((field, text) => {
        if (!(field instanceof HTMLInputElement)) return;
        field.value = text;
        field.dispatchEvent(new Event("input", { bubbles: true }));
      }, factor);
    }
    await press("print-strip");
    const [[w = 0, h = 0] = []] = await printedMm();
    expect(w).toBeCloseTo(297 * 0.99, 1);
    expect(h).toBeCloseTo(210 * 1.02, 1);
    expect(pagesOf(await page.pdf({ preferCSSPageSize: true }))).toBe(1);
    await watched.close();
  });
});

describe("a printed pattern", () => {
  it("is alone on its sheet, in true size, below a line of 100 mm", async () => {
    await openPage("fit/index.html", "#v=1&paper=A5&pitch=5&dots=26,38&pattern=two-row-week");
    await press("print-page");
    const paper = await page
      .locator(".print-out svg .d-paper")
      .evaluate((sheet, mm) => sheet.getBoundingClientRect().width / mm, MM);
    expect(paper).toBeCloseTo(148, 0);
    const line = await page
      .locator(".hundred")
      .evaluate((element, mm) => element.getBoundingClientRect().width / mm, MM);
    expect(line).toBeCloseTo(100, 1);
    expect(pagesOf(await page.pdf({ preferCSSPageSize: true }))).toBe(1);
    await watched.close();
  });

  it("leaves nothing behind when the print is over", async () => {
    await openPage("fit/index.html", "");
    await press("print-page");
    await page.evaluate(() => window.dispatchEvent(new Event("afterprint")));
    expect(await page.locator(".print-out").count()).toBe(0);
    expect(await page.evaluate(() => document.body.className)).not.toContain("printing-out");
    expect(watched.complaints).toEqual([]);
    await watched.close();
  });
});
