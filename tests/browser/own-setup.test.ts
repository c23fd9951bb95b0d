/** A set-up of one's own: made in the page in few clicks and keys, the very one that the rules' text gives, gone on with, kept, saved and sent. */
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { readSetup } from "../../src/recipe/read/read-setup.ts";
import { setUpByTheText, type World, type WrittenSetup } from "../oracle/set-up-by-the-text.ts";
import { gateWay } from "../sweep/sweep-size.ts";
import { openHand } from "./open-hand.ts";
import { pdfContent } from "./pdf-content.ts";
import { downloaded, onDisk, openTestBrowser } from "./test-browser.ts";
import { watchedPage } from "./watched-page.ts";

const testBrowser = openTestBrowser();

const dataText = async (page: Page) => (await page.locator("#setup-data").textContent()) ?? "";

/** The data, once the pages of the last change are worked out. */
async function dataFor(page: Page, month: string) {
  await expect.poll(async () => JSON.parse(await dataText(page))?.dates?.from).toBe(`${month}-01`);
  return JSON.parse(await dataText(page));
}

/** What each takes on 24 × 35 dots, by looking: all are single pages there. */
const WORLD: World = {
  weekBegins: 1,
  binding: "left",
  patterns: {
    "month-opening": { span: "month", takes: () => "page" },
    "month-grid": { span: "month", takes: () => "page" },
    "two-row-week": { span: "week", takes: () => "page" },
    "side-column-notes": { takes: () => "page" },
    "habit-tracker": { span: "month", takes: () => "page" },
  },
};

const PAGES: WrittenSetup["pages"] = [
  "month-opening",
  "month-grid",
  { each: "week", pages: ["two-row-week", "side-column-notes"] },
  "habit-tracker",
];

const TITLES: Readonly<Record<string, string>> = {
  "month-opening": "Opening page of a month",
  "month-grid": "Month on one page",
  "two-row-week": "Week in two rows",
  "side-column-notes": "Notes with a side column",
  "habit-tracker": "Habit tracker for a month",
};

/** Compares the page's data with the set-up that the text of the rules gives. */
function expectByTheText(data: Record<string, unknown>, setup: WrittenSetup): void {
  const expected = setUpByTheText(setup, WORLD);
  const titled = expected.contents.map((line) => {
    const slug = line.title.replace("Of ", "");
    return { ...line, title: TITLES[slug] };
  });
  expect(data.dates).toEqual(setup.dates);
  expect(data.pages).toEqual(expected.pages);
  expect(data.contents).toEqual(titled);
  expect(data.uses).toEqual(expected.uses);
  expect(data.left_out).toEqual([]);
}

