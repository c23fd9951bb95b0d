/** The page of a strip of one's own: made by words and keys, checked by arithmetic of its own, printed, saved, sent. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { describe, expect, inject, it } from "vitest";
import { readStripRecipe } from "../../src/recipe/read/read-strip-recipe.ts";
import { writeStripAddress } from "../../src/view/address/strip-address.ts";
import { unnamed } from "../../src/view/fields/name-notebook.ts";
import { bookContent } from "../setup/demo-content.ts";
import { gateWay } from "../sweep/sweep-size.ts";
import { openHand } from "./open-hand.ts";
import { pdfContent } from "./pdf-content.ts";
import { downloaded, onDisk, openTestBrowser } from "./test-browser.ts";
import { watchedPage } from "./watched-page.ts";

const testBrowser = openTestBrowser();
const book = inject("book");
const content = await bookContent(inject("content"));
const { notebooks, strips } = content;

interface RunData {
  readonly patterns: readonly string[];
  readonly from: number;
  readonly marks: readonly number[];
  readonly uses: number;
}

interface SideData {
  readonly axis: string;
  readonly steps: number;
  readonly mm: readonly number[];
  readonly lanes: readonly { readonly runs: readonly RunData[] }[];
  readonly left_out: readonly { readonly pattern: string }[];
}

const dataText = async (page: Page) => (await page.locator("#strip-data").textContent()) ?? "";
const sidesOf = async (page: Page): Promise<readonly SideData[]> =>
  JSON.parse(await dataText(page)).sides;
const runsOf = (side: SideData | undefined) => side?.lanes.flatMap(({ runs }) => runs) ?? [];
const namesOf = (page: Page, axis: string) =>
  page.locator(`[data-side="${axis}"] .order .name`).allInnerTexts();

/** Where equal parts begin and end, by hand: each gets as many whole steps as all can have. */
function equalMarks(
  from: number,
  length: number,
  { parts, gap = 0 }: { parts: number; gap?: number },
) {
  const size = Math.floor((length - (parts - 1) * gap) / parts);
  const starts = Array.from({ length: parts }, (_, index) => from + index * (size + gap));
  return [...new Set(starts.flatMap((start) => [start, start + size]))];
}

/** What is to be printed stays in the document, since nobody sees the dialog. */
const withoutDialog = (page: Page) =>
  page.addInitScript(() => {
    window.print = () => {};
  });

describe.each(gateWay([390, 1440], 1))("on a screen %i px wide, a new keeper", (width) => {
  it("makes and prints a strip of halves, thirds with and without a gap, a week and a tracker in under 40 clicks and keys", async () => {
    const viewport = { width, height: 844 };
    const { page, complaints, close } = await watchedPage(testBrowser.browser, { viewport });
    await withoutDialog(page);
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
    await hand.click(page.getByRole("main").getByRole("link", { name: "Make a strip" }));
    await hand.click(page.getByLabel("Layout or division"));
    await hand.type("hal", "Enter");
    await hand.type("thi", "Enter");
    await hand.type("thi", "ArrowDown", "Enter");
    await hand.type("two r", "Enter");
    await hand.type("hab", "Enter");
    await hand.click(page.getByRole("button", { name: "Print it at actual size" }));
    expect(hand.count()).toBeLessThan(40);

    expect(await namesOf(page, "across")).toEqual(await namesOf(page, "down"));
    expect(await namesOf(page, "across")).toEqual([
      "Halves",
      "Thirds",
      "Thirds, gap 1",
      "Week in two rows",
      "Habit tracker for a month",
    ]);
    const [across, down] = await sidesOf(page);
    // The book's A5 counts from the edge to the dot: as many steps as dots; its first dot is centred on the paper.
    expect([across?.steps, down?.steps]).toEqual([24, 35]);
    const dot = (size: number, dots: number, k: number) =>
      (size - (dots - 1) * 5) / 2 + (k - 1) * 5;
    expect(across?.mm).toEqual([0, ...Array.from({ length: 24 }, (_, k) => dot(148, 24, k + 1))]);
    expect(down?.mm).toEqual([0, ...Array.from({ length: 35 }, (_, k) => dot(210, 35, k + 1))]);
    for (const [side, steps] of [
      [across, 24],
      [down, 35],
    ] as const) {
      const marks = Object.fromEntries(runsOf(side).map((run) => [run.patterns[0], run.marks]));
      expect(marks).toMatchObject({
        halves: equalMarks(0, steps, { parts: 2 }),
        thirds: equalMarks(0, steps, { parts: 3 }),
        "thirds-gap-1": equalMarks(0, steps, { parts: 3, gap: 1 }),
      });
    }
    // The week: a margin of 1 at the bound side, four columns with a gap of 1, on both of its rows alike.
    const week = runsOf(across).find(({ patterns }) => patterns.includes("two-row-week"));
    expect(week?.marks).toEqual(equalMarks(1, 23, { parts: 4, gap: 1 }));
    const left = [across, down].map((side) => side?.left_out.map(({ pattern }) => pattern));
    const kept = [across, down].map((side) => runsOf(side).flatMap(({ patterns }) => patterns));
    for (const index of [0, 1]) {
      const all = [...(kept[index] ?? []), ...(left[index] ?? [])];
      for (const slug of ["two-row-week", "habit-tracker"]) expect(all).toContain(slug);
    }
    const sheet = await page.locator(".print-out svg").first().getAttribute("width");
    expect(sheet).toBe("297mm");
    const over = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(over).toBeLessThanOrEqual(0);
    expect(complaints).toEqual([]);
    await close();
  });
});

