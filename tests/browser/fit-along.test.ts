/** Drawing along on the fit page: the very steps of a pattern's own page, for whatever notebook is filled in. */
import type { Page } from "playwright-core";
import { describe, expect, inject, it } from "vitest";
import { axeFindings } from "./axe-findings.ts";
import { expectedSteps, type Told } from "./expected-steps.ts";
import { onDisk, openTestBrowser } from "./test-browser.ts";
import { watchedPage } from "./watched-page.ts";

const testBrowser = openTestBrowser();
const FIT = onDisk("fit/index.html", inject("few"));

async function fitPage(width: number) {
  const watched = await watchedPage(testBrowser.browser, { viewport: { width, height: 844 } });
  await watched.page.goto(FIT);
  return { ...watched, panel: watched.page.locator(".along") };
}

/** What is told now, without the address, which keeps the notebook. */
function shown(page: Page): Promise<Omit<Told, "hash">> {
  return page.evaluate(() => {
    const text = (part: string) =>
      document.querySelector(`.along [data-part="${part}"]`)?.textContent ?? "";
    const count = text("count");
    const d = document.querySelector(".along-lines .along-now")?.getAttribute("d") ?? "none";
    return { count, words: text("words"), d: /marks \d/i.test(count) ? "" : d };
  });
}

/** The tables of marks, each with its cells. */
function marks(page: Page): Promise<string[][]> {
  return page.evaluate(() =>
    [...document.querySelectorAll<HTMLTableElement>(".marks-table")].map((table) =>
      [...table.querySelectorAll("caption, th, td")].map((cell) => cell.textContent ?? ""),
    ),
  );
}

/** What the build put out for the same pattern and notebook. */
async function marksOfOwnPage(
  page: Page,
  { pattern, notebook }: { readonly pattern: string; readonly notebook: string },
): Promise<string[][]> {
  const own = await page.context().newPage();
  await own.goto(onDisk(`patterns/${pattern}/${notebook}/index.html`));
  const tables = await marks(own);
  expect(tables.length).toBeGreaterThan(1);
  await own.close();
  return tables;
}

async function begin(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Start drawing" }).click();
}

const JOURNEYS = [
  { pattern: "two-row-week", notebook: "a5", hand: "right", width: 390 },
  { pattern: "week-in-columns", notebook: "a5-dots", hand: "right", width: 1440 },
  { pattern: "two-row-week", notebook: "a6", hand: "left", width: 1440 },
] as const;

describe.each(JOURNEYS)("$pattern on $notebook by the $hand hand, $width px wide", (journey) => {
  const { pattern, notebook, hand, width } = journey;

  it("is drawn in the steps of its own page, each with its words and its line", async () => {
    const { page, complaints, close } = await fitPage(width);
    await page.locator("#start").selectOption(notebook);
    await page.getByLabel("Pattern", { exact: true }).selectOption(pattern);
    if (hand === "left") await page.getByLabel("I draw with my left hand").check();
    const steps = expectedSteps({ pattern, notebook, hand });
    const strokes = steps.filter(({ hash }) => hash.startsWith("#stroke")).length;
    const words = page.getByText(`First the marks, then ${strokes} lines, one at a time`);
    await words.waitFor();
    await page.getByText("All lines in their order").click();
    const listed = await page.locator(".order-of-hand li").allTextContents();
    expect(listed).toEqual(steps.map((step) => step.words));
    expect(await marks(page)).toEqual(await marksOfOwnPage(page, journey));
    await begin(page);
    const told = [await shown(page)];
    for (let index = 1; index < steps.length; index += 1) {
      await page.keyboard.press("ArrowRight");
      told.push(await shown(page));
    }
    expect(told).toEqual(steps.map(({ count, words: said, d }) => ({ count, words: said, d })));
    await page.keyboard.press("ArrowRight");
    expect(await shown(page)).toMatchObject({ count: `${strokes} of ${strokes} lines` });
    expect(complaints).toEqual([]);
    await close();
  });
});

