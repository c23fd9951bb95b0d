/** Drawings in true size as a browser measures them: ticks of strips against strip.json, lines of pages against plan.json. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { beforeAll, describe, expect, inject, it } from "vitest";
import { AXES, type Axis, otherAxis } from "../../src/measure/axis.ts";
import { gateWay } from "../sweep/sweep-size.ts";
import { type DrawnLine, drawnLines, linesAlong } from "./drawn-lines.ts";
import { differences, expectTicks, NONE, ON_EDGE } from "./expect-ticks.ts";
import { bookWith, onDisk, openTestBrowser } from "./test-browser.ts";

const book = inject("book");
const jsonOf = (path: string) => JSON.parse(readFileSync(join(bookWith(path), path), "utf8"));

const testBrowser = openTestBrowser();
let page: Page;
beforeAll(async () => {
  page = await testBrowser.browser.newPage({ viewport: { width: 1200, height: 800 } });
});

async function linesOf(path: string, selector: string): Promise<readonly DrawnLine[]> {
  await page.goto(onDisk(path));
  return drawnLines(page, selector);
}

/** Each strip of the book once, and each kind of paper and of counting; a sweep has every strip on every notebook. */
const STRIPS = [
  ["everyday", "a5"],
  ["lists-and-notes", "a4"],
  ["months-and-year", "letter"],
  ["shed-door", "pad"],
  ["trackers", "fine"],
  ["weeks", "lined"],
] as const;

describe("a strip in a browser", () => {
  it.each(STRIPS)(
    "%s for %s has each tick within 0.05 mm of its place",
    async (strip, notebook) => {
      expectTicks(await linesOf(`strips/${strip}/${notebook}/strip.svg`, "svg"), {
        book: bookWith(`strips/${strip}/${notebook}/strip.json`),
        strip,
        notebook,
      });
    },
  );

  it.each(gateWay([320, 390, 1440], 0))(
    "keeps its size in its page, %i pixels wide",
    async (width) => {
      await page.setViewportSize({ width, height: 800 });
      for (const [strip, notebook] of [
        ["everyday", "a5"],
        ["weeks", "a4"],
      ] as const) {
        const path = `strips/${strip}/${notebook}/index.html`;
        const lines = await linesOf(path, ".strip-page > .mat svg");
        expectTicks(lines, { book: bookWith(path), strip, notebook });
      }
    },
  );

  it("would be found to be wrong by a tenth of a millimetre", async () => {
    const lines = await linesOf("strips/everyday/a5/strip.svg", "svg");
    const moved = lines.map((line) =>
      line.role === "lane" ? { ...line, left: line.left + 0.1, right: line.right + 0.1 } : line,
    );
    expect(() => expectTicks(moved, { book, strip: "everyday", notebook: "a5" })).toThrow();
  });
});

interface PlanPage {
  readonly boxes: readonly Readonly<Record<"x" | "y" | "w" | "h", number>>[];
}

/** Where the boxes of a page begin and end along an axis, in millimetres; no pen draws on the edge of the paper. */
function edgesOf(plan: PlanPage, axis: Axis, mm: readonly number[], paper: number) {
  const [at, size] = axis === "across" ? (["x", "w"] as const) : (["y", "h"] as const);
  const positions = new Set(plan.boxes.flatMap((box) => [box[at], box[at] + box[size]]));
  return [...positions]
    .map((position) => mm[position] ?? Number.NaN)
    .filter((place) => place > 0 && place < paper);
}

const PAGES = [
  ["two-row-week", "a5"],
  ["habit-tracker", "a6"],
  ["ninths-page", "letter"],
  ["ninths-spread", "a4"],
  ["season-spread", "jis-b5"],
  ["year-in-twelve", "fine"],
  ["week-by-the-hour", "b5-right"],
  ["month-grid", "lined"],
  ["bed-plan", "square"],
] as const;

describe("a page in a browser", () => {
  it.each(PAGES)(
    "%s on %s has each line within 0.05 mm of its place",
    async (pattern, notebook) => {
      const folder = `patterns/${pattern}/${notebook}/`;
      const plan = jsonOf(`${folder}plan.json`);
      const { paper, axes } = jsonOf(`notebooks/${notebook}/notebook.json`);
      const lines = await linesOf(`${folder}page.svg`, "svg");
      const papers = lines.filter(({ role }) => role === "paper").sort((a, b) => a.left - b.left);
      expect(papers).toHaveLength(plan.pages.length);
      for (const [index, sheet] of papers.entries()) {
        expect(sheet.right - sheet.left).toBeCloseTo(paper.across, 1);
        const own = lines.filter(
          ({ role, left, right }) =>
            role.startsWith("edge") &&
            left >= sheet.left - ON_EDGE &&
            right <= sheet.right + ON_EDGE,
        );
        for (const axis of AXES) {
          const { mm } = axes.find((each: { axis: Axis }) => each.axis === axis);
          const found = linesAlong(otherAxis(axis), own).map((line) =>
            axis === "across" ? line.left - sheet.left : line.top - sheet.top,
          );
          const right = edgesOf(plan.pages[index], axis, mm, paper[axis]);
          expect({ axis, ...differences(found, right) }).toEqual({ axis, ...NONE });
        }
      }
    },
  );
});
