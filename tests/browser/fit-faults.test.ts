/** While a field is not valid, what is drawn is an old drawing: it looks so, it says so, and nothing of it leaves the page. */
import type { Page } from "playwright-core";
import { afterEach, beforeEach, describe, expect, inject, it } from "vitest";
import { onDisk, openTestBrowser } from "./test-browser.ts";
import { type WatchedPage, watchedPage } from "./watched-page.ts";

const testBrowser = openTestBrowser();

const FROM = "#v=1&paper=A5&pitch=5&dots=26,38&pattern=two-row-week";

const SHOWN = {
  status: '[data-part="plan-status"]',
  tally: '[data-part="tally"]',
  summary: '[data-part="summary"]',
} as const;

const OLD = /: the drawing still shows what was written before\.$/;

const isDim = (page: Page, selector: string) =>
  page.locator(selector).evaluate((element) => Number(getComputedStyle(element).opacity) < 0.6);

/** What a page hands over is noted, not handed over: a print, and files under their names. */
async function noteHandedOver(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const handed: string[] = [];
    Object.assign(window, { handed, print: () => handed.push("print") });
    HTMLAnchorElement.prototype.click = function () {
      handed.push(this.download);
    };
  });
}

const handedOver = (page: Page) =>
  page.evaluate(() => [...(Reflect.get(window, "handed") ?? [])].map(String));

/** Presses a button as a person can, also one that is held back. */
async function press(page: Page, doing: string): Promise<void> {
  await page.locator(`[data-do="${doing}"]`).focus();
  await page.keyboard.press("Enter");
}

describe("on the fit page", () => {
  let watched: WatchedPage;
  let page: Page;

  beforeEach(async () => {
    watched = await watchedPage(testBrowser.browser, { viewport: { width: 390, height: 900 } });
    page = watched.page;
    await noteHandedOver(page);
    await page.goto(onDisk(`fit/index.html${FROM}`, inject("few")));
    await page.locator(".drawn .plate svg").waitFor();
  });

  afterEach(async () => {
    expect(watched.complaints).toEqual([]);
    await watched.close();
  });

  it.each([390, 1440])(
    "an empty field leaves an old drawing that looks and is called so, and no old number, %i px wide",
    async (width) => {
      await page.setViewportSize({ width, height: 900 });
      expect(await page.locator(SHOWN.tally).textContent()).toMatch(/26 across.*38 down/);
      await page.getByLabel("Dots across").fill("");
      expect(await page.locator(SHOWN.status).textContent()).toMatch(OLD);
      for (const plate of [".drawn .plate", ".ledger .little"])
        expect(await isDim(page, plate), plate).toBe(true);
      expect(await page.locator(SHOWN.tally).textContent()).not.toMatch(/\d/);
      expect(await page.locator('[data-part="plan-summary"]').isVisible()).toBe(false);
      expect(await page.locator(SHOWN.summary).textContent()).toContain("as it was written before");
      expect(await isDim(page, ".card .frame >> nth=0")).toBe(true);
    },
  );

  it("a mended field has all of it back", async () => {
    await page.getByText("fit this notebook").waitFor();
    const status = await page.locator(SHOWN.status).textContent();
    const summary = await page.locator(SHOWN.summary).textContent();
    await page.getByLabel("Dots across").fill("x");
    await page.getByLabel("Dots across").fill("26");
    expect(await page.locator(SHOWN.status).textContent()).toBe(status);
    await expect.poll(() => page.locator(SHOWN.summary).textContent()).toBe(summary);
    expect(await page.locator(SHOWN.tally).textContent()).toMatch(/26 across.*38 down/);
    expect(
      await page.locator(".stale, .stale-cards, [aria-disabled=true][data-needs]").count(),
    ).toBe(0);
    await press(page, "save-plan");
    expect(await handedOver(page)).toEqual(["two-row-week-a5.json"]);
  });

  it("another pattern is drawn on the old notebook, and is called old as well", async () => {
    await page.getByLabel("Dots down").fill("");
    await page.getByLabel("Pattern", { exact: true }).selectOption("seed-list");
    expect(await page.locator(".drawn .plate svg > title").textContent()).toMatch(/^Seed list/);
    expect(await page.locator(SHOWN.status).textContent()).toMatch(OLD);
  });

  const NOTEBOOKS = [
    "print-page",
    "save-page-pdf",
    "save-page-svg",
    "save-plan",
    "save-notebook",
    "copy-link",
  ];

  it.each([
    ["Dots across", NOTEBOOKS],
    ["Stretch x", ["print-page", "save-page-pdf"]],
  ])(
    "while “%s” is not valid, nothing goes out by it, and why is said at the press",
    async (label, held) => {
      await page.getByLabel(label).fill("x");
      for (const doing of held) {
        await press(page, doing);
        const said = await page.locator('[data-part="status"]').textContent();
        expect(said, doing).toContain(`Correct “${label}” first.`);
        expect(
          await page.getByLabel(label).evaluate((field) => field === document.activeElement),
        ).toBe(true);
      }
      expect(await handedOver(page)).toEqual([]);
    },
  );

  it("what does not go by the field is saved all the same", async () => {
    await page.getByLabel("Stretch x").fill("x");
    await press(page, "save-plan");
    await press(page, "save-notebook");
    expect(await handedOver(page)).toEqual(["two-row-week-a5.json", "a5.md"]);
  });

  it("a fault that is folded away is unfolded by the press", async () => {
    const fold = page.getByText("Binding, ruling, name");
    await fold.click();
    await page.getByLabel("Pitch down (mm)").fill("x");
    await fold.click();
    await press(page, "save-notebook");
    expect(await page.getByLabel("Pitch down (mm)").isVisible()).toBe(true);
  });

  it("a first dot beyond the sheet is told where it was typed", async () => {
    const field = page.getByLabel("First dot, left (mm)");
    await field.fill("200");
    expect(await page.locator("#first-left-fault").textContent()).toBe(
      "The first dot lies 200 mm in, and the sheet is 148 mm wide.",
    );
    expect(await page.locator("#dots-across-fault").isVisible()).toBe(false);
    expect(await field.getAttribute("aria-describedby")).toBe("first-left-fault");
  });

  it("a pitch in inches is counted, and said in millimetres", async () => {
    await page.getByLabel("Dots across").fill("20");
    await page.getByLabel("Dots down").fill("30");
    await page.getByLabel("Pitch (mm)").fill("1/4 in");
    expect(await page.locator("#pitch-read").textContent()).toBe("1/4 in is 6.35 mm.");
    expect(await page.getByLabel("Pitch (mm)").getAttribute("aria-describedby")).toBe("pitch-read");
    const pitch = () => new URLSearchParams(new URL(page.url()).hash.slice(1)).get("pitch");
    await expect.poll(pitch).toBe("6.35");
    await page.getByLabel("Pitch (mm)").fill("6.35");
    expect(await page.locator("#pitch-read").isVisible()).toBe(false);
  });

  it("a file name that is not valid is offered as one that does", async () => {
    await page.getByText("Binding, ruling, name").click();
    await page.getByLabel("File name", { exact: true }).fill("My Book");
    await page.getByRole("button", { name: "Make it my-book" }).press("Enter");
    expect(await page.getByLabel("File name", { exact: true }).inputValue()).toBe("my-book");
    await press(page, "save-notebook");
    expect(await handedOver(page)).toEqual(["my-book.md"]);
  });
});

