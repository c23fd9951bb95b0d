/** Picking days on the fit page and on a pattern's page: what is drawn, said, kept in the address, saved and printed. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { askProgram } from "../setup/ask-program.ts";
import { TINY } from "../setup/tiny-content.ts";
import { axeFindings } from "./axe-findings.ts";
import { openTestBrowser } from "./test-browser.ts";
import { type WatchedPage, watchedPage } from "./watched-page.ts";

const pattern = (title: string, kind: string, page: string) =>
  `---\ntitle: ${title}\npurpose: ${kind}\ndates: ${kind}\npage: ${page}\n---\nDays.\n`;
const MONTH =
  '{rows: {tracks: [{label: "{month} {year}", steps: 2}, {columns: {count: weekdays, each: {label: "{weekday}"}}, steps: 1}, {repeat: weeks, columns: {count: days, each: {label: "{day}"}}}]}}';
const FILES: Readonly<Record<string, string>> = {
  ...TINY,
  "book.yaml": `${TINY["book.yaml"]}calendar: {utcOffset: "+01:00"}\n`,
  "patterns/month-grid.md": pattern("Month grid", "month", MONTH),
  "patterns/tall-month.md": pattern(
    "Tall month",
    "month",
    "{rows: {tracks: [{repeat: weeks, steps: 7}]}}",
  ),
  "patterns/moon.md": pattern("Moon", "month", "{rows: {count: days, each: {label: '{moon}'}}}"),
  "patterns/week.md": pattern(
    "Week",
    "week",
    "{rows: {count: days, each: {label: '{weekday} {day}'}}}",
  ),
};

const folder = mkdtempSync(join(tmpdir(), "spanbook-days-"));
const testBrowser = openTestBrowser();
let watched: WatchedPage;
const address = (path: string) => `${pathToFileURL(join(folder, "book", path)).href}`;

beforeAll(async () => {
  for (const [path, text] of Object.entries(FILES)) {
    mkdirSync(dirname(join(folder, "content", path)), { recursive: true });
    writeFileSync(join(folder, "content", path), text);
  }
  const paths = [`--content=${join(folder, "content")}`, `--output=${join(folder, "book")}`];
  const { code, stderr } = await askProgram(["build", ...paths]);
  if (code !== 0) throw new Error(stderr);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

interface Box {
  readonly label: string;
  readonly outside?: boolean;
}

async function planOn(page: Page) {
  return JSON.parse((await page.locator("#plan-data").textContent()) ?? "null");
}

/** The numbers of the days of the month that is shown, and how many rows of weeks there are. */
async function monthOn(page: Page): Promise<readonly [days: string, rows: number]> {
  const plan = await planOn(page);
  const boxes: readonly Box[] = plan.pages[0].boxes;
  const days = boxes.slice(8).filter(({ outside }) => !outside);
  return [days.map(({ label }) => label).join(" "), plan.pages[0].splits[0].sizes.length - 2];
}

const ALL_31 = Array.from({ length: 31 }, (_, index) => `${index + 1}`).join(" ");
const shownDates = (page: Page) => expect.poll(async () => (await planOn(page))?.dates ?? null);
const PAGES = [
  ["the fit page", "fit/index.html", "#v=1&paper=A5&pitch=5&dots=26,38&pattern=month-grid"],
  ["a pattern's page", "patterns/month-grid/plain/index.html", ""],
] as const;

