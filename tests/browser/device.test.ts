/** What a browser keeps for a book: shared by its tabs, apart from another book's, taken over from before, or refused. */
import type { BrowserContext, Page } from "playwright-core";
import { afterEach, beforeEach, describe, expect, inject, it } from "vitest";
import { openTestBrowser } from "./test-browser.ts";
import { newDevice } from "./watched-page.ts";

const book = inject("few");
const testBrowser = openTestBrowser(book);

/** A notebook of 20 dots across, and a pattern on it. */
const TWENTY = "#v=1&paper=A6&pitch=5&dots=20,28&pattern=seed-list";
/** As the fit page wrote it while it had the strip. */
const WITH_STRIP = `${TWENTY}&across=rain-gauge&sfile=rain`;

let context: BrowserContext;
let complaints: string[];
beforeEach(async () => {
  complaints = [];
  context = await newDevice(testBrowser.browser);
  context.on("weberror", (error) => complaints.push(error.error().message));
});
afterEach(async () => {
  await context.close();
  expect(complaints).toEqual([]);
});

async function openFit(hash = ""): Promise<Page> {
  const page = await context.newPage();
  await page.goto(`${testBrowser.address}fit/index.html${hash}`);
  await page.locator(".plate svg").first().waitFor();
  return page;
}

const dots = (page: Page) => page.locator("#dots-across");
const untilDots = (page: Page, count: string) =>
  expect.poll(() => dots(page).inputValue()).toBe(count);
async function openStrip(hash = ""): Promise<Page> {
  const page = await context.newPage();
  await page.goto(`${testBrowser.address}strip/index.html${hash}`);
  await page.locator(".plate svg").first().waitFor();
  return page;
}

/** Put on the side across by its name. */
async function carry(page: Page, words: string): Promise<void> {
  await page.getByLabel("across", { exact: true }).check();
  const field = page.getByLabel("Layout or division");
  await field.fill(words);
  await field.press("Enter");
}
const carried = (page: Page) =>
  page
    .locator('[data-side="across"] li')
    .evaluateAll((items) => items.map((item) => item.getAttribute("data-slug")));
/** Waits until what the page shows is in its address, and so on the device. */
const untilKept = (page: Page, part: string) => page.waitForURL((url) => url.hash.includes(part));

describe("two tabs on the strip page", () => {
  it("have one strip: what both put on it is on it in both, and what another page adds", async () => {
    const [one, two] = [await openStrip(), await openStrip()];
    await carry(one, "seed list");
    await expect.poll(() => carried(two)).toEqual(["seed-list"]);
    await carry(two, "rain gauge");
    await expect.poll(() => carried(one)).toEqual(["seed-list", "rain-gauge"]);
    const pattern = await context.newPage();
    await pattern.goto(`${testBrowser.address}patterns/two-row-week/a5/index.html`);
    await pattern.getByRole("button", { name: "Add to strip" }).click();
    await expect
      .poll(() => pattern.locator('[data-part="added"]').textContent())
      .toContain("3 layouts are on it now");
    const all = ["seed-list", "rain-gauge", "two-row-week"];
    for (const page of [one, two, await openStrip()])
      await expect.poll(() => carried(page)).toEqual(all);
  });

  it("go on with the notebook that is said on another page", async () => {
    const [fit, strip] = [await openFit(), await openStrip()];
    await dots(fit).fill("23");
    await expect.poll(() => strip.locator('[data-part="for"]').textContent()).toContain("23 ×");
  });

  it("keep the strip that was kept when a link brings another", async () => {
    const mine = await openStrip();
    await carry(mine, "seed list");
    await untilKept(mine, "across=seed-list");
    const visit = await openStrip("#v=1&across=rain-gauge");
    await carry(visit, "two-row");
    await untilKept(visit, "two-row-week");
    expect(await carried(mine)).toEqual(["seed-list"]);
    await visit.getByRole("button", { name: "Show mine" }).click();
    await expect.poll(() => carried(visit)).toEqual(["seed-list"]);
  });
});

