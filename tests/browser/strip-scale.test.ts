/** Drawings in true size as a browser measures them: ticks of strips against strip.json, lines of pages against plan.json. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Page } from "playwright-core";
import { beforeAll, describe, expect, inject, it } from "vitest";
import { AXES, type Axis, otherAxis } from "../../src/measure/axis.ts";
import type { StripJson } from "../../src/strip/strip-json.ts";
import { type DrawnLine, drawnLines, linesAlong } from "./drawn-lines.ts";
import { openTestBrowser } from "./test-browser.ts";

const book = inject("book");
const jsonOf = (path: string) => JSON.parse(readFileSync(join(book, path), "utf8"));

/** In millimetres. */
const TRUE_TO = 0.05;
/** Lines that meet an edge do so to a fraction of a pixel. */
const ON = 0.02;

const testBrowser = openTestBrowser();
let page: Page;
beforeAll(async () => {
  page = await testBrowser.browser.newPage({ viewport: { width: 1200, height: 800 } });
});

async function linesOf(path: string, selector: string): Promise<readonly DrawnLine[]> {
  await page.goto(pathToFileURL(join(book, path)).href);
  return drawnLines(page, selector);
}

/** Places that are wanted and not there, and places that are there and not wanted. */
function differences(found: readonly number[], wanted: readonly number[], allowed = wanted) {
  const isIn = (places: readonly number[]) => (place: number) =>
    places.some((other) => Math.abs(other - place) <= TRUE_TO);
  return {
    missing: wanted.filter((place) => !isIn(found)(place)),
    strange: found.filter((place) => !isIn(allowed)(place)),
  };
}

const NONE = { missing: [], strange: [] };

/** How far along its side each tick stands that reaches the side's edge: the second side of one piece is turned round. */
function ticksOf(lines: readonly DrawnLine[], axis: Axis): readonly number[] {
  const [first, second] = lines
    .filter(({ role }) => role === "cut")
    .toSorted((a, b) => a.top - b.top);
  if (!first) throw new Error("the strip has no cut");
  const body = axis === "down" && second ? second : first;
  const isTurned = axis === "down" && !second;
  const ticks = linesAlong("down", lines).filter(
    ({ role, top, bottom }) =>
      ["tick", "lane"].includes(role) &&
      (isTurned ? Math.abs(bottom - body.bottom) : Math.abs(top - body.top)) < ON,
  );
  return ticks.map(({ left, right }) => {
    const at = (left + right) / 2;
    return isTurned ? body.right - at : at - body.left;
  });
}

function expectTicks(lines: readonly DrawnLine[], strip: string, notebook: string): void {
  const { sides }: StripJson = jsonOf(`strips/${strip}/${notebook}/strip.json`);
  const { paper } = jsonOf(`notebooks/${notebook}/notebook.json`);
  for (const { axis, mm } of sides) {
    const ticks = ticksOf(lines, axis);
    // A broken line at the end of the paper is no position.
    expect({ axis, ...differences(ticks, mm, [...mm, paper[axis]]) }).toEqual({ axis, ...NONE });
  }
}

const STRIPS = [
  "everyday",
  "lists-and-notes",
  "months-and-year",
  "shed-door",
  "trackers",
  "weeks",
] as const;
const NOTEBOOKS = ["a5", "a4", "letter", "fine", "lined", "pad"] as const;

describe("a strip in a browser", () => {
  it.each(STRIPS.flatMap((strip) => NOTEBOOKS.map((notebook) => [strip, notebook] as const)))(
    "%s for %s has each tick within 0.05 mm of its place",
    async (strip, notebook) => {
      expectTicks(await linesOf(`strips/${strip}/${notebook}/strip.svg`, "svg"), strip, notebook);
    },
  );

  it.each([320, 390, 1440])("keeps its size in its page, %i pixels wide", async (width) => {
    await page.setViewportSize({ width, height: 800 });
    for (const [strip, notebook] of [
      ["everyday", "a5"],
      ["weeks", "a4"],
    ] as const) {
      const path = `strips/${strip}/${notebook}/index.html`;
      expectTicks(await linesOf(path, ".strip-page > .mat svg"), strip, notebook);
    }
  });

  it("would be found to be wrong by a tenth of a millimetre", async () => {
    const lines = await linesOf("strips/everyday/a5/strip.svg", "svg");
    const moved = lines.map((line) =>
      line.role === "lane" ? { ...line, left: line.left + 0.1, right: line.right + 0.1 } : line,
    );
    expect(() => expectTicks(moved, "everyday", "a5")).toThrow();
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
  ["habit-month", "a6"],
  ["ninths-page", "letter"],
  ["ninths-spread", "a4"],
  ["season-spread", "jis-b5"],
  ["year-in-twelve", "fine"],
  ["week-by-the-hour", "b5-right"],
  ["month-five-rows", "lined"],
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
            role.startsWith("edge") && left >= sheet.left - ON && right <= sheet.right + ON,
        );
        for (const axis of AXES) {
          const { mm } = axes.find((each: { axis: Axis }) => each.axis === axis);
          const found = linesAlong(otherAxis(axis), own).map((line) =>
            axis === "across" ? line.left - sheet.left : line.top - sheet.top,
          );
          const wanted = edgesOf(plan.pages[index], axis, mm, paper[axis]);
          expect({ axis, ...differences(found, wanted) }).toEqual({ axis, ...NONE });
        }
      }
    },
  );
});
