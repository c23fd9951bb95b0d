/** The small drawings about counting and dividing: what stands where, read back from the scene. */
import { createSVGWindow } from "svgdom";
import { describe, expect, it } from "vitest";
import { barsScene } from "../../src/draw/figure/bars-scene.ts";
import { bothWaysScene } from "../../src/draw/figure/both-ways-scene.ts";
import { countingScene } from "../../src/draw/figure/counting-scene.ts";
import { evenChartScene } from "../../src/draw/figure/even-chart-scene.ts";
import { splitScene } from "../../src/draw/figure/split-scene.ts";
import { PREVIEW_PIXELS, previewScene } from "../../src/draw/page/preview-scene.ts";
import type { Scene, TextMark } from "../../src/draw/scene.ts";
import { createSvgWriter } from "../../src/draw/svg/write-svg.ts";
import { COUNTS } from "../../src/measure/grid-axis.ts";
import type { PlanSplit } from "../../src/plan/plan.ts";
import { parseXml } from "./parse-xml.ts";
import { axisOf, notebookWith } from "./plan-of.ts";

const write = createSvgWriter(createSVGWindow());
/** 24 dots of 5 mm, the first one a step from the edge of 125 mm. */
const EVEN = notebookWith(axisOf(125, 24), axisOf(125, 24));
/** 26 dots of 5 mm, the first one 11.5 mm from the edge of 148 mm. */
const WIDE = notebookWith(axisOf(148, 26, { first: 11.5 }), axisOf(210, 38, { first: 12.5 }));

const split = (part: Partial<PlanSplit>): PlanSplit => ({
  path: "columns",
  axis: "across",
  from: 0,
  length: 24,
  sizes: [8, 8, 8],
  gaps: [0, 0],
  leftover: 0,
  before: 0,
  after: 0,
  ...part,
});

const texts = (scene: Scene, role: string) =>
  scene.marks.filter((mark): mark is TextMark => mark.kind === "text" && mark.role === role);
const numbers = (scene: Scene, role: string) => texts(scene, role).map(({ text }) => text);
const path = (scene: Scene, role: string) =>
  scene.marks.flatMap((mark) => (mark.kind === "path" && mark.role === role ? [mark.d] : []));

describe("a split by itself", () => {
  it("shows the steps of each track inside it, and where each begins and ends below", () => {
    const scene = splitScene({ id: "s", notebook: EVEN, split: split({}) });
    expect(numbers(scene, "label")).toEqual(["8", "8", "8"]);
    expect(numbers(scene, "count")).toEqual(["0", "8", "16"]);
    expect(numbers(scene, "total")).toEqual(["24"]);
    expect(numbers(scene, "middle")).toEqual(["12"]);
    expect(path(scene, "edge")).toEqual([
      "M0 2.5H40V7.5H0Z",
      "M40 2.5H80V7.5H40Z",
      "M80 2.5H120V7.5H80Z",
    ]);
  });

  it("leaves gaps open and hatches what is left over, before and after", () => {
    const seven = split({ sizes: [7, 7, 7], gaps: [1, 1], after: 1 });
    const after = splitScene({ id: "s", notebook: EVEN, split: seven });
    expect(path(after, "edge")).toHaveLength(3);
    expect(path(after, "fill")).toHaveLength(1);
    const around = split({ sizes: [3, 3, 3, 3, 3, 3, 3], gaps: [], before: 1, after: 2 });
    expect(path(splitScene({ id: "s", notebook: EVEN, split: around }), "fill")).toHaveLength(2);
    expect(after.description).toBe("7, gap of 1, 7, gap of 1, 7, left over 1.");
  });

  it("keeps its hatching inside what it hatches", () => {
    const scene = splitScene({
      id: "s",
      notebook: EVEN,
      split: split({ sizes: [21], gaps: [], after: 3 }),
    });
    const [d = ""] = path(scene, "fill");
    const points = [...d.matchAll(/([\d.]+)[ ]([\d.]+)/g)].map(([, x, y]) => [
      Number(x),
      Number(y),
    ]);
    expect(points.length).toBeGreaterThan(10);
    for (const [x = 0, y = 0] of points) {
      expect(x).toBeGreaterThanOrEqual(105);
      expect(x).toBeLessThanOrEqual(120);
      expect(y).toBeGreaterThanOrEqual(2.5);
      expect(y).toBeLessThanOrEqual(7.5);
    }
  });

  it("names a track where there is room for its name", () => {
    const labels = ["Date", "A name that is much too long", ""];
    const scene = splitScene({ id: "s", notebook: EVEN, split: split({}), labels });
    expect(numbers(scene, "label")).toEqual(["Date 8", "8", "8"]);
  });

  it("lays rows on their side", () => {
    const rows = split({ path: "rows", axis: "down", length: 38, sizes: [19, 19], gaps: [0] });
    const scene = splitScene({ id: "s", notebook: WIDE, split: rows });
    expect(scene.frame.width).toBeCloseTo(210 + 6.4);
    expect(numbers(scene, "total")).toEqual(["38"]);
  });
});

