/** A reader's way through the gallery, on a phone and on a large screen, from disk and from a web server below a sub-path. */
import type { Page } from "playwright-core";
import { afterEach, beforeEach, describe, expect, inject, it } from "vitest";
import { FIRST_CARDS } from "../../src/view/gallery/gallery-groups.ts";
import { gateWay } from "../sweep/sweep-size.ts";
import { onDisk, openTestBrowser } from "./test-browser.ts";
import { type WatchedPage, watchedPage } from "./watched-page.ts";

const book = inject("book");
const testBrowser = openTestBrowser(book);

type Way = readonly [place: string, width: number];
/** A page from disk differs from one on the web in its address and its files, a narrow one from a wide one in its look. */
const WAYS: readonly Way[] = [
  ["disk", 390],
  ["a sub-path of a server", 1440],
];

/** Titles of the cards that are shown, in their order. */
async function titlesOn(page: Page): Promise<readonly string[]> {
  await untilFound(page, /pattern/i);
  return page.locator(".card:visible h3").allInnerTexts();
}

async function slugsOn(page: Page): Promise<readonly string[]> {
  await untilFound(page, /pattern|called/i);
  const cards = page.locator("[data-pattern]:visible");
  return cards.evaluateAll((all) => all.map((card) => card.getAttribute("data-pattern") ?? ""));
}

/** Waits until the status says so; it is what a reader would wait for. */
async function untilFound(page: Page, words: string | RegExp): Promise<void> {
  await page.getByRole("status").filter({ hasText: words }).waitFor();
}

/** The address follows what is typed a moment later. */
const hashOf = (page: Page) => page.evaluate(() => location.hash);

let page: Page;
let address: string;

/** On a phone the filters are folded away. */
async function unfold(): Promise<void> {
  const narrow = page.getByRole("button", { name: "Filters" });
  if (await narrow.isVisible()) await narrow.click();
}

/** What is tried with the gallery just opened, in a browser that has been nowhere; nothing may go wrong meanwhile. */
function describeReader(ways: readonly Way[], tests: () => void): void {
  describe.each(ways)("from %s, %i px wide, a reader", (place, width) => {
    let watched: WatchedPage;

    beforeEach(async () => {
      watched = await watchedPage(testBrowser.browser, { viewport: { width, height: 900 } });
      page = watched.page;
      address = `${place === "disk" ? onDisk("/") : testBrowser.address}patterns/index.html`;
      await page.goto(address);
    });

    afterEach(async () => {
      expect(watched.complaints).toEqual([]);
      await watched.close();
    });

    tests();
  });
}