describe("two tabs on the fit page", () => {
  it("have one notebook, and each its own pattern", async () => {
    const [one, two] = [await openFit(), await openFit()];
    await one.locator("#pattern").selectOption("seed-list");
    await two.locator("#pattern").selectOption("rain-gauge");
    await dots(one).fill("24");
    await untilDots(two, "24");
    expect(await one.locator("#pattern").inputValue()).toBe("seed-list");
    expect(await two.locator("#pattern").inputValue()).toBe("rain-gauge");
    await untilKept(two, "dots=24");
  });

  it("keep both notebooks in sight where one came with a link", async () => {
    const mine = await openFit();
    await dots(mine).fill("24");
    await untilKept(mine, "dots=24");
    const visit = await openFit(TWENTY);
    await visit.locator("#pattern").selectOption("rain-gauge");
    await untilKept(visit, "pattern=rain-gauge");
    await untilDots(await openFit(), "24");
    await dots(visit).fill("19");
    await untilKept(visit, "dots=19");
    await untilDots(await openFit(), "19");
    await untilDots(mine, "24");
    await dots(mine).fill("23");
    await untilKept(mine, "dots=23");
    await untilDots(visit, "19");
  });

  it("print with the correction that was kept last", async () => {
    const fit = await openFit();
    const measure = await context.newPage();
    await measure.goto(`${testBrowser.address}measure/index.html`);
    await measure.getByLabel("Bar along the short side (mm)").fill("97");
    await measure.getByRole("button", { name: "Keep it on this device" }).click();
    await expect.poll(() => fit.getByLabel("Stretch x").inputValue()).toBe("1.0309");
  });
});

describe("two tabs on the recipe page", () => {
  it("have one recipe, and lose no letter of it", async () => {
    const open = async () => {
      const page = await context.newPage();
      await page.goto(`${testBrowser.address}fit/recipe/index.html`);
      await page.locator(".editor-host").waitFor();
      return page;
    };
    const field = (page: Page) => page.locator("#recipe-text");
    const text = (page: Page) => field(page).evaluate((area) => Reflect.get(area, "value"));
    const typeAtEnd = async (page: Page, words: string) => {
      await page.getByRole("textbox", { name: "The recipe" }).press("Control+End");
      await page.keyboard.type(words);
    };
    const one = await open();
    await typeAtEnd(one, "First.");
    await untilKept(one, "text=");
    const two = await open();
    await typeAtEnd(two, " Second.");
    await expect.poll(() => text(one)).toContain("First. Second.");
    await typeAtEnd(one, " Third.");
    await expect.poll(() => text(two)).toContain("First. Second. Third.");
  });
});

it("a notebook that was kept before there was a version is still there", async () => {
  const before = await context.newPage();
  await before.goto(`${testBrowser.address}assets/icon.svg`);
  await before.evaluate((hash) => localStorage.setItem("spanbook.fit", hash), WITH_STRIP);
  const page = await openFit();
  await untilDots(page, "20");
  expect(await page.locator("#pattern").inputValue()).toBe("seed-list");
  expect(await carried(await openStrip())).toEqual(["rain-gauge"]);
  await dots(page).fill("19");
  await untilKept(page, "dots=19");
  await untilDots(await openFit(), "19");
});

it.each([
  ["at once", 0],
  ["as the page is about to write its own", 400],
])("an address that is set %s after a key is shown, and what was typed is kept", async (_, ms) => {
  const page = await openFit();
  await page.evaluate((wait) => {
    const field = document.querySelector("#dots-across");
    if (!(field instanceof HTMLInputElement)) throw new Error("the page has no such field");
    field.value = "24";
    field.dispatchEvent(new InputEvent("input", { bubbles: true }));
    const end = performance.now() + wait;
    while (performance.now() < end);
    location.hash = "#v=1&pattern=rain-gauge";
  }, ms);
  await expect.poll(() => page.locator("#pattern").inputValue()).toBe("rain-gauge");
  expect(new URL(page.url()).hash).toBe("#v=1&pattern=rain-gauge");
  await untilDots(await openFit(), "24");
});

describe("a browser that refuses to keep anything", () => {
  it("shows the page as ever, which says so", async () => {
    await context.addInitScript(() => {
      Object.defineProperty(window, "localStorage", {
        get() {
          throw new DOMException("refused", "SecurityError");
        },
      });
    });
    const page = await openFit();
    const [kept, not] = ["kept", "not-kept"].map((part) => page.locator(`[data-part="${part}"]`));
    expect([await kept?.isVisible(), await not?.isVisible()]).toEqual([false, true]);
    await dots(page).fill("24");
    await untilKept(page, "dots=24");
    expect(await page.locator('[data-part="tally"]').textContent()).toContain("24 across");
  });

  it("is not one that keeps", async () => {
    const page = await openFit();
    const [kept, not] = ["kept", "not-kept"].map((part) => page.locator(`[data-part="${part}"]`));
    expect([await kept?.isVisible(), await not?.isVisible()]).toEqual([true, false]);
  });
});