describe.each([390, 1440])("while somebody draws, %i px wide", (width) => {
  it("the drawing is a stage with its words in sight, and all else waits", async () => {
    const { page, panel, close } = await fitPage(width);
    await begin(page);
    expect(await page.getByLabel("Dots across").isVisible()).toBe(false);
    expect(await page.locator(`[data-do="save-page-pdf"]`).isVisible()).toBe(false);
    const [plate, words] = await Promise.all([
      page.locator('[data-part="plate"]').boundingBox(),
      panel.locator('[data-part="words"]').boundingBox(),
    ]);
    expect(plate && plate.x >= 0 && plate.x + plate.width <= width).toBe(true);
    expect(words && words.y >= 0 && words.y + words.height <= 844).toBe(true);
    expect(await axeFindings(page)).toEqual([]);
    await page.keyboard.press("Escape");
    expect(await page.getByLabel("Dots across").isVisible()).toBe(true);
    expect(await page.locator(".along-lines > *").count()).toBe(0);
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe("Start drawing");
    await close();
  });
});

describe("what is drawn along", () => {
  it("is counted out anew with every notebook", async () => {
    const { page, panel, close } = await fitPage(1440);
    await page.getByLabel("Pattern", { exact: true }).selectOption("two-row-week");
    const first = () => panel.locator(".order-of-hand li").first().textContent();
    await page.getByText("All lines in their order").click();
    const before = await first();
    await page.getByLabel("Dots across").fill("24");
    await expect.poll(first).not.toBe(before);
    await begin(page);
    expect((await shown(page)).words).toBe(await first());
    await close();
  });

  it("is the pattern of an address that is set meanwhile", async () => {
    const { page, panel, close } = await fitPage(1440);
    await begin(page);
    await page.evaluate(() => {
      location.hash = "#v=1&paper=A6&pitch=4&dots=24,35&pattern=rain-gauge";
    });
    const start = panel.getByRole("button", { name: "Start drawing" });
    await start.waitFor();
    expect(await page.getByLabel("Pattern", { exact: true }).inputValue()).toBe("rain-gauge");
    expect(await page.locator(".along-lines > *").count()).toBe(0);
    await close();
  });

  it("has its marks copied as a table is", async () => {
    const { page, panel, close } = await fitPage(1440);
    await page.getByLabel("Pattern", { exact: true }).selectOption("two-row-week");
    await page.context().grantPermissions(["clipboard-read", "clipboard-write"]);
    await panel.getByText("The marks as tables").click();
    await panel.getByRole("button", { name: "Copy the marks across" }).click();
    await panel.getByText("The marks are copied.").waitFor();
    const copied = await page.evaluate(() => navigator.clipboard.readText());
    const [table = []] = await marks(page);
    const rows = copied.split("\n").map((row) => row.split("\t"));
    expect(rows[0]).toEqual(["Step", "Dot", "mm"]);
    expect(rows.flat()).toEqual(table.slice(1));
    await close();
  });

  it("waits while a field has a fault", async () => {
    const { page, panel, close } = await fitPage(1440);
    await page.getByLabel("Dots across").fill("99");
    const start = panel.getByRole("button", { name: "Start drawing" });
    expect(await start.getAttribute("aria-disabled")).toBe("true");
    await start.click({ force: true });
    expect(await panel.locator('[data-part="work"]').isVisible()).toBe(false);
    await close();
  });

  it("is nothing where the pattern does not fit", async () => {
    const { page, panel, close } = await fitPage(1440);
    await page.locator("#start").selectOption("a6");
    await page.getByLabel("Pattern", { exact: true }).selectOption("shed-wall");
    await panel.waitFor({ state: "hidden" });
    await page.locator("#start").selectOption("a5");
    await panel.waitFor({ state: "visible" });
    await close();
  });
});