describeReader(gateWay(WAYS, 0), () => {
  it("narrows it down, shares the address, and goes back step by step", async () => {
    await unfold();
    await page.getByRole("checkbox", { name: "Week" }).check();
    await expect.poll(() => hashOf(page)).toBe("#on=a5&for=week");
    const weeks = await slugsOn(page);
    expect(await page.locator("section[data-group]:visible h2").allInnerTexts()).toEqual(["Week"]);
    await page.getByLabel("Nothing left over").check();
    const even = await slugsOn(page);
    expect(even.length).toBeGreaterThan(0);
    expect(even.length).toBeLessThan(weeks.length);
    await expect.poll(() => hashOf(page)).toBe("#on=a5&for=week&fit=even");
    const states = await page.locator(".card:visible [data-state]").allInnerTexts();
    expect(states.filter((state) => !state.startsWith("Nothing left over"))).toEqual([]);

    const other = await page.context().newPage();
    await other.goto(page.url());
    expect(await slugsOn(other)).toEqual(even);
    expect(await other.locator("[name=fit][value=even]").isChecked()).toBe(true);
    await other.close();

    await page.goBack();
    expect(await slugsOn(page)).toEqual(weeks);
    expect(await page.locator("[name=fit][value='']").isChecked()).toBe(true);
    await page.goBack();
    expect((await slugsOn(page)).length).toBeGreaterThan(weeks.length);
    expect(await page.locator("[name=for]:checked").count()).toBe(0);
    await page.goForward();
    expect(await slugsOn(page)).toEqual(weeks);
  });

  it("searches: the beginning of a word, and a slip of the pen", async () => {
    const scripts = () =>
      page.evaluate(() => [...document.scripts].map(({ src }) => src.split("/").pop()));
    expect(await scripts()).not.toContain("search-index.js");
    const field = page.getByRole("searchbox", { name: "Find" });
    await field.focus();
    await field.pressSequentially("greenh", { delay: 20 });
    await page.locator('[data-pattern="greenhouse-temperatures"]:visible').waitFor();
    await untilFound(page, /^\d+ of/);
    await expect.poll(() => hashOf(page)).toBe("#on=a5&find=greenh");
    expect((await slugsOn(page))[0]).toBe("greenhouse-temperatures");
    expect(await scripts()).toContain("search-index.js");
    await field.fill("sowing calender");
    await untilFound(page, "Nothing is called “sowing calender”");
    expect(await page.locator("[data-pattern]:visible").first().textContent()).toContain(
      "Sowing calendar",
    );
    await page.getByRole("button", { name: "Did you mean “sowing calendar”?" }).press("Enter");
    await untilFound(page, /^\d+ of/);
    expect((await slugsOn(page))[0]).toBe("sowing-calendar");
    expect(await field.inputValue()).toBe("sowing calendar");
    await page.goBack();
    await untilFound(page, /^\d+ patterns$/);
    expect(await field.inputValue()).toBe("");
  });

  it("opens a search that somebody sent, and finds by other words than a layout's own", async () => {
    await page.goto(`${address}#find=sowing+calendar`);
    await page.reload();
    await untilFound(page, /^\d+ of/);
    expect((await slugsOn(page))[0]).toBe("sowing-calendar");
    expect(await page.getByLabel("Find").inputValue()).toBe("sowing calendar");
    expect(await page.locator("[name=sort] option:checked").textContent()).toBe("best match first");
    // All such words are tried in tests/view/found-words.test.ts.
    for (const [words, slug] of [
      ["todo", "to-do-by-when"],
      ["menu", "meal-plan"],
      ["habbits", "habit-tracker"],
      ["agenda", "week-on-one-page"],
    ] as const) {
      await page.getByLabel("Find").fill(words);
      await expect.poll(async () => (await slugsOn(page)).slice(0, 3)).toContain(slug);
    }
    await page.getByLabel("Find").fill("habitat");
    await untilFound(page, "Nothing is called “habitat”");
    await page.getByRole("button", { name: "Did you mean “habit”?" }).click();
    await expect.poll(async () => (await slugsOn(page)).slice(0, 3)).toContain("habit-tracker");
  });

  it("chooses a notebook for good, and follows another's link for once", async () => {
    await page.getByLabel("Notebook", { exact: true }).selectOption("a6");
    const first = page.locator("[data-pattern]").first();
    expect(await first.locator("img").getAttribute("src")).toMatch(/\/a6\/thumb\.svg$/);
    expect(await first.locator("a").getAttribute("href")).toMatch(/\/a6\/index\.html$/);
    await unfold();
    await page.getByRole("group", { name: "On this notebook" }).getByLabel("Fits").check();
    expect(await slugsOn(page)).not.toContain("shed-wall");

    await page.goto(address.replace("patterns/index.html", "index.html"));
    await page.goto(address);
    expect(await page.getByLabel("Notebook", { exact: true }).inputValue()).toBe("a6");
    await page.goto(`${address}#on=a5`);
    expect(await first.locator("img").getAttribute("src")).toMatch(/\/a5\/thumb\.svg$/);
    await page.goto(address.replace("patterns/index.html", "index.html"));
    await page.goto(address);
    expect(await page.getByLabel("Notebook", { exact: true }).inputValue()).toBe("a6");
  });

  it("follows a place on the page", async () => {
    const isShown = () => page.locator("#tracker").evaluate(isInView);
    await page.goto(`${address}#tracker`);
    await expect.poll(isShown).toBe(true);
    // A reload keeps the place it was left at, so it must not come before the browser has gone there.
    await page.reload();
    await expect.poll(isShown).toBe(true);

    await page.goto("about:blank");
    await page.goto(`${address}#tracker`);
    await expect.poll(isShown).toBe(true);
  });

  it("opens a pattern and comes back to what was found", async () => {
    await page.goto(`${address}#on=a6&for=day`);
    const days = await slugsOn(page);
    await page.locator(".card:visible a").first().click();
    await page.waitForURL(/\/a6\/index\.html/);
    await page.goBack();
    expect(await slugsOn(page)).toEqual(days);
  });
});

