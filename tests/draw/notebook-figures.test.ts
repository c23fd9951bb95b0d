/** The drawings of a notebook's page: one way of counting, and one gap of the division table, read back from the scene. */
import fc from "fast-check";
import { createSVGWindow } from "svgdom";
import { describe, expect, it } from "vitest";
import { countedPartsScene } from "../../src/draw/figure/counted-parts-scene.ts";
import { divisionsScene } from "../../src/draw/figure/divisions-scene.ts";
import type { Scene, TextMark } from "../../src/draw/scene.ts";
import { ROLE_STYLES } from "../../src/draw/style/role-style.ts";
import { createSvgWriter } from "../../src/draw/svg/write-svg.ts";
import { COUNTS } from "../../src/measure/grid-axis.ts";
import { parseXml } from "./parse-xml.ts";
import { axisOf } from "./plan-of.ts";

const write = createSvgWriter(createSVGWindow());

const texts = (scene: Scene, role: string) =>
  scene.marks
    .filter((mark): mark is TextMark => mark.kind === "text" && mark.role === role)
    .map(({ text }) => text);
const path = (scene: Scene, role: string) =>
  scene.marks.flatMap((mark) => (mark.kind === "path" && mark.role === role ? [mark.d] : []));
/** Left and right end of every rectangle in a path. */
const spans = (data: readonly string[]) =>
  data.flatMap((d) => [...d.matchAll(/M([\d.]+) [\d.]+H([\d.]+)V/g)]).map(([, a, b]) => [a, b]);

/** 20 dots of 5 mm on 100 mm, the first 2.5 mm from the edge: the drawing is as wide as the paper, so a mm is a mm. */
const count = (way: (typeof COUNTS)[number]) =>
  countedPartsScene({
    id: "c",
    title: "Counted",
    axis: axisOf(100, 20, { first: 2.5, count: way }),
    middle: "both",
  });

describe("a way of counting", () => {
  it("is drawn as wide as it is on paper: what begins at the edge is narrower or wider", () => {
    const scene = count("edge-to-dot");
    expect(scene.description).toBe("20 steps; 2 × 10; 3 × 6, 2 over; 4 × 5.");
    expect(spans(path(scene, "edge")).slice(0, 5)).toEqual([
      ["0", "47.5"],
      ["47.5", "97.5"],
      ["0", "27.5"],
      ["27.5", "57.5"],
      ["57.5", "87.5"],
    ]);
  });

  it.each([
    ["edge-to-dot", ["10", "10", "6", "6", "6", "5", "5", "5", "5"], 1],
    ["dot-to-dot", ["9", "9", "6", "6", "6", "4", "4", "4", "4"], 2],
    ["dot-to-edge", ["10", "10", "6", "6", "6", "5", "5", "5", "5"], 1],
    ["edge-to-edge", ["10", "10", "7", "7", "7", "5", "5", "5", "5"], 2],
  ] as const)("%s has parts of %j steps", (way, labels, middles) => {
    const scene = count(way);
    expect(texts(scene, "label")).toEqual(labels);
    expect(path(scene, "middle").join("").match(/M/g)).toHaveLength(middles);
  });

  it("hatches what is left over, and draws nothing where nothing is", () => {
    expect(path(count("edge-to-dot"), "fill")).toHaveLength(1);
    const even = { count: "edge-to-dot", first: 5 } as const;
    const axis = axisOf(65, 12, even);
    expect(path(countedPartsScene({ id: "c", title: "", axis, middle: "lower" }), "fill")).toEqual(
      [],
    );
  });

  it("leaves out parts that do not fit", () => {
    const axis = axisOf(20, 2, { count: "edge-to-dot" });
    const scene = countedPartsScene({ id: "c", title: "", axis, middle: "lower" });
    expect(texts(scene, "label")).toEqual(["1", "1"]);
  });
});

describe("a division table", () => {
  const scene = divisionsScene({ id: "d", title: "26 steps", steps: 26, gap: 1 });

  it("has the counts at the left, and the steps of a part at the right", () => {
    expect(texts(scene, "count").slice(0, 16)).toEqual(
      Array.from({ length: 16 }, (_, index) => `${index + 1}`),
    );
    expect(texts(scene, "total")).toEqual(["26", "8", "2"]);
    expect(scene.description).toBe("Nothing left over: 1 × 26, 3 × 8, 9 × 2.");
  });

  it("draws boldly what leaves nothing over, finely what does, and a line for what is left", () => {
    expect(spans(path(scene, "edge"))).toHaveLength(1 + 3 + 9);
    expect(spans(path(scene, "edge")).at(-1)?.[1]).toBe("52");
    const fine = [2, 4, 5, 6, 7, 8, 10, 11, 12, 13];
    expect(spans(path(scene, "edge-fine"))).toHaveLength(fine.reduce((sum, one) => sum + one, 0));
    expect(path(scene, "dimension").join("").match(/M/g)).toHaveLength(2 * fine.length);
  });

  it("keeps the whole outline of its sheet within the frame, at the head and at the foot", () => {
    const [, top, bottom] =
      /M[\d.]+ ([\d.]+)H[\d.]+V([\d.]+)/.exec(path(scene, "paper")[0] ?? "") ?? [];
    expect(Number(top)).toBe(ROLE_STYLES.paper.width / 2);
    expect(Number(bottom)).toBeCloseTo(scene.frame.height - ROLE_STYLES.paper.width / 2, 6);
  });

  it("says so where nothing but the whole comes out even", () => {
    const { description } = divisionsScene({ id: "d", title: "", steps: 5, gap: 3 });
    expect(description).toBe("Nothing left over: 1 × 5, 2 × 1.");
  });
});

describe("any axis", () => {
  const axes = fc.record({
    dots: fc.integer({ min: 2, max: 400 }),
    pitch: fc.integer({ min: 1, max: 12 }),
    first: fc.integer({ min: 1, max: 30 }),
    after: fc.integer({ min: 1, max: 30 }),
    way: fc.constantFrom(...COUNTS),
  });

  it("is drawn inside its frame, in well-formed SVG of fewer than 45 elements", () => {
    fc.assert(
      fc.property(axes, ({ dots, pitch, first, after, way }) => {
        const paper = first + (dots - 1) * pitch + after;
        const axis = axisOf(paper, dots, { first, pitch, count: way });
        const scenes = [
          countedPartsScene({ id: "c", title: "<&>", axis, middle: "both" }),
          ...[0, 3].map((gap) => divisionsScene({ id: "d", title: "<&>", steps: dots, gap })),
        ];
        for (const scene of scenes) {
          const svg = write(scene);
          expect(parseXml(svg).name).toBe("svg");
          expect(svg.match(/<(?:path|text|g)\b/g)?.length ?? 0).toBeLessThan(45);
          expect(svg).not.toMatch(/NaN|Infinity|undefined/);
          const { x, width } = scene.frame;
          const drawn = spans([...path(scene, "edge"), ...path(scene, "edge-fine")]);
          const outside = drawn.filter(
            ([from, to]) => !(Number(from) >= x && Number(to) <= x + width),
          );
          expect(outside).toEqual([]);
        }
      }),
      { seed: 60_301, numRuns: 150 },
    );
  });
});