describe.each(gateWay([390, 1440], 0))("on a screen %i px wide, a keeper", (width) => {
  it("sets March 2027 up from page 43 in under 40 clicks and keys, prints it, and goes on to April", async () => {
    const viewport = { width, height: 844 };
    const { page, complaints, close } = await watchedPage(testBrowser.browser, { viewport });
    await page.addInitScript(() => {
      window.print = () => document.body.setAttribute("data-printed", "yes");
    });
    await page.clock.setFixedTime(new Date("2027-02-26T20:00:00"));
    await page.goto(onDisk("index.html"));
    const hand = openHand(page);
    for (const [label, dots] of [
      ["Dots across", "24"],
      ["Dots down", "35"],
    ] as const) {
      await hand.click(page.getByLabel(label));
      await hand.type("", "Control+a");
      await hand.type(dots);
    }
    await hand.click(page.getByRole("link", { name: "Set a month up" }));
    await hand.click(page.getByLabel("First free page"));
    await hand.type("43");
    await hand.click(page.getByLabel("Add a layout"));
    await hand.type("ope", "Enter");
    await hand.type("gri", "Enter");
    await hand.type("", "ArrowDown", "Enter");
    await hand.type("two r", "Enter");
    await hand.type("sid", "Enter");
    await hand.click(page.getByLabel("at the end"));
    await hand.type("hab", "Enter");
    await hand.click(page.getByRole("button", { name: "Print the page list" }));
    expect(hand.count()).toBeLessThan(40);
    await expect.poll(() => page.locator("body").getAttribute("data-printed")).toBe("yes");

    const march = { from: "2027-03-01", to: "2027-03-31" };
    const data = await dataFor(page, "2027-03");
    expect(data.notebook).toBe("a5-24-35");
    expectByTheText(data, { dates: march, first: 43, pages: PAGES });
    const [, ...places] = await page.locator(".facing .drawing").all();
    await expect.poll(() => page.locator(".facing .drawing use").count()).toBeLessThan(8);
    expect(places.length + 1).toBe(data.pages.length);
    const over = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(over).toBeLessThanOrEqual(0);

    const next = 43 + data.pages.length;
    await page.getByRole("button", { name: `Next: April 2027, from page ${next}` }).click();
    const april = await dataFor(page, "2027-04");
    const days = { from: "2027-04-01", to: "2027-04-30" };
    expectByTheText(april, { dates: days, first: next, pages: PAGES });
    expect(await page.getByLabel("First free page").inputValue()).toBe(`${next}`);

    // March is kept beside it, and what lies in use is April.
    await page.goto(onDisk("kept/index.html"));
    const kept = page.locator('[data-part="kept-setups"] .kept-title');
    expect(await kept.allInnerTexts()).toEqual(["April 2027 on the set-up page", "March 2027"]);
    await kept.getByRole("link", { name: "March 2027" }).click();
    expect(await dataFor(page, "2027-03")).toEqual(data);
    expect(complaints).toEqual([]);
    await close();
  });
});

const LINK = `setup/index.html#v=1&paper=A5&pitch=5&dots=24,35&dates=2027-03&from=43&pages=month-opening,month-grid,habit-tracker`;