describeReader(WAYS.slice(1), () => {
  it("sees every pattern by what it is for, and how many there are", async () => {
    const all = await page.locator(".card").count();
    await untilFound(page, `${all} patterns`);
    expect(await slugsOn(page)).toHaveLength(FIRST_CARDS);
    await page.mouse.wheel(0, 200);
    await expect.poll(() => page.locator("[data-pattern]:visible").count()).toBe(all);
    await untilFound(page, `${all} patterns`);
    expect(await page.locator("section[data-group]:visible").count()).toBe(10);
    await expect.poll(() => hashOf(page)).toBe("");
  });

  it("filters by pages, lines and tag", async () => {
    await unfold();
    await page.getByRole("group", { name: "Pages" }).getByLabel("Two").check();
    expect(await slugsOn(page)).toContain("ninths-spread");
    expect(await slugsOn(page)).not.toContain("ninths-page");
    await page.getByRole("group", { name: "Pages" }).getByLabel("One").check();
    await page.getByRole("group", { name: "Lines to draw" }).getByLabel("Up to 15").check();
    const lines = await page.locator(".card:visible .effort").allInnerTexts();
    expect(lines.length).toBeGreaterThan(5);
    expect(lines.filter((text) => Number.parseInt(text, 10) > 15)).toEqual([]);
    await page.getByLabel("Tag").selectOption("sowing");
    await expect.poll(() => hashOf(page)).toBe("#on=a5&tag=sowing&pages=1&lines=few");
    expect((await slugsOn(page)).length).toBeLessThan(lines.length);
  });

  it("sorts by title and by lines, under no headings", async () => {
    await page.getByLabel("Sort by").selectOption("title");
    const titles = await titlesOn(page);
    expect(titles).toEqual([...titles].sort((a, b) => a.localeCompare(b, "en")));
    expect(await page.locator("section[data-group]:visible").count()).toBe(0);
    await page.getByLabel("Sort by").selectOption("lines");
    const lines = (await page.locator(".card:visible .effort").allInnerTexts()).map((text) =>
      Number.parseInt(text, 10),
    );
    expect(lines).toHaveLength(titles.length);
    expect(lines).toEqual([...lines].sort((a, b) => a - b));
  });

  it("a card is opened by the first click after a search was typed", async () => {
    const field = page.getByRole("searchbox", { name: "Find" });
    await field.focus();
    await field.pressSequentially("greenh", { delay: 20 });
    const card = page.locator('[data-pattern="greenhouse-temperatures"]:visible');
    await card.waitFor();
    await untilFound(page, /^\d+ of/);
    await expect.poll(() => hashOf(page)).toBe("#on=a5&find=greenh");
    // The field is left between the two halves of the click, and searches once more for what it already found.
    const box = await card.getByRole("link").first().boundingBox();
    if (!box) throw new Error("the card has no link");
    await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
    await page.mouse.down();
    await page.waitForTimeout(50);
    await page.mouse.up();
    await page.waitForURL(/greenhouse-temperatures/);
  });

  it("is told what to leave out where nothing is found", async () => {
    await page.goto(`${address}#for=year&find=slug`);
    await untilFound(page, "No pattern");
    const remedy = page.getByRole("button", { name: "Without year" });
    await remedy.click();
    await untilFound(page, /^\d+ of/);
    expect(await slugsOn(page)).toContain("slug-count");
    expect(await remedy.count()).toBe(0);
    await page.locator(".found").getByRole("button", { name: "Show all" }).click();
    await untilFound(page, /^\d+ patterns$/);
    await expect.poll(() => hashOf(page)).toBe("#on=a5");
  });

  it.each([
    ["#for=year&find=slug", "Without year"],
    ["#for=year&find=slug", "Show all patterns"],
    ["#for=week", "Show all"],
  ])("of %s goes on from what was found when the button “%s” is gone", async (hash, name) => {
    await page.goto(`${address}${hash}`);
    await untilFound(page, /pattern/i);
    await page.getByRole("button", { name, exact: true }).press("Enter");
    const focused = page.locator(":focus");
    expect(await focused.getAttribute("data-part")).toBe("found");
    await expect.poll(() => focused.textContent()).toMatch(/^\d+ (of|patterns)/);
  });

  it.each([
    ["#for=week", "#on=a6&for=week"],
    ["#sort=title", "#on=a6&sort=title"],
    ["#on=a5&for=week", "#on=a5&for=week"],
    ["", ""],
    ["#tracker", "#tracker"],
  ])("who sends %j on sends the kept notebook with it: %j", async (hash, shared) => {
    await page.getByLabel("Notebook", { exact: true }).selectOption("a6");
    await page.goto("about:blank");
    await page.goto(`${address}${hash}`);
    expect(await hashOf(page)).toBe(shared);
  });

  it("counts each thing that was chosen to narrow it down", async () => {
    await unfold();
    await page.getByRole("checkbox", { name: "Week" }).check();
    await page.getByRole("checkbox", { name: "Day" }).check();
    await page.getByLabel("Fits").check();
    expect(await page.locator(".narrow").textContent()).toBe("Filters (3)");
  });

  it("sees what an address says rightly, and nothing of what it says wrongly", async () => {
    await page.goto(`${address}#on=nowhere&for=week.decade&pages=9&sort=%00&find=`);
    await untilFound(page, /^\d+ of/);
    expect(await page.locator("section[data-group]:visible h2").allInnerTexts()).toEqual(["Week"]);
    expect(await page.getByLabel("Notebook", { exact: true }).inputValue()).toBe("a5");
  });
});