describe("what lies on it", () => {
  it("is ordered and taken off by keys, buttons and a drag, and the focus stays with it", async () => {
    await testBrowser.onPage(
      onDisk("strip/index.html#v=1&across=seed-list,rain-gauge,two-row-week"),
      { viewport: { width: 390, height: 844 } },
      async (page) => {
        const order = () => namesOf(page, "across");
        const [seeds, rain, week] = await order();
        await page.getByRole("button", { name: `Move ${week} up` }).press("Enter");
        expect(await order()).toEqual([seeds, week, rain]);
        expect(await page.locator(":focus").textContent()).toContain(`Move ${week} up`);
        await page.keyboard.press("Alt+ArrowUp");
        expect(await order()).toEqual([week, seeds, rain]);
        const items = page.locator('[data-side="across"] li');
        const grip = await items.nth(0).locator(".grip").boundingBox();
        const last = await items.nth(2).boundingBox();
        if (!grip || !last) throw new Error("the list has no place on the page");
        await page.mouse.move(grip.x + 5, grip.y + 5);
        await page.mouse.down();
        await page.mouse.move(grip.x + 5, last.y + last.height - 2, { steps: 5 });
        await page.mouse.up();
        expect(await order()).toEqual([seeds, rain, week]);
        await page.getByRole("button", { name: `Take ${rain} off` }).press("Enter");
        expect(await order()).toEqual([seeds, week]);
        expect(await page.locator(":focus").textContent()).toContain(`Take ${week} off`);
        await page.waitForURL((url) => url.hash.includes("across=seed-list,two-row-week"));
      },
    );
  });

  it("is chosen by uses as soon as one has a number, exactly, and the page says what one lane more would bring", async () => {
    const path = "strip/index.html#v=1&across=seed-list,two-row-week,rain-gauge&lanes=1";
    await testBrowser.onPage(onDisk(path), {}, async (page) => {
      const choice = page.locator('[data-side="across"] [data-part="choice"]');
      await expect
        .poll(() => choice.textContent())
        .toContain("what comes first in its list goes first");
      await page.getByLabel("Uses of Week in two rows, across").fill("52");
      await expect.poll(() => choice.textContent()).toContain("52 of");
      expect(await choice.textContent()).toContain("One lane more would carry");
      const kept = runsOf((await sidesOf(page))[0]);
      expect(kept.map(({ patterns, uses }) => [...patterns, uses])).toEqual([["two-row-week", 52]]);
      const field = page.getByLabel("Uses of Seed list, across");
      await field.fill("x");
      await expect
        .poll(() => page.locator("#uses-across-seed-list-fault").textContent())
        .toBe("This needs a whole number of uses from 1 to 10000.");
      await page.locator('[data-do="save-strip-json"]').press("Enter");
      expect(await page.locator('[data-part="status"]').textContent()).toContain(
        "Uses of Seed list, across",
      );
      await field.fill("60");
      const again = runsOf((await sidesOf(page))[0]);
      expect(again.map(({ patterns }) => patterns[0])).toEqual(["seed-list"]);
      await page.waitForURL((url) => url.hash.includes("seed-list:60"));
    });
  });

  it("is nothing at first: no data, and nothing to print", async () => {
    await testBrowser.onPage(onDisk("strip/index.html"), {}, async (page) => {
      expect(await dataText(page)).toBe("null");
      await page.locator('[data-do="save-strip-json"]').press("Enter");
      expect(await page.locator('[data-part="status"]').textContent()).toBe(
        "Put something on your strip first.",
      );
    });
  });

  it("is marked for the days that are typed, and the address has them", async () => {
    const path = "strip/index.html#v=1&paper=A5&pitch=5&dots=26,38&down=month-grid";
    await testBrowser.onPage(onDisk(path), {}, async (page) => {
      const marks = async () => runsOf((await sidesOf(page))[1])[0]?.marks;
      // Of 38 steps the margin takes 1, the heading 2, the weekdays 1: 34 for the weeks and, half as much, notes.
      expect(await marks()).toEqual([1, 3, 4, 9, 14, 19, 24, 29, 34, 38]);
      // February 2027 is four whole weeks from Monday on.
      await page.getByLabel("Dates").fill("2027-02");
      expect(await marks()).toEqual([1, 3, 4, 12, 20, 28, 36, 38]);
      await expect
        .poll(() => page.locator('[data-part="notes"]').textContent())
        .toContain("marked for 2027-02");
      await page.getByLabel("Dates").fill("2027-13");
      expect(await page.locator("#dates-fault").textContent()).toBe("Months go from 01 to 12.");
      await page.waitForURL((url) => url.hash.includes("dates=2027-02"));
      await page.reload();
      expect(await page.getByLabel("Dates").inputValue()).toBe("2027-02");
      expect(await marks()).toEqual([1, 3, 4, 12, 20, 28, 36, 38]);
    });
  });

  it("is copied by hand from a card that follows it", async () => {
    await testBrowser.onPage(onDisk("strip/index.html#v=1&across=seed-list"), {}, async (page) => {
      await page.getByText("Without a printer: copy it by hand").click();
      const card = page.locator('[data-part="card"] svg');
      await expect.poll(() => card.textContent()).toContain("Seed list");
      await page.getByLabel("Layout or division").fill("fifths gap 2");
      await page.getByLabel("Layout or division").press("Enter");
      await expect.poll(() => card.textContent()).toContain("Fifths, gap 2");
      await page.waitForURL((url) => url.hash.includes("Fifths"));
    });
  });

  it("is offered by taps, on one side alone", async () => {
    const options = { hasTouch: true, viewport: { width: 390, height: 844 } };
    await testBrowser.onPage(onDisk("strip/index.html"), options, async (page) => {
      await page.getByLabel("down", { exact: true }).tap();
      await page.getByLabel("Layout or division").fill("fifths with a gap of 2");
      await page.getByRole("option", { name: "Fifths, gap 2" }).tap();
      expect(await namesOf(page, "across")).toEqual([]);
      expect(await namesOf(page, "down")).toEqual(["Fifths, gap 2"]);
      const [, side] = await sidesOf(page);
      expect(runsOf(side)[0]?.marks).toEqual(equalMarks(0, side?.steps ?? 0, { parts: 5, gap: 2 }));
      await page.waitForURL((url) => url.hash.includes("Fifths"));
    });
  });
});