describe("what comes", () => {
  it("is ordered by keys and buttons into blocks and out of them, taken out and taken back", async () => {
    await testBrowser.onPage(onDisk(LINK), {}, async (page) => {
      const names = () =>
        page
          .locator('[data-part="pages"] .name > span')
          .evaluateAll((all) => all.map((one) => one.firstChild?.textContent?.trim() ?? ""));
      await page.getByLabel("Add a layout").fill("each w");
      await page.getByLabel("Add a layout").press("Enter");
      expect((await names()).at(-1)).toBe("Each week");
      await page
        .getByRole("button", { name: "Move Habit tracker for a month down" })
        .press("Enter");
      const inBlock = page.locator(".block .name > span").filter({ hasText: "Habit tracker" });
      expect(await inBlock.count()).toBe(1);
      expect(await page.locator('[data-slug="2.0"] [data-entry="fault"]').textContent()).toContain(
        "is for a month, and stands inside each week",
      );
      expect(await dataText(page)).toBe("null");
      await page.keyboard.press("Alt+ArrowUp");
      expect(await page.locator(":focus").textContent()).toContain(
        "Move Habit tracker for a month",
      );
      expect(await names()).toEqual([
        "Opening page of a month",
        "Month on one page",
        "Habit tracker for a month",
        "Each week",
      ]);
      await page.getByRole("button", { name: "Take Month on one page out" }).press("Enter");
      await page.waitForURL((url) => !url.hash.includes("month-grid"));
      await page.getByRole("button", { name: "Undo" }).press("Enter");
      expect((await names())[1]).toBe("Month on one page");
      const grips = page.locator('[data-part="pages"] > ol > li > .grip');
      const [from, to] = [await grips.nth(0).boundingBox(), await grips.nth(2).boundingBox()];
      if (!from || !to) throw new Error("the list has no place on the page");
      await page.mouse.move(from.x + 5, from.y + 5);
      await page.mouse.down();
      await page.mouse.move(from.x + 5, to.y + to.height, { steps: 5 });
      await page.mouse.up();
      expect((await names())[2]).toBe("Opening page of a month");
    });
  });

  it("is said of each layout, live, and a number that is not valid holds the buttons", async () => {
    await testBrowser.onPage(onDisk(LINK), {}, async (page) => {
      const pages = page.locator('[data-slug="2"] [data-entry="pages"]');
      await expect.poll(() => pages.textContent()).toBe("1 page, 45");
      await page.getByLabel("First free page").fill("50");
      await expect.poll(() => pages.textContent()).toBe("1 page, 52");
      await page.getByLabel("First free page").fill("0");
      expect(await page.locator("#first-fault").textContent()).toContain("from 1 to 9999");
      await page.locator('[data-do="save-setup"]').press("Enter");
      expect(await page.locator('[data-part="status"]').textContent()).toContain("First free page");
      await page.getByLabel("First free page").fill("9");
      await page.getByRole("textbox", { name: "Dates" }).fill("2027-13");
      expect(await page.locator("#dates-fault").textContent()).toBe("Months go from 01 to 12.");
      await page.getByRole("textbox", { name: "Dates" }).fill("2027-04/2027-05");
      await page.waitForURL((url) => url.hash.includes("dates=2027-04%2F2027-05"));
      await expect.poll(() => pages.textContent()).toBe("2 pages, 13–14");
    });
  });

  it("names a layout that nobody has, and does not lose it", async () => {
    const link = onDisk("setup/index.html#v=1&dates=2027-03&pages=month-grid,no-such");
    await testBrowser.onPage(link, {}, async (page) => {
      const fault = page.locator('[data-slug="1"] [data-entry="fault"]');
      await expect.poll(() => fault.textContent()).toContain("“no-such”");
      expect(await dataText(page)).toBe("null");
      await page.getByLabel("First free page").fill("7");
      await page.waitForURL((url) => url.hash.includes("from=7&pages=month-grid,no-such"));
    });
  });
});