describe.each(PAGES)("%s", (_, path, hash) => {
  beforeAll(async () => {
    watched = await watchedPage(testBrowser.browser);
    await watched.page.goto(address(path) + hash);
  });
  afterAll(async () => {
    expect(watched.complaints).toEqual([]);
    await watched.close();
  });

  it("is on no days until it is asked", async () => {
    const { page } = watched;
    await page.getByRole("button", { name: "This month" }).waitFor();
    expect(await page.getByLabel("Month", { exact: true }).inputValue()).toBe("");
    expect(await page.getByRole("button", { name: "Next month" }).isVisible()).toBe(false);
  });

  it("draws May 2027 with six rows and the days 1 to 31, by keys alone, and says so in the address", async () => {
    const { page } = watched;
    await page.getByLabel("Month", { exact: true }).focus();
    await page.keyboard.type("2027-05");
    await shownDates(page).toEqual({ from: "2027-05-01", to: "2027-05-31" });
    expect(await monthOn(page)).toEqual([ALL_31, 6]);
    await expect.poll(() => page.url()).toContain("&dates=2027-05");
    expect(await page.locator('[data-part="dates-words"]').textContent()).toBe(
      "May 2027: 31 days, in 6 weeks",
    );
    expect(await page.locator(".plate svg text", { hasText: "May 2027" }).count()).toBe(1);
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    await shownDates(page).toEqual({ from: "2027-06-01", to: "2027-06-30" });
    await expect.poll(() => page.url()).toContain("&dates=2027-06");
  });

  it("goes back by the browser's own button, and stays where it is when it is loaded again", async () => {
    const { page } = watched;
    await page.goBack();
    await shownDates(page).toEqual({ from: "2027-05-01", to: "2027-05-31" });
    expect(await page.getByLabel("Month", { exact: true }).inputValue()).toBe("2027-05");
    await page.reload();
    await shownDates(page).toEqual({ from: "2027-05-01", to: "2027-05-31" });
  });

  it("begins weeks on Sunday and speaks another language where that is chosen", async () => {
    const { page } = watched;
    await page.getByText("Weeks and names").click();
    await page.getByLabel("Weeks begin on").selectOption("sunday");
    await expect.poll(() => page.url()).toContain("&week=sunday");
    expect((await planOn(page)).pages[0].boxes[1].label).toBe("Sunday");
    await page.getByLabel("Language of the names").selectOption("fr");
    // CLDR 48: the French for May and Sunday.
    await expect
      .poll(async () =>
        (await planOn(page)).pages[0].boxes.slice(0, 2).map((box: Box) => box.label),
      )
      .toEqual(["mai 2027", "dimanche"]);
    await page.getByLabel("Weeks begin on").selectOption("");
    await page.getByLabel("Language of the names").selectOption("");
    await expect.poll(() => page.url()).not.toContain("week=");
  });

  it.each([
    ["2027-13", "Months go from 01 to 12."],
    ["<img src=x onerror=alert(1)>", "This needs a year"],
    ["2027-05/2027-03", "The end comes before the beginning: write the earlier date first."],
  ])("keeps what is shown while %s is typed, and says why", async (text, words) => {
    const { page } = watched;
    const before = await page.locator("#plan-data").textContent();
    await page.getByLabel("Month", { exact: true }).fill(text);
    expect(await page.locator("#dates-fault").textContent()).toContain(words);
    expect(await page.locator(".plate.stale").count()).toBe(1);
    expect(await page.locator("#plan-data").textContent()).toBe(before);
    await page.getByLabel("Month", { exact: true }).fill("2027-05");
    expect(await page.locator(".plate.stale").count()).toBe(0);
  });

  it("takes what is offered for what is nearly right", async () => {
    const { page } = watched;
    await page.getByLabel("Month", { exact: true }).fill("2027-8");
    await page.getByRole("button", { name: "Make it 2027-08" }).click();
    await shownDates(page).toEqual({ from: "2027-08-01", to: "2027-08-31" });
  });

  it("takes this month from the device's clock", async () => {
    const { page } = watched;
    await page.getByRole("button", { name: "This month" }).click();
    const month = await page.evaluate(() => {
      const now = new Date();
      return `${now.getFullYear()}-${`${now.getMonth() + 1}`.padStart(2, "0")}`;
    });
    await expect.poll(async () => (await planOn(page)).dates?.from).toBe(`${month}-01`);
  });

  it("goes back to no days", async () => {
    const { page } = watched;
    await page.getByRole("button", { name: "No dates" }).click();
    await shownDates(page).toBeNull();
    await expect.poll(() => page.url()).not.toContain("dates=");
    expect(await page.locator(".plate.pan svg").count()).toBe(1);
  });

  it("shows nothing of it without scripts", async () => {
    const bare = await watchedPage(testBrowser.browser, { javaScriptEnabled: false });
    await bare.page.goto(address(path));
    expect(await bare.page.locator('[data-part="dates"]').isVisible()).toBe(false);
    await bare.close();
  });
});

