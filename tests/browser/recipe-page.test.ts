/** An author's way over the recipe page, and a keeper's over the measure page. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, it } from "vitest";
import { sayIssue } from "../../src/issue/words/say-issue.ts";
import { readRecipe } from "../../src/recipe/read/read-recipe.ts";
import { demoText } from "../setup/demo-files.ts";
import { gateWay } from "../sweep/sweep-size.ts";
import { downloaded, onDisk, openTestBrowser } from "./test-browser.ts";
import { type WatchedPage, watchedPage } from "./watched-page.ts";

const book = inject("book");
const WEEK = demoText("patterns/two-row-week.md");
const testBrowser = openTestBrowser(book);

const editorOf = (page: Page) => page.getByRole("textbox", { name: "The recipe" });
const written = (page: Page) => page.locator("#recipe-text").evaluate(textOf);
const textOf = (field: Element) => (field instanceof HTMLTextAreaElement ? field.value : "");
const titleDrawn = (page: Page) => page.locator('[data-part="plate"] svg > title').textContent();
const planOf = (page: Page) => page.locator("#plan-data").textContent();

const WAYS = [
  ["a sub-path of a server", 390],
  ["disk", 1440],
] as const;

describe.each(gateWay(WAYS, 0))("from %s, %i px wide, an author", (place, width) => {
  let watched: WatchedPage;
  let page: Page;

  beforeAll(async () => {
    watched = await watchedPage(testBrowser.browser, { viewport: { width, height: 900 } });
    page = watched.page;
    const home = place === "disk" ? onDisk("/") : testBrowser.address;
    await page.goto(`${home}fit/index.html#v=1&pattern=two-row-week`);
    await page.getByRole("link", { name: "Edit this recipe" }).click();
    await page.locator(".editor-host").waitFor();
  });

  afterAll(() => watched.close());

  it("starts from a pattern of the book, as it is written", async () => {
    expect(await written(page)).toBe(WEEK);
    expect(await titleDrawn(page)).toBe("Week in two rows, on A5, 26 × 38");
  });

  it("gets the build's plan under the file's name", async () => {
    await page.getByLabel("File name").fill("two-row-week");
    const plan = readFileSync(join(book, "patterns/two-row-week/a5/plan.json"), "utf8");
    expect(await planOf(page)).toBe(plan);
    await page.getByLabel("Notebook").selectOption("a6");
    const small = readFileSync(join(book, "patterns/two-row-week/a6/plan.json"), "utf8");
    expect(await planOf(page)).toBe(small);
  });

  it("sees each change drawn", async () => {
    const editor = editorOf(page);
    await editor.press("Control+Home");
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("End");
    await page.keyboard.type(" of mine");
    await expect.poll(() => titleDrawn(page)).toBe("Week in two rows of mine, on A6, pocket");
  });

  it("is told of a slip at its place, in the build's words", async () => {
    const before = await titleDrawn(page);
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("End");
    await page.keyboard.type("x");
    const text = (await written(page)) ?? "";
    const reading = readRecipe({ path: "patterns/two-row-week.md", text });
    const [issue] = reading.ok ? [] : reading.issues;
    if (!issue) throw new Error("the slip is none");
    const item = page.locator(".problems li");
    await expect.poll(() => item.count()).toBe(1);
    const { sentence, hint = "" } = sayIssue(issue);
    const plain = (words: string) => words.replaceAll("`", "");
    expect(await item.locator("p").allTextContents()).toEqual([plain(sentence), plain(hint)]);
    expect(await item.getByRole("button").textContent()).toBe("Line 3, column 10");
    expect(await page.locator(".cm-lintRange-error").textContent()).toBe("weekx");
    expect(await titleDrawn(page)).toBe(before);
  });

  it("goes to the place by a press, and mends it", async () => {
    await editorOf(page).press("Control+End");
    await page.locator(".problems button").press("Enter");
    await page.keyboard.type("month");
    await expect.poll(() => page.locator(".problems li").count()).toBe(0);
    await expect.poll(() => page.locator(".cm-lintRange-error").count()).toBe(0);
  });

  it("saves a file that the build takes", async () => {
    await page.getByLabel("File name").fill("week-of-mine");
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Save the recipe’s file" }).press("Enter"),
    ]);
    expect(download.suggestedFilename()).toBe("week-of-mine.md");
    const text = String(await downloaded(download));
    expect(text).toBe(await written(page));
    expect(readRecipe({ path: "patterns/week-of-mine.md", text })).toMatchObject({
      ok: true,
      value: { title: "Week in two rows of mine", purpose: "month", slug: "week-of-mine" },
    });
  });

  it("sends it as a link, and finds it again on this device", async () => {
    const field = page.getByLabel("Link to this recipe");
    await expect.poll(() => field.inputValue()).toContain("recipe=week-of-mine");
    const link = await field.inputValue();
    const plan = await planOf(page);
    const other = await watchedPage(testBrowser.browser);
    await other.page.goto(link);
    await other.page.locator(".editor-host").waitFor();
    await expect.poll(() => planOf(other.page)).toBe(plan);
    expect(other.complaints).toEqual([]);
    await other.close();
    await page.goto(page.url().replace(/#.*/, ""));
    await page.reload();
    await page.locator(".editor-host").waitFor();
    expect(await planOf(page)).toBe(plan);
  });

  it("meets nothing that does not belong to a page", () => {
    expect(watched.complaints).toEqual([]);
  });
});