describe("where files are slow to come", () => {
  it("or do not come, a reader is led to the whole list, and may try again", async () => {
    const { page, complaints, close } = await watchedPage(testBrowser.browser);
    await page.route(/facts\.js/, (route) => route.abort());
    await page.goto(`${testBrowser.address}patterns/index.html`);
    await page.getByLabel("Sort by").selectOption("title");
    await untilFound(page, "The other patterns could not be loaded");
    expect(await slugsOn(page)).toHaveLength(FIRST_CARDS);
    expect(await page.locator(".card:empty:visible").count()).toBe(0);
    expect(await page.getByRole("link", { name: /^All \d+ in this group$/ }).count()).toBe(
      await page.locator("section[data-group]:has(.card:empty)").count(),
    );
    await page.unroute(/facts\.js/);
    await page.getByLabel("Sort by").selectOption("purpose");
    await page.getByLabel("Sort by").selectOption("title");
    await expect.poll(() => page.locator(".card:empty").count()).toBe(0);
    expect(await page.locator(".whole:visible").count()).toBe(0);
    expect(complaints.filter((one) => !/facts\.js|ERR_FAILED/.test(one))).toEqual([]);
    await close();
  });

  it("a reader types on while the search is on its way, and loses no letter", async () => {
    const { page, complaints, close } = await watchedPage(testBrowser.browser);
    let release = () => {};
    const held = new Promise<void>((resolve) => {
      release = resolve;
    });
    await page.route(/search-index/, async (route) => {
      await held;
      await route.continue();
    });
    await page.goto(`${testBrowser.address}patterns/index.html`);
    const field = page.getByRole("searchbox", { name: "Find" });
    await field.pressSequentially("gree");
    await expect.poll(() => hashOf(page)).toBe("#on=a5&find=gree");
    await untilFound(page, "Searching");
    await field.press("n");
    release();
    await page.waitForFunction(() => "spanbookSearchIndex" in window);
    await untilFound(page, /^\d+ of/);
    expect(await field.inputValue()).toBe("green");
    await expect.poll(() => hashOf(page)).toBe("#on=a5&find=green");
    expect(complaints).toEqual([]);
    await close();
  });
});

describe("a notebook that is made one's own", () => {
  it.each([
    ["notebooks/a6/index.html", "Make this my notebook", "This is your notebook"],
    ["notebooks/index.html", "Make mine: A6, pocket", "Yours"],
  ])("on %s: the words in the button's place have the focus", async (path, name, words) => {
    const { page, complaints, close } = await watchedPage(testBrowser.browser);
    await page.goto(`${testBrowser.address}${path}`);
    await page.getByRole("button", { name }).press("Enter");
    expect(await page.locator(":focus").textContent()).toContain(words);
    expect(complaints).toEqual([]);
    await close();
  });

  it("is the one that the list of strips says it is shown for", async () => {
    const { page, complaints, close } = await watchedPage(testBrowser.browser);
    await page.goto(`${testBrowser.address}notebooks/a6/index.html`);
    await page.getByRole("button", { name: "Make this my notebook" }).press("Enter");
    await page.goto(`${testBrowser.address}strips/index.html`);
    const shown = page.locator("[data-shown]:visible");
    expect(await shown.allTextContents()).toEqual(["Shown for A6, pocket."]);
    expect(complaints).toEqual([]);
    await close();
  });
});

function isInView(element: Element): boolean {
  const { top, bottom } = element.getBoundingClientRect();
  return top >= 0 && bottom <= window.innerHeight;
}