describe("the set-up", () => {
  it("is saved as its file, which opens again, and as pages in true size", async () => {
    const { page, complaints, close } = await watchedPage(testBrowser.browser);
    await page.goto(onDisk(LINK));
    await expect.poll(() => dataText(page)).toContain('"setup": "march-2027"');
    const before = await dataText(page);
    const save = async (doing: string) => {
      const [download] = await Promise.all([
        page.waitForEvent("download"),
        page.locator(`[data-do="${doing}"]`).click(),
      ]);
      return { name: download.suggestedFilename(), bytes: await downloaded(download) };
    };
    const file = await save("save-setup");
    expect(file.name).toBe("march-2027.md");
    const text = String(file.bytes);
    const reading = readSetup({ path: "setups/march-2027.md", text });
    expect(reading.ok && [reading.value.first, reading.value.pages.length]).toEqual([43, 3]);
    const pdf = await save("save-pages-pdf");
    expect(pdf.name).toBe("march-2027-a5-24-35.pdf");
    expect(pdfContent(pdf.bytes).match(/\/Type \/Page\b/g)?.length ?? 0).toBe(3);
    await page.goto(onDisk("setup/index.html#v=1&dates=2027-05&pages=month-grid"));
    await page.getByLabel("Open the file of a set-up").setInputFiles({
      name: "march-2027.md",
      mimeType: "text/markdown",
      buffer: Buffer.from(text),
    });
    await expect.poll(() => dataText(page)).toContain('"from": "2027-03-01"');
    expect(JSON.parse(await dataText(page)).contents).toEqual(JSON.parse(before).contents);
    expect(complaints).toEqual([]);
    await close();
  });

  it("of the book opens as one's own, and the next is made from it", async () => {
    const { page, complaints, close } = await watchedPage(testBrowser.browser);
    await page.goto(onDisk("setups/march-on-the-lane/a5/index.html"));
    await page.getByRole("link", { name: "Change this set-up" }).click();
    const data = await dataFor(page, "2027-03");
    await page.goBack();
    const next = page.getByRole("link", { name: "Make the next one from this: April 2027" });
    await next.click();
    const april = await dataFor(page, "2027-04");
    expect(april.pages[0].number).toBe(data.pages.at(-1).number + 1);
    expect(complaints).toEqual([]);
    await close();
  });

  it("keeps what is ticked, for the days and the first page that it has", async () => {
    const { page, complaints, close } = await watchedPage(testBrowser.browser);
    await page.goto(onDisk(LINK));
    const box = page.getByLabel("43 Opening page of a month");
    await box.check();
    await page.locator("#setup-title").evaluate((field) => {
      field.closest("details")?.setAttribute("open", "");
    });
    await page.getByLabel("Set-up name").fill("Spring");
    await page.waitForURL((url) => url.hash.includes("setup=Spring"));
    await page.reload();
    await expect.poll(() => box.isChecked()).toBe(true);
    await page.getByLabel("First free page").fill("45");
    await expect.poll(() => page.getByLabel("45 Opening page of a month").isChecked()).toBe(false);
    expect(complaints).toEqual([]);
    await close();
  });

  it("gets a layout more from the layout's own page", async () => {
    const { page, complaints, close } = await watchedPage(testBrowser.browser);
    await page.goto(onDisk("patterns/month-grid/a5/index.html"));
    await page.getByRole("link", { name: "Add to set-up" }).click();
    await expect.poll(() => dataText(page)).toContain('"pattern": "month-grid"');
    await page.waitForURL((url) => url.hash.includes("pages=month-grid"));
    await page.reload();
    await expect.poll(() => dataText(page)).toContain('"pattern": "month-grid"');
    expect(JSON.parse(await dataText(page)).uses).toEqual([{ pattern: "month-grid", times: 1 }]);
    expect(complaints).toEqual([]);
    await close();
  });
});

describe("its pages are drawn one after another", () => {
  it.each([
    ["one's own", LINK, 43],
    ["the book's", "setups/march-on-the-lane/a5/index.html", 42],
  ])("from %s", async (_, path, first) => {
    const { page, complaints, close } = await watchedPage(testBrowser.browser);
    await page.goto(onDisk(path));
    await page.locator(".facing a").first().click();
    await page.waitForURL((url) => url.hash.includes(`setup=${first}`));
    const way = page.locator('[data-part="setup-way"]');
    await expect.poll(() => way.textContent()).toContain(`Page ${first} of the set-up.`);
    await page.getByRole("button", { name: "Start drawing" }).click();
    await page.waitForURL((url) => /setup=\d+&marks=/.test(url.hash));
    const next = way.getByRole("link", { name: "Next page of the set-up" });
    const told = (await next.textContent()) ?? "";
    const number = Number(/set-up: (\d+),/.exec(told)?.[1]);
    expect(number).toBeGreaterThan(first);
    await next.click();
    await page.waitForURL((url) => url.hash.includes(`setup=${number}`));
    await expect.poll(() => way.textContent()).toContain(`Page ${number} of the set-up.`);
    // What is drawn is the set-up's own plan, for the side that the page lies on.
    await page.waitForFunction(() => document.querySelector("#plan-data")?.textContent !== "null");
    const plan = JSON.parse((await page.locator("#plan-data").textContent()) ?? "null");
    expect(plan.pages[0].side).toBe(number % 2 === 0 ? "left" : "right");
    const title = (await page.getByRole("heading", { level: 1 }).textContent()) ?? "nothing";
    expect(told).toContain(title.trim());
    await way.getByRole("link", { name: "All its pages" }).click();
    await page.locator(".facing").first().waitFor();
    expect(page.url()).toContain(path.replace(/#.*/, ""));
    expect(complaints).toEqual([]);
    await close();
  });
});