describe("the recipe page without its editor", () => {
  it("does with a plain field", async () => {
    const { page, close } = await watchedPage(testBrowser.browser);
    await page.route("**/editor.js", (route) => route.abort());
    await page.goto(`${testBrowser.address}fit/recipe/index.html#v=1&from=seed-list`);
    const field = page.getByLabel("The recipe");
    await page.locator(".plate svg").waitFor();
    const text = await field.inputValue();
    await field.fill(text.replace("purpose: list", "purpose: lst"));
    const item = page.locator(".problems li");
    expect(await item.count()).toBe(1);
    await item.getByRole("button").click();
    const selected = await field.evaluate((element) =>
      element instanceof HTMLTextAreaElement
        ? element.value.slice(element.selectionStart, element.selectionEnd)
        : "",
    );
    expect(selected).toBe("lst");
    await field.fill(text.replace("title: ", "title: My "));
    expect(await titleDrawn(page)).toMatch(/^My /);
    await close();
  });
});

describe.each(gateWay([390, 1440], 1))("a keeper who measures, %i px wide", (width) => {
  it("puts the screen, the printer and the pitch right", async () => {
    const { page, complaints, close } = await watchedPage(testBrowser.browser, {
      viewport: { width, height: 900 },
    });
    await page.goto(onDisk("measure/index.html"));
    await page.getByLabel("upright").check();
    const slider = page.getByLabel("Width of the card");
    await slider.fill("269.9");
    const rule = page.locator('[data-part="true"] svg');
    const ruled = () => rule.evaluate((svg) => svg.getBoundingClientRect().width);
    expect(await ruled()).toBeCloseTo(108 * 5, 1);
    await page.getByRole("button", { name: "Wider" }).press("Enter");
    expect(await ruled()).toBeCloseTo((108 * 270.4) / 53.98, 1);

    await page.getByLabel("Bar along the short side (mm)").fill("97");
    expect(await page.locator('[data-part="printer-line"]').textContent()).toBe(
      "printer: {x: 1.0309, y: 1}",
    );
    await page.getByRole("button", { name: "Keep it on this device" }).click();

    await page.getByLabel("Steps between them").fill("20");
    await page.getByLabel("Length (mm)").fill("80.2");
    const link = page.getByRole("link", { name: "Take 4 mm to the fit page" });
    await link.click();
    await expect.poll(() => page.getByLabel("Pitch (mm)").inputValue()).toBe("4");
    expect(await page.getByLabel("Stretch x").inputValue()).toBe("1.0309");

    await page.goto(onDisk("measure/index.html"));
    expect(await ruled()).toBeCloseTo((108 * 270.4) / 53.98, 1);
    expect(complaints).toEqual([]);
    await close();
  });
});
