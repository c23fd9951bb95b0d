/** A keeper's own dates: a calendar file opened on a pattern's page, drawn, listed, kept where that is ticked, and sent nowhere. */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { strFromU8, unzipSync } from "fflate";
import type { Locator, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { readText } from "../print/poppler.ts";
import { askProgram } from "../setup/ask-program.ts";
import { TINY, writeFiles } from "../setup/tiny-content.ts";
import { axeFindings } from "./axe-findings.ts";
import { downloaded, openTestBrowser } from "./test-browser.ts";
import { type WatchedPage, watchedPage } from "./watched-page.ts";

const MONTH =
  '{rows: {tracks: [{label: "{month} {year}", steps: 2}, {repeat: weeks, columns: {count: days, each: {label: "{day}"}}}]}}';
const folder = mkdtempSync(join(tmpdir(), "spanbook-own-dates-"));
const testBrowser = openTestBrowser(() => join(folder, "book"));

beforeAll(async () => {
  const month = `---\ntitle: Month\npurpose: month\ndates: month\npage: ${MONTH}\n---\nDays.\n`;
  writeFiles(join(folder, "content"), { ...TINY, "patterns/month.md": month });
  const paths = [`--content=${join(folder, "content")}`, `--output=${join(folder, "book")}`];
  const { code, stderr } = await askProgram(["build", ...paths]);
  if (code !== 0) throw new Error(stderr);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const calendar = (...events: readonly (readonly string[])[]) =>
  [
    "BEGIN:VCALENDAR",
    ...events.flatMap((lines) => ["BEGIN:VEVENT", ...lines, "END:VEVENT"]),
    "END:VCALENDAR",
    "",
  ].join("\r\n");

const SOCIETY = calendar(
  ["SUMMARY:Water day", "DTSTART;VALUE=DATE:20270302", "RRULE:FREQ=WEEKLY;INTERVAL=2"],
  ["SUMMARY:Committee", "DTSTART:20270311T190000", "RRULE:FREQ=MONTHLY;BYDAY=2TH"],
  ["SUMMARY:Gate", "DTSTART;VALUE=DATE:20270230", "DESCRIPTION:Odile has the key"],
);
const HOSTILE = calendar([
  "SUMMARY:<img src=x onerror=alert(1)>",
  "DTSTART;VALUE=DATE:20270304",
  "DESCRIPTION:Not to be kept",
]);

const field = (page: Page) => page.getByLabel("Calendar files (.ics)");
const choose = (page: Page, files: Readonly<Record<string, string>>) =>
  field(page).setInputFiles(
    Object.entries(files).map(([name, text]) => ({
      name,
      mimeType: "text/calendar",
      buffer: Buffer.from(text),
    })),
  );
const inBoxes = async (page: Page) =>
  (await page.locator(".plate svg .d-event").allTextContents())
    .join("\n")
    .split("\n")
    .filter((text) => text !== "");
const listed = (page: Page) => page.locator('[data-part="own-events-list"] li').allTextContents();

/** Where events stand in small pictures: each is a figure of its own in one path. */
const barsIn = async (bars: Locator) =>
  (await bars.evaluateAll((paths) => paths.map((path) => path.getAttribute("d") ?? "")))
    .join("")
    .split("M").length - 1;

const MARCH = [
  "Tuesday, 2 March 2027 Water day",
  "Thursday, 11 March 2027, 19:00 Committee",
  "Tuesday, 16 March 2027 Water day",
  "Tuesday, 30 March 2027 Water day",
];

describe("a keeper with a phone", () => {
  let watched: WatchedPage;
  let page: Page;
  const asked: string[] = [];

  beforeAll(async () => {
    watched = await watchedPage(testBrowser.browser, { viewport: { width: 390, height: 900 } });
    page = watched.page;
    page.on(
      "dialog",
      (dialog) => void dialog.dismiss().then(() => watched.complaints.push("dialog")),
    );
    await page.goto(`${testBrowser.address}patterns/month/plain/index.html#v=1&dates=2027-03`);
    await page.getByText("March 2027: 31 days").waitFor();
    await page.getByText("Dates from a calendar file").click();
    page.on("request", (request) => {
      const said = request.postData() ?? "";
      if (!request.url().startsWith("data:"))
        asked.push(`${request.method()} ${request.url()}${said}`);
    });
  });
  afterAll(async () => {
    expect(watched.complaints).toEqual([]);
    await watched.close();
  });

  it("sees a file's dates in the boxes and in a list, and what is wrong with its line", async () => {
    await choose(page, { "society.ics": SOCIETY });
    await expect.poll(() => listed(page)).toEqual(MARCH);
    expect(await inBoxes(page)).toEqual(["Water day", "19:00 Com…", "Water day", "Water day"]);
    const faults = await page.locator('[data-part="calendar-faults"]').textContent();
    expect(faults).toBe(
      "society.ics, line 14: The DTSTART of “Gate” cannot be read: the event is not shown. It must be a day that exists, such as DTSTART;VALUE=DATE:20270305.",
    );
    expect(await axeFindings(page)).toEqual([]);
  });

  it("sends nothing anywhere: only files of the book were asked for, and nothing was said with it", () => {
    const book = testBrowser.address;
    expect(asked).toContain(`GET ${book}assets/calendar.js`);
    const strange = asked.filter((one) => !one.startsWith(`GET ${book}`) || /[?#]/.test(one));
    expect(strange).toEqual([]);
  });

  it("sees a title as it is written, whatever it looks like", async () => {
    await choose(page, { "hostile.ics": HOSTILE });
    const title = "<img src=x onerror=alert(1)>";
    await expect.poll(() => listed(page)).toContain(`Thursday, 4 March 2027 ${title}`);
    expect((await inBoxes(page)).join("\n")).toContain("<img src");
    expect(await page.locator("img[src=x]").count()).toBe(0);
    expect(page.url()).toBe(
      `${testBrowser.address}patterns/month/plain/index.html#v=1&dates=2027-03`,
    );
  });

  it("has them in the files that the page makes", async () => {
    const [svg] = await Promise.all([
      page.waitForEvent("download").then(downloaded),
      page.getByRole("link", { name: "Page, SVG" }).click(),
    ]);
    expect(svg.toString()).toContain(">Water day<");
    const [pdf] = await Promise.all([
      page.waitForEvent("download").then(downloaded),
      page.getByRole("link", { name: "Page, PDF" }).click(),
    ]);
    expect(readText(pdf)).toContain("Water day");
  });

  it("turns to the next month, and they are there", async () => {
    await page.getByRole("button", { name: /Next/ }).first().click();
    await expect.poll(() => listed(page)).toContain("Thursday, 8 April 2027, 19:00 Committee");
    await expect.poll(() => page.url()).toContain("dates=2027-04");
    await page
      .getByRole("button", { name: /Previous/ })
      .first()
      .click();
    await expect.poll(() => listed(page)).toHaveLength(5);
    // The address follows when nobody turns any more.
    await expect.poll(() => page.url()).toContain("dates=2027-03");
  });

  it("finds nothing again that was not to be kept", async () => {
    await page.reload();
    await page.getByText("Dates from a calendar file").click();
    await page.locator("#calendar-files").waitFor();
    expect(await listed(page)).toEqual([]);
    expect(await page.evaluate(() => JSON.stringify(localStorage))).not.toContain("Committee");
  });

  it("finds them again where that was ticked, without what is not drawn", async () => {
    await choose(page, { "society.ics": SOCIETY, "hostile.ics": HOSTILE });
    await page.getByLabel("Keep these dates on this device").check();
    await page.reload();
    await expect.poll(() => listed(page)).toHaveLength(5);
    const kept = await page.evaluate(() => JSON.stringify(localStorage));
    expect(kept).toContain("Committee");
    expect(kept).not.toContain("Not to be kept");
    expect(kept).not.toContain("Odile");
  });

  it("takes one away on the page", async () => {
    await page.getByText("Dates from a calendar file").click();
    await page.getByRole("button", { name: "Remove hostile.ics" }).click();
    await expect.poll(() => listed(page)).toEqual(MARCH);
    expect(await page.evaluate(() => JSON.stringify(localStorage))).not.toContain("onerror");
  });

  it("has them on the fit page, too, and in what is saved there", async () => {
    const before = page.url();
    const fit = `${testBrowser.address}fit/index.html#v=1&paper=A5&pitch=5&dots=26,38&pattern=month&dates=2027-03`;
    await page.goto(fit);
    await expect.poll(() => listed(page)).toEqual(MARCH);
    expect(await inBoxes(page)).toEqual(["Water day", "19:00 Com…", "Water day", "Water day"]);
    const [pdf] = await Promise.all([
      page.waitForEvent("download").then(downloaded),
      page.getByRole("button", { name: "Save as PDF" }).click(),
    ]);
    expect(readText(pdf)).toContain("Water day");
    expect(page.url()).not.toContain("Water");
    await page.getByLabel("Pattern", { exact: true }).selectOption("Halves");
    await expect.poll(() => listed(page)).toEqual([]);
    expect(await page.locator('[data-part="own-dates"]').isVisible()).toBe(false);
    await page.goto(before);
  });

  it("has them on the pages of a set-up at once, and in its PDF and a list, and says them to nobody", async () => {
    const setup = "setup/index.html#v=1&dates=2027-03&pages=month,halves";
    await page.goto(`${testBrowser.address}${setup}`);
    await expect.poll(() => listed(page)).toEqual(MARCH);
    const bars = page.locator(".facing .drawing .d-event");
    await expect.poll(() => barsIn(bars)).toBe(4);
    await page.getByText("Dates from a calendar file").click();
    await choose(page, { "hostile.ics": HOSTILE });
    await expect.poll(() => barsIn(bars)).toBe(5);
    expect(await listed(page)).toHaveLength(5);
    expect(await page.locator("img[src=x]").count()).toBe(0);
    expect(await axeFindings(page)).toEqual([]);
    await page.getByRole("button", { name: "Remove hostile.ics" }).click();
    await expect.poll(() => barsIn(bars)).toBe(4);
    const save = async (doing: string) => {
      const button = page.locator(`[data-do="${doing}"]`);
      const [file] = await Promise.all([page.waitForEvent("download"), button.click()]);
      return downloaded(file);
    };
    expect(readText(await save("save-pages-pdf"))).toContain("Water day");
    const said = [
      page.url(),
      await page.getByLabel("Link to this set-up").inputValue(),
      (await page.locator("#setup-data").textContent()) ?? "",
      String(await save("save-setup")),
      String(await save("save-setup-json")),
    ];
    expect(said[2]).toContain('"pattern": "month"');
    expect(said.join("\n")).not.toMatch(/Water|Committee|onerror/);
    await page.getByRole("button", { name: "Next: April 2027, from page 3" }).click();
    await expect.poll(() => listed(page)).toContain("Thursday, 8 April 2027, 19:00 Committee");
    await expect.poll(() => page.url()).toContain("dates=2027-04");
  });

  it("finds the other among what is kept, in no zip, and removes it there", async () => {
    await page.goto(`${testBrowser.address}kept/index.html`);
    const section = page.locator('[data-part="calendars"]');
    await section.getByRole("listitem").filter({ hasText: "society.ics" }).waitFor();
    expect(await axeFindings(page)).toEqual([]);
    const [zip] = await Promise.all([
      page.waitForEvent("download").then(downloaded),
      page.getByRole("button", { name: "Save all as a zip" }).click(),
    ]);
    const texts = Object.values(unzipSync(zip)).map((bytes) => strFromU8(bytes));
    expect(texts.join("")).not.toContain("Committee");
    await section.getByRole("button", { name: "Remove society.ics" }).click();
    await expect.poll(() => section.isVisible()).toBe(false);
    expect(await page.evaluate(() => JSON.stringify(localStorage))).not.toContain("Committee");
  });
});