/** Moments as outside tables print them, in UTC: full 2026-06-29T23:57, first quarter 2026-06-21T21:55 (see calendar-moon). */
describe("a pattern that asks for the moon", () => {
  it.each([
    ["the fit page", "fit/index.html", "&paper=A5&pitch=5&dots=26,38&pattern=moon"],
    ["its own page", "patterns/moon/plain/index.html", ""],
  ])("has it by the book's clock on %s", async (_, path, more) => {
    const { page, complaints, close } = await watchedPage(testBrowser.browser);
    await page.goto(`${address(path)}#v=1${more}&dates=2026-06`);
    const named = async () => {
      const plan = await planOn(page);
      const boxes: readonly Box[] = plan?.pages?.[0]?.boxes ?? [];
      return boxes.flatMap(({ label }, index) => (label === "" ? [] : [`${index + 1} ${label}`]));
    };
    await expect
      .poll(named)
      .toEqual(["8 Last quarter", "15 New moon", "21 First quarter", "30 Full moon"]);
    expect(complaints).toEqual([]);
    await close();
  });
});

describe("the fit page with picked days", () => {
  const open = async (hash: string) => {
    const opened = await watchedPage(testBrowser.browser);
    await opened.page.goto(address("fit/index.html") + hash);
    return opened;
  };

  it("keeps them on another notebook and for a pattern of another kind", async () => {
    const { page, close } = await open(
      "#v=1&paper=A5&pitch=5&dots=26,38&pattern=month-grid&dates=2027-05",
    );
    await page.getByLabel("Dots across").fill("24");
    expect((await planOn(page)).dates.from).toBe("2027-05-01");
    await page.getByLabel("Pattern").selectOption("week");
    // Saturday, 1 May 2027 lies in the ISO week of Monday, 26 April.
    expect((await planOn(page)).dates).toEqual({ from: "2027-04-26", to: "2027-05-02" });
    expect(await page.getByLabel("Week", { exact: true }).inputValue()).toBe("2027-W17");
    await page.getByLabel("Pattern").selectOption("halves");
    expect(await page.locator('[data-part="dates"]').isVisible()).toBe(false);
    expect((await planOn(page)).dates).toBeNull();
    await page.getByLabel("Pattern").selectOption("month-grid");
    expect((await planOn(page)).dates.from).toBe("2027-05-01");
    await close();
  });

  it("comes back on this device without an address", async () => {
    const { page, close } = await open("#v=1&paper=A5&pitch=5&dots=26,38&pattern=month-grid");
    await page.getByLabel("Month", { exact: true }).fill("2027-05");
    await expect.poll(() => page.url()).toContain("&dates=2027-05");
    await page.goto("about:blank");
    await page.goto(address("fit/index.html"));
    await shownDates(page).toEqual({ from: "2027-05-01", to: "2027-05-31" });
    await close();
  });

  it("says them in the names of files and in the title of what is printed", async () => {
    const { page, close } = await open(
      "#v=1&paper=A5&pitch=5&dots=26,38&name=Plain&file=plain&pattern=month-grid&dates=2027-05",
    );
    const download = page.waitForEvent("download");
    await page.locator('[data-do="save-plan"]').click();
    expect((await download).suggestedFilename()).toBe("month-grid-plain-2027-05.json");
    await page.evaluate(() => Object.assign(window, { print: () => undefined }));
    await page.locator('[data-do="print-page"]').click();
    expect(await page.locator(".print-out .print-line").textContent()).toContain(
      "Month grid, May 2027",
    );
    await close();
  });

  it.each(["dates=2027-99", "dates=%3Cscript%3E", "week=funday", "region=QQ", "weekone=8"])(
    "says what is wrong with an address that ends in %s",
    async (part) => {
      const { page, complaints, close } = await open(`#v=1&pattern=month-grid&${part}`);
      const notice = page.locator('[data-part="notice"]');
      await expect
        .poll(() => notice.textContent())
        .toContain("The address of this page cannot be read.");
      expect(complaints).toEqual([]);
      await close();
    },
  );
});

