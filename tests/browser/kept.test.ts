/** What a keeper makes of the book: words retyped, found again, all saved as a zip that builds, and opened on another device. */
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { strFromU8, unzipSync, zipSync } from "fflate";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, it } from "vitest";
import { askProgram } from "../setup/ask-program.ts";
import { writeFiles } from "../setup/tiny-content.ts";
import { gateWay } from "../sweep/sweep-size.ts";
import { axeFindings } from "./axe-findings.ts";
import { downloaded, onDisk, openTestBrowser } from "./test-browser.ts";
import { type WatchedPage, watchedPage } from "./watched-page.ts";

const testBrowser = openTestBrowser(inject("book"));

const planOf = (page: Page) => page.locator("#plan-data").textContent();
const titles = (page: Page, kind: string) =>
  page.locator(`[data-part="kept-${kind}"] .kept-title :is(a, b)`).allTextContents();
const button = (page: Page, name: string) => page.getByRole("button", { name, exact: true });
const status = (page: Page) => page.locator('[data-part="status"]').textContent();

/** Picks files as a person does. */
const pick = (page: Page, files: Readonly<Record<string, string | Uint8Array>>) =>
  page.getByLabel("Open files or a zip").setInputFiles(
    Object.entries(files).map(([name, content]) => ({
      name,
      mimeType: "application/octet-stream",
      buffer: Buffer.from(content),
    })),
  );

const WAYS = [
  ["a sub-path of a server", 390],
  ["disk", 1440],
] as const;

