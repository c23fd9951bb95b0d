/** The calendar files of a content folder: on the pages of set-ups, in their files and lists, with their problems by line. */
import { mkdtempSync, readFileSync, rmSync, symlinkSync, unlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { readText } from "../print/poppler.ts";
import { askProgram } from "../setup/ask-program.ts";
import { TINY, writeFiles } from "../setup/tiny-content.ts";

const folder = mkdtempSync(join(tmpdir(), "spanbook-calendars-"));
const content = join(folder, "content");
const build = (output: string) =>
  askProgram(["build", `--content=${content}`, `--output=${join(folder, output)}`]);
const built = (output: string, file: string) =>
  readFileSync(join(folder, output, "setups/spring/plain", file));

const MONTH = "{rows: {tracks: [{repeat: weeks, columns: {count: days, each: {label: '{day}'}}}]}}";
const FILES = {
  ...TINY,
  "patterns/month.md": `---\ntitle: Month\npurpose: month\ndates: month\npage: ${MONTH}\n---\nDays.\n`,
  "setups/spring.md": "---\ntitle: Spring\ndates: 2027-03\npages: [month]\n---\nSet up.\n",
  "calendar/notes.txt": "nobody's business",
};
const calendar = (...lines: readonly string[]) =>
  ["BEGIN:VCALENDAR", "BEGIN:VEVENT", ...lines, "END:VEVENT", "END:VCALENDAR", ""].join("\r\n");

beforeAll(() => writeFiles(content, FILES));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

it("without any a book is built as ever, and says nothing of dates", async () => {
  const { code, stderr } = await build("without");
  expect([code, stderr]).toEqual([0, ""]);
  expect(built("without", "index.html").toString()).not.toContain("Dates on these days");
});

it("what they have stands on the pages of set-ups, in their PDF files and in a list", async () => {
  writeFiles(content, {
    "calendar/Society 2027.ics": calendar(
      "SUMMARY:<b>Swap</b>",
      "DTSTART:20270304T093000Z",
      "RRULE:FREQ=WEEKLY",
    ),
  });
  const { code, stdout, stderr } = await build("with");
  expect([code, stderr]).toEqual([0, ""]);
  expect(stdout).toContain("calendar/Society 2027.ics:4:1");
  expect(stdout).toContain("Times that are written in UTC are shown as they are written.");
  const page = built("with", "index.html").toString();
  expect(page.match(/&lt;b&gt;Swap&lt;\/b&gt;<\/bdi>/g)).toHaveLength(4);
  expect(page).toContain("Thursday, 4 March 2027, 09:30");
  expect(page).toContain('class="d-event"');
  expect(readText(built("with", "pages.pdf")).match(/09:30/g)).toHaveLength(4);
  expect(built("with", "setup.json")).toEqual(built("without", "setup.json"));
  expect(built("with", "strip.svg")).toEqual(built("without", "strip.svg"));
});

it("an edit of one makes these pages anew", async () => {
  writeFiles(content, {
    "calendar/Society 2027.ics": calendar("SUMMARY:Fire", "DTSTART;VALUE=DATE:20270304"),
  });
  expect((await build("with")).code).toBe(0);
  expect(built("with", "index.html").toString()).toContain("<bdi>Fire</bdi>");
  expect(readText(built("with", "pages.pdf"))).toContain("Fire");
});

it("what is wrong with one is reported with its line, and what to do", async () => {
  writeFiles(content, {
    "calendar/wrong.ics": calendar("SUMMARY:Swap", "DTSTART;VALUE=DATE:20270230"),
    "calendar/endless.ics": calendar("DTSTART:20270301T000000", "RRULE:FREQ=SECONDLY"),
  });
  const { code, stderr } = await build("wrong");
  expect(code).toBe(1);
  expect(stderr).toContain(["calendar/wrong.ics:4:1", "  DTSTART;VALUE=DATE:20270230"].join("\n"));
  expect(stderr).toContain("The `DTSTART` of “Swap” cannot be read: the event is not shown.");
  expect(stderr).toContain("It must be a day that exists, such as `DTSTART;VALUE=DATE:20270305`.");
  expect(stderr).toContain("calendar/endless.ics:3:1");
  expect(stderr).toContain("2 problems in 2 files.");
});

it("one that is a link out of the folder, or too large, is refused", async () => {
  for (const name of ["wrong.ics", "endless.ics"]) unlinkSync(join(content, "calendar", name));
  writeFileSync(join(folder, "elsewhere.ics"), calendar("DTSTART:20270301"));
  symlinkSync(join(folder, "elsewhere.ics"), join(content, "calendar/link.ics"));
  writeFileSync(join(content, "calendar/large.ics"), "x".repeat(1024 * 1024 + 1));
  const { code, stderr } = await build("wrong");
  expect(code).toBe(1);
  expect(stderr).toContain("calendar/link.ics\n  The link leads out of the content folder.");
  expect(stderr).toContain("calendar/large.ics\n  The file is larger than 1024 KiB.");
});
