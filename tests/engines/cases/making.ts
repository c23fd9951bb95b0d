/** The second half of a keeper's journey: a strip, the next pages, a layout of their own, all of it saved and brought back, photos counted and measured. */
import { expect } from "vitest";
import { KEYS } from "../drivers/engine.ts";
import { stagedPage, stagedSheet } from "../staged-page.ts";
import { TO_THE_TITLE, titleDrawn } from "./recipe-title.ts";
import type { Step } from "./step.ts";

export const MAKING: readonly Step[] = [
  [
    "puts layouts on a strip by words and keys, and saves its sheet",
    async (hand, book) => {
      await hand.open(book.served("strip/index.html"));
      await hand.fill("#find", "seed list");
      await hand.engine.type(KEYS.enter);
      await hand.reads('[data-side="across"] li', "Seed list");
      await hand.engine.type(`thirds gap 1${KEYS.enter}`);
      await hand.reads('[data-side="down"] li', "Thirds, gap 1");
      await hand.until(() =>
        document.querySelector("#strip-data")?.textContent?.includes('"marks"'),
      );
      await hand.press('[data-do="print-strip"]');
      await hand.until(() => document.querySelector(".print-out svg"));
      await hand.press('[data-do="save-strip-pdf"]');
      expect((await hand.saved(".pdf")).length).toBeGreaterThan(1_000);
    },
  ],
  [
    "sets the pages of March 2027 up, and has them all in one file",
    async (hand, book) => {
      await hand.open(book.served("setup/index.html"));
      await hand.fill("#dates", "2027-03");
      await hand.fill("#first", "43");
      await hand.press("#find");
      for (const words of ["ope", "gri", "two r"]) await hand.engine.type(words + KEYS.enter);
      await hand.reads('[data-part="heading"], h2', "March 2027");
      await hand.until(() => {
        const { from } =
          JSON.parse(document.querySelector("#setup-data")?.textContent ?? "")?.dates ?? {};
        return from === "2027-03-01" && document.querySelectorAll(".facing .drawing").length >= 3;
      });
      await hand.press('[data-do="save-pages-pdf"]');
      expect((await hand.saved(".pdf")).length).toBeGreaterThan(10_000);
    },
  ],
  [
    "writes in the editor, sees the drawing follow, and keeps the layout",
    async (hand, book) => {
      await hand.open(book.served("fit/recipe/index.html"));
      const before = await titleDrawn(hand);
      await hand.press(".editor-host");
      await hand.engine.type(`${TO_THE_TITLE}${KEYS.enter}purpos: page`);
      await hand.reads('[data-part="problems"]', "purpos");
      await hand.engine.type(`${KEYS.backspace.repeat("\npurpos: page".length)} in ink`);
      await hand.reads(".plate svg > title", before.replace(",", " in ink,"));
      await hand.press('[data-do="keep-layout"]');
      await hand.reads('[data-part="layout-kept"]', " in ink");
    },
  ],
  [
    "saves all that is kept as a zip, clears it, and brings it back from the zip",
    async (hand, book) => {
      await hand.open(book.served("kept/index.html"));
      await hand.reads('[data-part="kept-patterns"]', " in ink");
      // What stands above the button comes later, and moves it.
      await hand.until(() => document.querySelector('[data-part="uses-chart"] svg'));
      await hand.press('[data-do="save-all"]');
      const zip = await hand.saved(".zip");
      await hand.press('[data-do="clear"]');
      await hand.until(() => !document.querySelector('[data-part="kept-patterns"] li'));
      await hand.open(book.served("kept/index.html"));
      await hand.choose("#open-files", "all.zip", zip);
      await hand.reads('[data-part="kept-patterns"]', " in ink");
    },
  ],
  [
    "counts the dots of a photo in the page, by a worker, and takes the numbers over",
    async (hand, book) => {
      await hand.open(book.served("fit/index.html"));
      await hand.select("#paper", "A6");
      await hand.press("summary", "Count the dots from a photo");
      await hand.until(() => document.querySelector("#photo-file"));
      await hand.choose("#photo-file", "page.png", await stagedPage());
      await hand.reads(".photo-result", "20 across and 28 down");
      await hand.press(".photo-result button", "Use these numbers");
      await hand.reads('[data-part="tally"]', "20 across");
    },
  ],
  [
    "measures the bars of the test sheet in a photo as Node does, and takes the lengths over",
    async (hand, book) => {
      const { file, lengths } = await stagedSheet();
      await hand.open(book.served("measure/index.html"));
      await hand.press("summary", "Measure the bars from a photo");
      await hand.until(() => document.querySelector("#photo-file"));
      await hand.choose("#photo-file", "sheet.png", file);
      await hand.press(".photo-result button", "Use these");
      const filled = await hand.until(() =>
        ["bar-x", "bar-y"].map((id) => document.querySelector<HTMLInputElement>(`#${id}`)?.value),
      );
      const [x, y] = filled.map(Number);
      expect(x).toBeCloseTo(Number(lengths.x), 1);
      expect(y).toBeCloseTo(Number(lengths.y), 1);
    },
  ],
];