describe.each(gateWay(WAYS, 0))("from %s, %i px wide, a keeper", (place, width) => {
  let watched: WatchedPage;
  let page: Page;
  let zip: Uint8Array;
  let plan: string | null;
  const folder = mkdtempSync(join(tmpdir(), "spanbook-kept-"));
  const home = () => (place === "disk" ? onDisk("/") : testBrowser.address);

  beforeAll(async () => {
    watched = await watchedPage(testBrowser.browser, { viewport: { width, height: 900 } });
    page = watched.page;
    await page.goto(`${home()}fit/index.html#v=1&paper=B6&pitch=5&dots=24,35&first=5,5`);
    await page.getByLabel("Dots across").fill("23");
    await page.locator('[data-part="mine"]', { hasText: "B6, 23 × 35" }).waitFor();
  });

  afterAll(async () => {
    await watched.close();
    rmSync(folder, { recursive: true });
  });

  it("retypes a word by keys alone, and sees the copy drawn", async () => {
    await page.goto(`${home()}patterns/habit-tracker/a5/index.html`);
    await page.getByText("Change the words").focus();
    await page.keyboard.press("Enter");
    const habit = page.getByLabel("Habit", { exact: true }).and(page.locator("input"));
    await habit.focus();
    await page.keyboard.press("Control+A");
    await page.keyboard.type("Sleep");
    await page.getByLabel("Name of your layout").fill("Sleep month");
    await page.keyboard.press("Enter");
    await page.locator(".editor-host").waitFor();
    expect(await page.locator('[data-part="plate"] svg > title').textContent()).toBe(
      "Sleep month, on B6, 23 × 35",
    );
    expect(await page.locator('[data-part="layout-kept"]').textContent()).toBe(
      "Kept on this device as “Sleep month”.",
    );
    plan = await planOf(page);
    expect(plan).toContain('"label": "Sleep"');
    expect(plan).not.toContain('"label": "Habit"');
  });

  it("prints it and takes it along from there", async () => {
    for (const [name, file] of [
      ["Page, PDF", "sleep-month-b6-23-35.pdf"],
      ["Strip, SVG", "sleep-month-b6-23-35-strip.svg"],
    ] as const) {
      const [download] = await Promise.all([
        page.waitForEvent("download"),
        button(page, name).press("Enter"),
      ]);
      expect(download.suggestedFilename()).toBe(file);
      expect((await downloaded(download)).length).toBeGreaterThan(1_000);
    }
  });

  it("finds it above the book’s own patterns", async () => {
    await page.goto(`${home()}patterns/index.html`);
    const card = page.locator('[data-part="own-cards"] .card');
    await expect.poll(() => card.count()).toBe(1);
    expect(await card.locator("img").getAttribute("src")).toMatch(/^data:image\/svg/);
    await card.getByRole("link", { name: "Sleep month" }).press("Enter");
    await page.locator(".editor-host").waitFor();
    expect(await planOf(page)).toBe(plan);
  });

  it("finds it on the page of all that is kept, which has nothing wrong", async () => {
    await page.getByRole("link", { name: "Kept on this device", exact: true }).press("Enter");
    await expect.poll(() => titles(page, "patterns")).toEqual(["Sleep month"]);
    expect(await titles(page, "notebooks")).toEqual(["B6, 23 × 35"]);
    expect(await axeFindings(page)).toEqual([]);
    const isWide = () =>
      document.documentElement.scrollWidth > document.documentElement.clientWidth;
    expect(await page.evaluate(isWide)).toBe(false);
  });

  it("renames it, removes it and takes it back by keys alone", async () => {
    await button(page, "Rename Sleep month").press("Enter");
    await page.getByLabel("New name").fill("");
    await page.keyboard.press("Enter");
    expect(await page.getByRole("alert").first().textContent()).toContain("title");
    await page.getByLabel("New name").fill("Nights: a month");
    await page.keyboard.press("Enter");
    expect(await titles(page, "patterns")).toEqual(["Nights: a month"]);
    await button(page, "Remove Nights: a month").press("Enter");
    expect(await titles(page, "patterns")).toEqual([]);
    await page.keyboard.press("Enter");
    expect(await titles(page, "patterns")).toEqual(["Nights: a month"]);
    await page.reload();
    await expect.poll(() => titles(page, "patterns")).toEqual(["Nights: a month"]);
  });

  it("saves all as a zip, which builds as it is and gives the same plan", async () => {
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      button(page, "Save all as a zip").press("Enter"),
    ]);
    expect(download.suggestedFilename()).toBe("my-layouts.zip");
    zip = await downloaded(download);
    const files = Object.entries(unzipSync(zip)).map(([path, bytes]) => [path, strFromU8(bytes)]);
    expect(files.map(([path]) => path)).toEqual([
      "book.yaml",
      "patterns/sleep-month.md",
      "notebooks/b6-23-35.md",
    ]);
    writeFiles(join(folder, "content"), Object.fromEntries(files));
    const output = join(folder, "book");
    const { code, stderr } = await askProgram([
      "build",
      `--content=${join(folder, "content")}`,
      `--output=${output}`,
    ]);
    expect([code, stderr]).toEqual([0, ""]);
    const built = readFileSync(join(output, "patterns/sleep-month/b6-23-35/plan.json"), "utf8");
    expect(built).toBe(plan);
  });

  it("opens it on another device, and it is all there", async () => {
    const other = await watchedPage(testBrowser.browser, { viewport: { width, height: 900 } });
    await other.page.goto(`${home()}kept/index.html`);
    await other.page.locator('[data-part="no-patterns"]').waitFor();
    await pick(other.page, { "my-layouts.zip": zip });
    await expect.poll(() => titles(other.page, "patterns")).toEqual(["Nights: a month"]);
    expect(await titles(other.page, "notebooks")).toEqual(["B6, 23 × 35"]);
    await other.page.getByRole("link", { name: "B6, 23 × 35" }).press("Enter");
    await expect
      .poll(() => other.page.locator('[data-part="mine"]').textContent())
      .toBe("B6, 23 × 35");
    await other.page.goto(`${home()}fit/recipe/index.html#v=1&mine=sleep-month`);
    await other.page.locator(".editor-host").waitFor();
    expect(await planOf(other.page)).toBe(plan);
    expect(other.complaints).toEqual([]);
    await other.close();
  });

  it("clears everything, and takes that back, by keys alone", async () => {
    await button(page, "Clear saved data").press("Enter");
    expect([await titles(page, "patterns"), await titles(page, "notebooks")]).toEqual([[], []]);
    expect(await page.locator('[data-part="mine"]').isVisible()).toBe(false);
    await page.keyboard.press("Enter");
    expect(await titles(page, "patterns")).toEqual(["Nights: a month"]);
    expect(await titles(page, "notebooks")).toEqual(["B6, 23 × 35"]);
  });

  it("meets nothing that does not belong to a page", () => {
    expect(watched.complaints).toEqual([]);
  });
});

const WEEK = (title: string) => `---\ntitle: ${title}\npurpose: week\npage: {rows: 7}\n---\n`;
const STRIP = "---\ntitle: My strip\nacross: []\ndown: [week]\n---\n";