describe("the strips of the book", () => {
  it.each(strips.map((strip) => [strip.slug, strip] as const))(
    "are the build's, on every notebook: %s",
    async (slug, strip) => {
      const { page, complaints, close } = await watchedPage(testBrowser.browser);
      for (const notebook of notebooks) {
        const asked = { notebook: unnamed(notebook), strip: { ...strip, title: "", slug: "" } };
        await page.goto(onDisk(`strip/index.html${writeStripAddress(asked)}`));
        const built = readFileSync(
          join(book, `strips/${slug}/${notebook.slug}/strip.json`),
          "utf8",
        );
        await expect.poll(() => dataText(page)).toBe(built);
      }
      expect(complaints).toEqual([]);
      await close();
    },
  );

  it("open in it with uses and divisions, for the keeper's own notebook, and are saved as files", async () => {
    const { page, complaints, close } = await watchedPage(testBrowser.browser);
    await page.goto(onDisk("index.html"));
    await page.getByLabel("Dots across").fill("24");
    await expect.poll(() => page.locator('[data-part="mine"]').textContent()).toContain("24 ×");
    await page.goto(onDisk("strips/odiles-year/a6/index.html"));
    await page.getByRole("link", { name: "Change it" }).first().click();
    await expect.poll(() => page.locator('[data-part="for"]').textContent()).toContain("24 ×");
    expect(await page.getByLabel("Uses of Week in two rows, across").inputValue()).toBe("52");
    expect(await namesOf(page, "down")).toContain("Halves");
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.locator('[data-do="save-strip"]').click(),
    ]);
    const text = String(await downloaded(download));
    const saved = readStripRecipe({ path: "strips/odiles-year.md", text });
    const odile = strips.find(({ slug }) => slug === "odiles-year");
    expect(download.suggestedFilename()).toBe("odiles-year.md");
    expect(saved.ok && saved.value.across.map(({ slug, uses }) => [slug, uses])).toEqual(
      odile?.across.map(({ slug, uses }) => [slug, uses]),
    );
    await page.getByLabel("Open the file of a strip").setInputFiles({
      name: "shed.md",
      mimeType: "text/markdown",
      buffer: Buffer.from(
        "---\ntitle: Shed\nacross: [seed-list, {title: Sixths, split: 6}]\n---\n",
      ),
    });
    await expect.poll(() => namesOf(page, "across")).toEqual(["Seed list", "Sixths"]);
    expect(complaints).toEqual([]);
    await close();
  });

  it.each([
    ["save-strip-svg", "strip.svg"],
    ["save-strip-pdf", "strip.pdf"],
  ])("are files as the build makes them, by %s", async (doing, file) => {
    const notebook = notebooks.find(({ slug }) => slug === "a6");
    const strip = strips.find(({ slug }) => slug === "everyday");
    if (!notebook || !strip) throw new Error("the demo book lacks what is asked for");
    const hash = writeStripAddress({ notebook: unnamed(notebook), strip });
    await testBrowser.onPage(onDisk(`strip/index.html${hash}`), {}, async (page) => {
      const [download] = await Promise.all([
        page.waitForEvent("download"),
        page.locator(`[data-do="${doing}"]`).click(),
      ]);
      const made = await downloaded(download);
      const built = readFileSync(join(book, `strips/everyday/a6/${file}`));
      if (file.endsWith(".pdf")) expect(pdfContent(made)).toBe(pdfContent(built));
      else expect(made.equals(built)).toBe(true);
    });
  });
});

