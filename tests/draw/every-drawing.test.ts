import { createSVGWindow } from "svgdom";
import { describe, expect, it } from "vitest";
import { gridScene } from "../../src/draw/page/grid-scene.ts";
import { pageScene } from "../../src/draw/page/page-scene.ts";
import { thumbnailScene } from "../../src/draw/page/thumbnail-scene.ts";
import type { Scene } from "../../src/draw/scene.ts";
import { createSvgWriter } from "../../src/draw/svg/write-svg.ts";
import { allElements, parseXml, type XmlElement } from "./parse-xml.ts";
import { type Drawn, samplePlans } from "./sample-plans.ts";

const write = createSvgWriter(createSVGWindow());
const drawings = samplePlans(120, 17);

const SCENES: readonly (readonly [string, (drawn: Drawn) => Scene])[] = [
  ["a page", pageScene],
  ["a page alone", (drawn) => pageScene({ ...drawn, options: { hasBands: false } })],
  [
    "a page for the keeper's own paper",
    (drawn) =>
      pageScene({ ...drawn, options: { hasBands: false, hasPaper: false, hasGrid: false } }),
  ],
  ["a thumbnail", thumbnailScene],
  ["a grid", ({ notebook }) => gridScene(notebook)],
];

/** Every x and every y that elements are drawn at. */
function coordinates(elements: readonly XmlElement[]): { xs: number[]; ys: number[] } {
  const xs: number[] = [];
  const ys: number[] = [];
  for (const { attributes } of elements) {
    const numbersIn = (text = "") => text.match(/-?[\d.]+/g)?.map(Number) ?? [];
    xs.push(...numbersIn(attributes.get("x")));
    ys.push(...numbersIn(attributes.get("y")));
    for (const [command = ""] of (attributes.get("d") ?? "").matchAll(/[MLHVZ][^MLHVZ]*/g)) {
      const numbers = numbersIn(command);
      if (command.startsWith("V")) ys.push(...numbers);
      else if (command.startsWith("H")) xs.push(...numbers);
      else {
        xs.push(...numbers.filter((_, index) => index % 2 === 0));
        ys.push(...numbers.filter((_, index) => index % 2 === 1));
      }
    }
  }
  return { xs, ys };
}

/** Numbers are rounded to a thousandth of a millimetre. */
function expectInside(numbers: readonly number[], from: number, length: number): void {
  expect(Math.min(from, ...numbers)).toBeGreaterThanOrEqual(from - 0.001);
  expect(Math.max(from, ...numbers)).toBeLessThanOrEqual(from + length + 0.001);
}

describe.each(SCENES)("%s, whatever the recipe and the notebook", (_, sceneOf) => {
  it("is well-formed", () => {
    for (const drawn of drawings) {
      const [root, ...inner] = allElements(parseXml(write(sceneOf(drawn))));
      expect(root?.name).toBe("svg");
      const names = new Set(inner.map(({ name }) => name));
      expect(["title", "desc", "g", "path", "text"]).toEqual(expect.arrayContaining([...names]));
    }
  });

  it("lies inside its frame", () => {
    for (const drawn of drawings) {
      const scene = sceneOf(drawn);
      const { xs, ys } = coordinates(allElements(parseXml(write(scene))));
      expectInside(xs, scene.frame.x, scene.frame.width);
      expectInside(ys, scene.frame.y, scene.frame.height);
    }
  });

  it("is the same each time", () => {
    for (const drawn of drawings) expect(write(sceneOf(drawn))).toBe(write(sceneOf(drawn)));
  });

  it("has only plain numbers and absolute paths, and none of svg.js's own attributes", () => {
    for (const drawn of drawings) {
      const svg = write(sceneOf(drawn));
      expect(svg).not.toMatch(/svgjs|NaN|undefined|Infinity|\de-\d/);
      for (const [, d] of svg.matchAll(/ d="([^"]*)"/g)) expect(d).toMatch(/^M[MLHVZ\d .-]*$/);
    }
  });
});

describe("a thumbnail, whatever the recipe and the notebook", () => {
  it("has at most 12 elements, and no text to be read", () => {
    for (const drawn of drawings) {
      const elements = allElements(parseXml(write(thumbnailScene(drawn))));
      expect(elements.length).toBeLessThanOrEqual(12);
      expect(elements.filter(({ name }) => name === "text")).toEqual([]);
    }
  });
});

describe("a page alone", () => {
  it("has the paper for its frame", () => {
    for (const { plan, notebook } of drawings) {
      const { frame } = pageScene({ plan, notebook, options: { hasBands: false } });
      const [across, down] = [notebook.axes.across.paper, notebook.axes.down.paper];
      expect(frame).toEqual({
        x: 0,
        y: 0,
        width: (plan.pages.length * across) / 1e6,
        height: down / 1e6,
      });
    }
  });
});
