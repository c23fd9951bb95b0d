/** Every example and figure of the guide is built, as the book builds it, and what it shows is looked at. */
import { createSVGWindow } from "svgdom";
import { describe, expect, it } from "vitest";
import type { Scene } from "../../../src/draw/scene.ts";
import { createSvgWriter } from "../../../src/draw/svg/write-svg.ts";
import { CUTTING_CAUTION } from "../../../src/issue/words/cutting-caution.ts";
import type { Recipe } from "../../../src/recipe/recipe.ts";
import {
  readPattern,
  type ShownExample,
  showExample,
} from "../../../src/view/guide/guide-example.ts";
import { FIGURE_NAMES, guideFigure } from "../../../src/view/guide/guide-figures.ts";
import { guideNotebook } from "../../../src/view/guide/guide-notebooks.ts";
import { parseXml } from "../../draw/parse-xml.ts";
import { sourceFiles } from "../../house/source-files.ts";
import { chapterFences } from "./chapters.ts";

const write = createSvgWriter(createSVGWindow());
const chapters = chapterFences();
const fences = [...chapters.values()].flat();

/** Well-formed and named: title first, then a description. */
function expectDrawing(scene: Scene): void {
  const root = parseXml(write(scene));
  expect(root.name).toBe("svg");
  expect(root.children.slice(0, 2).map(({ name }) => name)).toEqual(["title", "desc"]);
  expect(root.children.every(({ name, text }) => name !== "title" || text !== "")).toBe(true);
}

describe("the guide", () => {
  it("is looked at whole", () => {
    expect(chapters.size).toBeGreaterThan(10);
    expect(fences.filter(({ fence }) => fence.kind === "pattern").length).toBeGreaterThan(15);
    expect(fences.filter(({ fence }) => fence.kind === "split").length).toBeGreaterThan(12);
  });

  it("shows each of its figures, and has no other", () => {
    const named = fences.flatMap(({ fence }) => (fence.kind === "figure" ? [fence.name] : []));
    expect([...new Set(named)].sort()).toEqual([...FIGURE_NAMES].sort());
  });

  it("shows every place that a leftover can go to", () => {
    const text = sourceFiles(["site/guide"], ["leftovers.md"]).get("site/guide/leftovers.md") ?? "";
    for (const word of ["start", "centre", "gaps", "parts"])
      expect(text).toMatch(new RegExp(`\`\`\`yaml split on \\w+\\ncolumns: .*leftover: ${word}`));
    expect(text).toMatch(/leftover: Sa\b/);
  });

  it("says the caution where it speaks of cutting, in its own words", () => {
    const text = sourceFiles(["site/guide"], ["strip.md"]).get("site/guide/strip.md") ?? "";
    const { head, words } = CUTTING_CAUTION;
    expect(text).toContain(`${head} ${words}`.replace("'", "’"));
  });

  it("never sets its examples beside words that the reader would not take", () => {
    for (const { info } of fences) expect(info).not.toMatch(/ {2}|\t/);
  });
});

describe.each(FIGURE_NAMES)("the figure %s", (name) => {
  it("is a drawing with a name of its own", () => {
    expectDrawing(guideFigure(name, "figure"));
    expect(guideFigure(name, "figure").id).toBe("figure");
  });
});

describe("a figure that nobody drew", () => {
  it("is refused", () => {
    expect(() => guideFigure("fence", "x")).toThrow("the guide has no figure fence");
  });
});

describe.each([...chapters])("%s", (_, written) => {
  const patterns = new Map<string, Recipe>();
  const examples = written.flatMap(({ info, fence }, index) => {
    if (fence.kind === "figure" || fence.kind === "plain") return [];
    const shown = showExample(fence, { id: `shown-${index}`, patterns });
    if (fence.kind === "pattern" && !fence.isWrong) patterns.set(fence.slug, readPattern(fence));
    return [{ name: `${index + 1}: ${info}`, fence, shown }];
  });

  it.each(examples)("shows what becomes of $name", ({ fence, shown }) => {
    const { on, spans = [""] } = fence;
    const drawings = {
      pattern: on.length * spans.length,
      split: fence.on.length,
      strip: fence.on.length,
    };
    const expected = { ...drawings, notebook: 1, setup: 0, book: 0, words: 0 }[fence.kind];
    expect(shown).toHaveLength(fence.isWrong ? 1 : expected);
    for (const one of shown) expectShown(one, fence.isWrong);
  });

  it("draws on notebooks that the guide has", () => {
    for (const { fence } of examples)
      for (const name of fence.on) expect(guideNotebook(name).slug).toBe(name);
    expect(
      examples.every(
        ({ fence }) =>
          fence.isWrong === (fence.on.length === 0) ||
          ["notebook", "setup", "book", "words"].includes(fence.kind),
      ),
    ).toBe(true);
  });
});

function expectShown(shown: ShownExample, isWrong: boolean): void {
  expect(shown.kind === "report").toBe(isWrong);
  switch (shown.kind) {
    case "drawing":
      expectDrawing(shown.scene);
      expect(shown.caption).toMatch(/^[A-Z0-9]/);
      return;
    case "report":
      expect(shown.text).toMatch(/^\S+\.(md|yaml):\d+:\d+\n[\s\S]*\^[\s\S]*problems? in 1 file\.$/);
      return;
    case "misfit":
      expect(shown.reason).toMatch(/\d.*\.$/);
  }
}