describe("a pattern's page with picked days", () => {
  const open = async (slug: string, hash = "") => {
    const opened = await watchedPage(testBrowser.browser);
    await opened.page.goto(address(`patterns/${slug}/plain/index.html`) + hash);
    return opened;
  };

  it("loads no engine before it is asked", async () => {
    const { page, close } = await open("month-grid");
    const scripts = await page.evaluate(() => [...document.scripts].map(({ src }) => src));
    expect(scripts.filter((src) => /dates\.js|fit\/book\.js|names\.js/.test(src))).toEqual([]);
    await close();
  });

  it("draws along what is shown, and keeps the stroke beside the days", async () => {
    const { page, complaints, close } = await open("month-grid", "#v=1&dates=2027-02&stroke=3");
    const count = page.locator('[data-part="count"]');
    await expect.poll(() => count.textContent()).toMatch(/^Line 3 of/);
    await page.getByRole("button", { name: "Next", exact: true }).click();
    await expect.poll(() => page.url()).toMatch(/#v=1&dates=2027-02&stroke=4$/);
    expect((await monthOn(page))[1]).toBe(4);
    expect(complaints).toEqual([]);
    await close();
  });

  it("fits on days with fewer weeks where it does not for the most of them, and the other way round", async () => {
    const { page, complaints, close } = await open("tall-month");
    const start = page.getByRole("button", { name: "Start drawing" });
    expect(await start.isVisible()).toBe(false);
    await page.getByLabel("Month", { exact: true }).fill("2027-06");
    await shownDates(page).toEqual({ from: "2027-06-01", to: "2027-06-30" });
    expect((await planOn(page)).fits).toBe(true);
    expect(await start.isVisible()).toBe(true);
    expect(await page.getByText("Why it does not fit").count()).toBe(0);
    await page.getByLabel("Month", { exact: true }).fill("2027-05");
    await expect.poll(async () => (await planOn(page)).fits).toBe(false);
    expect(await start.isVisible()).toBe(false);
    expect(await page.getByText("Why it does not fit").count()).toBe(1);
    expect(complaints).toEqual([]);
    await close();
  });

  it("saves what is shown under its days, and prints their name", async () => {
    const { page, close } = await open("month-grid", "#v=1&dates=2027-05");
    await shownDates(page).toEqual({ from: "2027-05-01", to: "2027-05-31" });
    for (const [link, name] of [
      ["Page, SVG", "month-grid-plain-2027-05.svg"],
      ["Strip, SVG", "month-grid-plain-2027-05-strip.svg"],
      ["Page, PDF", "month-grid-plain-2027-05.pdf"],
    ] as const) {
      const download = page.waitForEvent("download");
      await page.getByRole("link", { name: link }).click();
      expect((await download).suggestedFilename()).toBe(name);
    }
    await page.emulateMedia({ media: "print" });
    expect(await page.locator('[data-part="print-title"]').textContent()).toBe(
      "Month grid, May 2027 · Plain",
    );
    expect(await page.locator('[data-part="dates"]').isVisible()).toBe(false);
    await close();
  });

  it("brings back what the build wrote", async () => {
    const { page, close } = await open("month-grid");
    const main = () =>
      page.locator("article").evaluate((article) => {
        const words = article.querySelectorAll("h2, table, .lede, .plate text");
        return [...words].map((one) => one.textContent).join("\n");
      });
    const before = await main();
    await page.getByLabel("Month", { exact: true }).fill("2027-02");
    await shownDates(page).toEqual({ from: "2027-02-01", to: "2027-02-28" });
    expect(await main()).not.toBe(before);
    await page.getByRole("button", { name: "No dates" }).click();
    await expect.poll(main).toBe(before);
    await close();
  });
});

describe("a pattern's page with a whole year", () => {
  const open = async (hash = "", javaScriptEnabled = true) => {
    const opened = await watchedPage(testBrowser.browser, { javaScriptEnabled });
    await opened.page.goto(address("patterns/tall-month/plain/index.html") + hash);
    return opened;
  };
  const words = (page: Page) => page.locator('[data-part="year-words"]');
  const cell = (page: Page, name: string) => page.getByRole("link", { name, exact: true });

  it("shows the shapes that occur without scripts", async () => {
    const { page, close } = await open("", false);
    const section = page.locator('[data-part="year"]');
    expect(await section.getByText("It fits, but for months of six rows.").isVisible()).toBe(true);
    expect(await section.locator(".shapes li").allInnerTexts()).toEqual([
      "Four rows",
      "Five rows",
      "Six rows\nDoes not fit",
    ]);
    expect(await section.locator(".shapes img").count()).toBe(2);
    expect(await section.getByRole("button").count()).toBe(0);
    await close();
  });

  it("works this year out when somebody asks, by keys alone", async () => {
    const { page, complaints, close } = await open();
    await page.getByRole("button", { name: "Show all months of a year" }).press("Enter");
    await expect.poll(() => page.locator(".year-cells a").count()).toBe(12);
    const year = await page.evaluate(() => new Date().getFullYear());
    expect(await page.locator('[data-part="year-number"]').textContent()).toBe(`${year}`);
    expect(await page.locator(".shapes").isVisible()).toBe(false);
    expect(complaints).toEqual([]);
    await close();
  });

  it("follows the days that are picked, and picks those of a small drawing", async () => {
    const { page, complaints, close } = await open("#v=1&dates=2027-02");
    await expect
      .poll(() => words(page).textContent())
      .toBe("It fits, but for months of six rows: May and August 2027.");
    expect(await cell(page, "Feb 2027").getAttribute("aria-current")).toBe("true");
    expect(await cell(page, "May 2027: Does not fit").count()).toBe(1);
    await cell(page, "Mar 2027").press("Enter");
    await shownDates(page).toEqual({ from: "2027-03-01", to: "2027-03-31" });
    expect(page.url()).toMatch(/#v=1&dates=2027-03$/);
    await expect.poll(() => cell(page, "Mar 2027").getAttribute("aria-current")).toBe("true");
    await page.goBack();
    await shownDates(page).toEqual({ from: "2027-02-01", to: "2027-02-28" });
    await page.getByLabel("Month", { exact: true }).fill("2028-12");
    await expect.poll(() => words(page).textContent()).toContain("2028.");
    expect(complaints).toEqual([]);
    await close();
  });

  it("goes to other years and other calendars", async () => {
    const { page, close } = await open("#v=1&dates=2027-02&week=sunday");
    await expect
      .poll(() => words(page).textContent())
      .toBe("It fits, but for months of six rows: January, May and October 2027.");
    await page.getByRole("button", { name: "Next year" }).press("Enter");
    // `ncal -b -S 2028`
    await expect
      .poll(() => words(page).textContent())
      .toBe("It fits, but for months of six rows: January, April, July and December 2028.");
    expect((await planOn(page)).dates.from).toBe("2027-02-01");
    expect(await cell(page, "Jun 2028").getAttribute("href")).toBe(
      "#v=1&dates=2028-06&week=sunday",
    );
    await page.getByRole("button", { name: "Previous year" }).click();
    await expect.poll(() => words(page).textContent()).toContain("2027.");
    await close();
  });

  it.each(["light", "dark"] as const)("axe objects to nothing in %s", async (colorScheme) => {
    const { page, close } = await watchedPage(testBrowser.browser, { colorScheme });
    await page.goto(`${address("patterns/tall-month/plain/index.html")}#v=1&dates=2027-02`);
    await expect.poll(() => page.locator(".year-cells a").count()).toBe(12);
    expect(await axeFindings(page)).toEqual([]);
    await close();
  });

  it("gives its days to the pages that it leads to", async () => {
    const { page, close } = await open();
    const link = page.getByRole("link", { name: "fit it to a notebook of your own" });
    const other = page.locator(".lineup a").last();
    const before = [await link.getAttribute("href"), await other.getAttribute("href")];
    await page.getByLabel("Month", { exact: true }).fill("2027-06");
    await shownDates(page).toEqual({ from: "2027-06-01", to: "2027-06-30" });
    expect([await link.getAttribute("href"), await other.getAttribute("href")]).toEqual([
      `${before[0]}&dates=2027-06`,
      `${before[1]}#v=1&dates=2027-06`,
    ]);
    await link.click();
    await shownDates(page).toEqual({ from: "2027-06-01", to: "2027-06-30" });
    await close();
  });
});