describe("dots, counted", () => {
  const ways = COUNTS.map((count) => ({ count, words: count }));
  const scene = countingScene({ id: "c", notebook: EVEN, ways });

  it("are numbered, and each way finds its own number of steps", () => {
    expect(numbers(scene, "label")).toEqual([
      "edge-to-dot: 24 steps",
      "dot-to-dot: 23 steps",
      "dot-to-edge: 24 steps",
      "edge-to-edge: 25 steps",
    ]);
    expect(numbers(scene, "total")).toEqual(["24", "23", "24", "25"]);
    const dots = Array.from({ length: 24 }, (_, index) => String(index + 1));
    expect(numbers(scene, "count").slice(0, 24)).toEqual(dots);
  });

  it("have a step as wide as it is on paper, at the edge as well", () => {
    const wide = countingScene({ id: "c", notebook: WIDE, ways: ways.slice(0, 1) });
    const xs = [...texts(wide, "count"), ...texts(wide, "total")].slice(26).map(({ x }) => x);
    expect(xs).toHaveLength(26);
    expect(xs.slice(0, 3)).toEqual([5.75, 14, 19]);
  });
});

describe("the bars", () => {
  it("have a card of 85.60 by 53.98 mm in their corner (ISO/IEC 7810, ID-1)", () => {
    expect(path(barsScene("b"), "fold")).toEqual(["M0-53.98H85.6V0H0Z"]);
  });
});

describe("a preview", () => {
  const page: Scene = {
    id: "page",
    title: "P",
    description: "P",
    frame: { x: 0, y: 0, width: 148, height: 210 },
    marks: [{ kind: "path", role: "edge", d: "M10 10H138V200H10Z" }],
    penScale: 2,
  };
  const scene = (title: string, frame = page.frame) =>
    previewScene({ id: "p", book: "Book", title, words: "Week", page: { ...page, frame } });

  it.each([
    ["upright", 148, 210],
    ["wide", 296, 210],
    ["very wide", 600, 100],
    ["square", 125, 125],
  ])("has the shape of its picture, with an %s page inside", (_, width, height) => {
    const { frame, marks } = scene("Title", { x: 0, y: 0, width, height });
    expect(frame.width / frame.height).toBeCloseTo(PREVIEW_PIXELS.width / PREVIEW_PIXELS.height, 9);
    expect(frame.width).toBeGreaterThan(width);
    expect(frame.height).toBeGreaterThan(height);
    expect(marks.length).toBeGreaterThan(4);
  });

  it("breaks a long title, and cuts a very long one short", () => {
    expect(texts(scene("Short"), "heading")).toHaveLength(1);
    expect(texts(scene("A title of some more words"), "heading").length).toBeGreaterThan(1);
    const lines = numbers(scene(Array.from({ length: 40 }, () => "word").join(" ")), "heading");
    expect(lines).toHaveLength(4);
    expect(lines.at(-1)).toMatch(/ …$/);
  });

  it("is well-formed, whatever it is called", () => {
    expect(parseXml(write(scene(`<&"'\u0000]]>\ud800\u202e`)))).toBeDefined();
  });
});

describe("the chart for choosing a notebook", () => {
  it("frames what divides evenly: by hand, (steps − gaps) ÷ parts is whole", () => {
    const scene = evenChartScene("c");
    const expected = Array.from({ length: 21 }, (_, index) => 20 + index).flatMap((steps) =>
      [2, 3, 4].flatMap((parts) =>
        [0, 1]
          .map((gap) => (steps - (parts - 1) * gap) / parts)
          .filter((size) => Number.isInteger(size))
          .map(String),
      ),
    );
    expect(numbers(scene, "total")).toEqual(expected);
    expect(scene.description).toContain("Thirds, gap 1: 20, 23, 26, 29, 32, 35, 38.");
  });
});

describe("numbers both ways", () => {
  it("make all the steps of the page at every position", () => {
    const scene = bothWaysScene("b", EVEN);
    const all = [...texts(scene, "count"), ...texts(scene, "total")];
    const at = new Map<number, readonly TextMark[]>();
    for (const one of all) at.set(one.x, [...(at.get(one.x) ?? []), one]);
    expect(at.size).toBe(25);
    for (const both of at.values())
      expect(both.map(({ text }) => Number(text)).reduce((sum, one) => sum + one)).toBe(24);
  });
});