describe("what is brought to the page", () => {
  it("is asked about where another has the name, and goes on being named by what came with it", async () => {
    const { page, complaints, close } = await watchedPage(testBrowser.browser);
    await page.goto(onDisk("kept/index.html"));
    await page.locator('[data-part="no-patterns"]').waitFor();
    await pick(page, { "week.md": WEEK("One") });
    await expect.poll(() => titles(page, "patterns")).toEqual(["One"]);
    await pick(page, { "week.md": WEEK("Two"), "mine.md": STRIP });
    await button(page, "Keep as chosen").press("Enter");
    expect(await titles(page, "patterns")).toEqual(["One", "Two"]);
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      button(page, "Save file My strip").click(),
    ]);
    expect(String(await downloaded(download))).toBe(STRIP.replace("[week]", "[week-2]"));
    await pick(page, { "week.md": WEEK("Three") });
    await page.getByLabel("Put this one in its place").check();
    await button(page, "Keep as chosen").click();
    expect(await titles(page, "patterns")).toEqual(["Three", "Two"]);
    await pick(page, { "week.md": WEEK("Three"), "week-2.md": WEEK("Four") });
    await page.getByLabel("Leave this one").check();
    await button(page, "Keep as chosen").click();
    expect(await titles(page, "patterns")).toEqual(["Three", "Two"]);
    expect(await status(page)).toBe("0 things are kept now. 1 were here already.");
    expect(complaints).toEqual([]);
    await close();
  });

  it("that is a strip opens on the strip page, with patterns of the book or of one's own", async () => {
    const { page, complaints, close } = await watchedPage(testBrowser.browser);
    await page.goto(onDisk("kept/index.html"));
    await page.locator('[data-part="no-patterns"]').waitFor();
    const text = STRIP.replace("week", "two-row-week");
    await pick(page, { "own.md": STRIP, "week.md": WEEK("One"), "books.md": text });
    const links = page.locator('[data-part="kept-strips"] a');
    await expect.poll(() => links.count()).toBe(2);
    for (const [index, pattern] of ["two-row-week", "week"].entries()) {
      await links.nth(index).press("Enter");
      await expect.poll(() => page.locator("#strip-data").textContent()).toContain(`"${pattern}"`);
      await page.goBack();
      await expect.poll(() => links.count()).toBe(2);
    }
    expect(complaints).toEqual([]);
    await close();
  });

  it.each<[string, Readonly<Record<string, string | Uint8Array>>, string]>([
    ["a wrong recipe", { "x.md": WEEK("X").replace("week", "wek") }, "patterns/x.md:3:10"],
    [
      "a zip that leads elsewhere",
      { "x.zip": zipSync({ "../x.md": new Uint8Array(3) }) },
      "“../x.md” leads out of the folder.",
    ],
    [
      "a bomb",
      { "x.zip": zipSync({ "patterns/x.md": new Uint8Array(64 * 1024 * 1024) }) },
      "larger than 20 MB once it is unpacked",
    ],
    [
      "a wrong name",
      { "x.zip": zipSync({ "patterns/My X.md": new Uint8Array(3) }) },
      "`My X.md` is not a name that a page can have.",
    ],
    ["no zip", { "x.zip": "PK" }, "This is not a zip file, or it was cut off."],
  ])("is told of %s in words, and nothing of it is kept", async (_, files, words) => {
    const { page, complaints, close } = await watchedPage(testBrowser.browser);
    await page.goto(onDisk("kept/index.html"));
    await page.locator('[data-part="no-patterns"]').waitFor();
    await pick(page, files);
    await expect.poll(() => page.locator('[data-part="reports"]').textContent()).toContain(words);
    expect(await titles(page, "patterns")).toEqual([]);
    expect(complaints).toEqual([]);
    await close();
  });

  it("by dropping, is taken too; another tab shows it at once", async () => {
    const { page, complaints, close } = await watchedPage(testBrowser.browser);
    await page.goto(`${testBrowser.address}kept/index.html`);
    await page.locator('[data-part="no-patterns"]').waitFor();
    const tab = await page.context().newPage();
    await tab.goto(page.url());
    await tab.locator('[data-part="no-patterns"]').waitFor();
    await page.evaluate((text) => {
      const data = new DataTransfer();
      data.items.add(new File([text], "week.md"));
      document.body.dispatchEvent(
        new DragEvent("drop", { bubbles: true, cancelable: true, dataTransfer: data }),
      );
    }, WEEK("Dropped"));
    await expect.poll(() => titles(tab, "patterns")).toEqual(["Dropped"]);
    expect(complaints).toEqual([]);
    await close();
  });
});

describe("a browser that keeps nothing", () => {
  it("is told so, and what is opened lasts for the visit", async () => {
    const { page, close } = await watchedPage(testBrowser.browser);
    await page.addInitScript(() => {
      Object.defineProperty(window, "localStorage", {
        get: () => {
          throw new DOMException("refused", "SecurityError");
        },
      });
    });
    await page.goto(onDisk("kept/index.html"));
    await page.locator('[data-part="no-patterns"]').waitFor();
    await pick(page, { "week.md": WEEK("One") });
    await expect.poll(() => titles(page, "patterns")).toEqual(["One"]);
    expect(await page.locator('[data-part="not-kept"]').isVisible()).toBe(true);
    await close();
  });
});