describe("what other pages add", () => {
  it("is said there with how many lie on it, and is there", async () => {
    const { page, complaints, close } = await watchedPage(testBrowser.browser);
    const added = page.locator('[data-part="added"]');
    const add = () => page.getByRole("button", { name: "Add to strip", exact: true }).click();
    await page.goto(onDisk("index.html"));
    await add();
    await expect.poll(() => added.textContent()).toContain("1 layout is on it now.");
    await page.goto(onDisk("patterns/seed-list/a5/index.html"));
    await add();
    await expect.poll(() => added.textContent()).toContain("2 layouts are on it now.");
    await page.goto(onDisk("fit/index.html#v=1&pattern=seed-list"));
    await add();
    await expect.poll(() => added.textContent()).toContain("already: 2 layouts are on it.");
    await added.getByRole("link").click();
    await expect.poll(() => namesOf(page, "across")).toEqual(["Thirds, gap 1", "Seed list"]);
    expect(await namesOf(page, "down")).toEqual(["Seed list"]);
    expect(complaints).toEqual([]);
    await close();
  });

  it("an old link of the fit page hands over, and nothing is lost", async () => {
    const hash =
      "#v=1&paper=A6&pitch=5&dots=20,28&pattern=rain-gauge&across=seed-list&lanes=2&sfile=old";
    await testBrowser.onPage(onDisk(`fit/index.html${hash}`), {}, async (page) => {
      expect(await page.locator("#pattern").inputValue()).toBe("rain-gauge");
      await page.getByRole("link", { name: "Open it on your strip’s page" }).click();
      await expect.poll(() => namesOf(page, "across")).toEqual(["Seed list"]);
      expect(await page.getByLabel("Lanes a side").inputValue()).toBe("2");
      expect(await page.getByLabel("File name").inputValue()).toBe("old");
      expect(await page.locator('[data-part="for"]').textContent()).toBe("A6, 20 × 28");
    });
  });
});