describe("on the recipe page", () => {
  it("a file name that is not valid is told at its field, and nothing is saved under another", async () => {
    const { page, complaints, close } = await watchedPage(testBrowser.browser);
    await noteHandedOver(page);
    await page.goto(onDisk("fit/recipe/index.html", inject("few")));
    await page.locator(".editor-host").waitFor();
    const field = page.getByLabel("File name");
    await field.fill("My Slug!");
    await page.getByRole("textbox", { name: "The recipe" }).press("Control+End");
    await page.keyboard.type("More words.");
    for (const doing of ["save-recipe", "save-page-svg", "save-plan"]) {
      await press(page, doing);
      expect(await page.locator('[data-part="status"]').textContent()).toContain("“File name”");
    }
    expect(await handedOver(page)).toEqual([]);
    expect(await field.inputValue()).toBe("My Slug!");
    expect(await field.getAttribute("aria-invalid")).toBe("true");
    await page.getByRole("button", { name: "Make it my-slug" }).press("Enter");
    expect(await field.inputValue()).toBe("my-slug");
    expect(await page.locator("#recipe-slug-fault").isVisible()).toBe(false);
    await press(page, "save-recipe");
    expect(await handedOver(page)).toEqual(["my-slug.md"]);
    expect(complaints).toEqual([]);
    await close();
  });

  it("letters over all that is selected are written without a style that the page refuses", async () => {
    const { page, complaints, close } = await watchedPage(testBrowser.browser);
    await page.goto(onDisk("fit/recipe/index.html#v=1&from=two-row-week", inject("few")));
    await page.locator(".editor-host").waitFor();
    const editor = page.getByRole("textbox", { name: "The recipe" });
    for (const text of ["{[()]}", "title: x"]) {
      await editor.press("Control+a");
      await page.keyboard.type(text);
    }
    await page.keyboard.press("Shift+Home");
    await page.keyboard.type("y");
    const written = page.locator("#recipe-text");
    expect(await written.evaluate((area) => Reflect.get(area, "value"))).toBe("y");
    await page.keyboard.press("Control+z");
    expect(await written.evaluate((area) => Reflect.get(area, "value"))).toBe("title: x");
    expect(complaints).toEqual([]);
    await close();
  });
});

describe("on the measure page", () => {
  it("a bar that is not valid leaves no correction to keep", async () => {
    const { page, complaints, close } = await watchedPage(testBrowser.browser);
    await page.goto(onDisk("measure/index.html"));
    const bar = page.getByLabel("Bar along the short side (mm)");
    await bar.fill("97");
    await bar.fill("970");
    expect(await page.locator('[data-part="printer-line"]').textContent()).toBe("–");
    await press(page, "keep-printer");
    expect(await page.locator('[data-part="status"]').textContent()).toContain("Correct “");
    const kept = await page.evaluate(() => Object.keys(localStorage));
    expect(kept.filter((name) => name.endsWith("version"))).toHaveLength(1);
    expect(kept.filter((name) => name.endsWith("printer"))).toEqual([]);
    expect(complaints).toEqual([]);
    await close();
  });
});
