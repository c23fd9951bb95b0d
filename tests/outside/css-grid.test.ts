/** The engine beside a browser's own CSS Grid, wherever every exact share is whole. */
import { describe, expect, it } from "vitest";
import { divide } from "../../src/divide/divide.ts";
import type { TrackSize } from "../../src/divide/question.ts";
import { planPattern } from "../../src/plan/plan-pattern.ts";
import { launchChromium } from "../browser/launch.ts";
import { GRID_STYLE, gridPage, PX_PER_STEP } from "../oracle/grid-page.ts";
import { notebookOf } from "../oracle/notebook-of.ts";
import { onePage, recipeOf } from "../oracle/recipe-of.ts";
import { fixedTrack, shareTrack, split } from "../oracle/track.ts";
import { type WholePattern, wholePatterns } from "../oracle/whole-patterns.ts";

const PATTERNS = [...wholePatterns(1, 200)];

/** Where a leaf lies, in steps. */
type Place = readonly [path: string, x: number, y: number, w: number, h: number];

/** Lays all patterns out in one page load and measures their leaves. */
async function placesInBrowser(): Promise<readonly (readonly Place[])[]> {
  const browser = await launchChromium();
  try {
    const page = await browser.newPage();
    const pages = PATTERNS.map(({ page, across, down }) => gridPage(page, across, down));
    await page.setContent(`<!doctype html><style>${GRID_STYLE}</style>${pages.join("")}`);
    return await page.evaluate(
      (px) =>
        [...document.querySelectorAll(".root")].map((root) =>
          [...root.querySelectorAll("[data-path]")].map((leaf) => {
            const { x, y, width, height } = leaf.getBoundingClientRect();
            const path = leaf.getAttribute("data-path") ?? "";
            return [path, x / px, y / px, width / px, height / px] as const;
          }),
        ),
      PX_PER_STEP,
    );
  } finally {
    await browser.close();
  }
}

function placesInPlan({ page, across, down }: WholePattern): readonly Place[] {
  const plan = planPattern(recipeOf(onePage(page)), notebookOf(across, down));
  if (!plan.fits) return [];
  return (plan.pages[0]?.boxes ?? []).map(({ path, x, y, w, h }) => [path, x, y, w, h] as const);
}

describe("positions equal those of a real display: grid", () => {
  it("for 200 generated pages with fr, gap, minmax, repeat, fixed tracks, padding and alignment", async () => {
    const browser = await placesInBrowser();
    expect(browser).toHaveLength(200);
    for (const [i, pattern] of PATTERNS.entries())
      expect(placesInPlan(pattern), JSON.stringify(pattern)).toEqual(browser[i]);
  }, 60_000);

  it("and the pages are rich: over 1,000 leaves, with every kind of track and placing", () => {
    const text = PATTERNS.map(({ page, across, down }) => gridPage(page, across, down)).join("");
    expect(text.match(/data-path/g)?.length).toBeGreaterThan(1_000);
    for (const part of ["fr", "minmax(20px", "repeat(", "0.5fr", "space-between", "center", ":end"])
      expect(text.split(part).length, part).toBeGreaterThan(10);
  });
});

/** Expected sizes from the web-platform-tests, css/css-grid: the named files; pixels taken as steps, halved where over 400. */
const PLATFORM: readonly (readonly [
  string,
  number,
  number,
  readonly TrackSize[],
  readonly number[],
])[] = [
  // grid-definition/grid-support-flexible-lengths-001.html, 800 px
  ["1fr 1fr", 400, 0, [shareTrack(1), shareTrack(1)], [200, 200]],
  ["1fr 2fr 1fr", 400, 0, [shareTrack(1), shareTrack(2), shareTrack(1)], [100, 200, 100]],
  [
    "1fr 4fr 100px 3fr 2fr",
    400,
    0,
    [shareTrack(1), shareTrack(4), fixedTrack(50), shareTrack(3), shareTrack(2)],
    [35, 140, 50, 105, 70],
  ],
  ["300px 1fr", 400, 0, [fixedTrack(150), shareTrack(1)], [150, 250]],
  ["0.25fr 0.75fr", 400, 0, [shareTrack(0.25), shareTrack(0.75)], [100, 300]],
  // layout-algorithm/grid-flex-track-intrinsic-sizes-001.html, 50 px
  [
    "minmax(30px, 1fr) minmax(0, 1fr)",
    50,
    0,
    [shareTrack(1, { min: 30 }), shareTrack(1)],
    [30, 20],
  ],
  [
    "minmax(20px, 1fr) minmax(0, 1fr)",
    50,
    0,
    [shareTrack(1, { min: 20 }), shareTrack(1)],
    [25, 25],
  ],
  // layout-algorithm/flex-sizing-columns-min-max-width-001.html, 70 px, gap 33 px
  [
    "minmax(10px, 1fr) minmax(10px, 4fr)",
    70,
    33,
    [shareTrack(1, { min: 10 }), shareTrack(4, { min: 10 })],
    [10, 27],
  ],
];

describe("sizes equal those of the web platform's own tests", () => {
  it.each(PLATFORM)("%s in %i, gap %i", (_, length, gap, tracks, sizes) => {
    expect(divide(split(length, tracks, gap))).toEqual({ sizes, gap, leftover: 0 });
  });
});
