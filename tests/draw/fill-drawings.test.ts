import { describe, expect, it } from "vitest";
import { FILL_DRAWINGS } from "../../src/draw/fill/fill-drawings.ts";
import { pagePlace } from "../../src/draw/geometry/page-place.ts";
import { type PaperBox, paperBoxOn } from "../../src/draw/geometry/paper-box.ts";
import { formatNumber } from "../../src/draw/geometry/path-data.ts";
import type { Rect } from "../../src/draw/geometry/rect.ts";
import { BASELINE } from "../../src/draw/text-width.ts";
import type { PlanBox } from "../../src/plan/plan.ts";
import { FILLS } from "../../src/recipe/recipe.ts";
import { axisOf, boxOf, notebookWith, type ShortBox } from "./plan-of.ts";

/** Dots at 5, 10, 15 … mm both ways, so that position k lies at 5k mm. */
const PLACE = pagePlace(notebookWith(axisOf(60, 11), axisOf(60, 11)), 0);

function paperBoxOf(fill: PlanBox["fill"], every: number, box: ShortBox, taken?: Rect): PaperBox {
  const [x, y, w, h] = box;
  const paperBox = paperBoxOn(PLACE, boxOf([x, y, w, h, { fill, every }]));
  return taken ? { ...paperBox, taken } : paperBox;
}

function draw(fill: PlanBox["fill"], every: number, box: ShortBox, taken?: Rect) {
  return FILL_DRAWINGS[fill](paperBoxOf(fill, every, box, taken));
}

describe("the fills", () => {
  it("are drawn by one drawing each", () => {
    expect(Object.keys(FILL_DRAWINGS)).toEqual([...FILLS]);
  });

  it.each([
    ["blank draws nothing", draw("blank", 1, [1, 1, 4, 4]), {}],
    [
      "lines are rules between the edges",
      draw("lines", 1, [1, 1, 4, 3]),
      { lines: "M5 10H25M5 15H25" },
    ],
    ["lines every 2 steps", draw("lines", 2, [1, 1, 4, 5]), { lines: "M5 15H25M5 25H25" }],
    ["lines in a box one step high are none", draw("lines", 1, [1, 1, 4, 1]), { lines: "" }],
    [
      "squares are lines both ways",
      draw("squares", 2, [1, 1, 4, 4]),
      { lines: "M5 15H25M15 5V25" },
    ],
    [
      "squares of 2 in a box of 3 leave the rest at the end",
      draw("squares", 2, [0, 0, 3, 3]),
      { lines: "M0 10H15M10 0V15" },
    ],
    [
      "dots are dotted lines that start on a dot",
      draw("dots", 1, [1, 1, 3, 3]),
      { dots: { d: "M10 10H16.667M10 15H16.667", apart: 5 } },
    ],
    [
      "dots every 2 steps",
      draw("dots", 2, [0, 0, 5, 4]),
      { dots: { d: "M10 10H23.333", apart: 10 } },
    ],
    [
      "dots in a box of one step are none",
      draw("dots", 1, [1, 1, 1, 1]),
      { dots: { d: "", apart: 5 } },
    ],
    [
      "checks are a box at the start of each line, and the rules between",
      draw("checks", 1, [1, 1, 4, 2]),
      { lines: "M5 10H25M6.1 6.1H8.9V8.9H6.1ZM6.1 11.1H8.9V13.9H6.1Z" },
    ],
    [
      "checks every 2 steps stand in the lower step, on the line",
      draw("checks", 2, [1, 1, 4, 4]),
      { lines: "M5 15H25M6.1 11.1H8.9V13.9H6.1ZM6.1 21.1H8.9V23.9H6.1Z" },
    ],
  ])("%s", (_, marks, expected) => {
    expect(marks).toEqual(expected);
  });

  it.each([
    [
      "down a tall box",
      draw("numbers", 1, [1, 1, 2, 3]),
      ["1 7.5 7.5", "2 7.5 12.5", "3 7.5 17.5"],
    ],
    ["across a wide box", draw("numbers", 2, [1, 1, 6, 1]), ["1 10 7.5", "2 20 7.5", "3 30 7.5"]],
    ["in whole cells alone", draw("numbers", 2, [1, 1, 1, 5]), ["1 7.5 7.5", "2 7.5 17.5"]],
  ])("numbers run %s", (_, { texts = [] }, expected) => {
    const middles = texts.map(
      ({ text, x, y, size }) => `${text} ${x} ${formatNumber(y - size * BASELINE)}`,
    );
    expect(middles).toEqual(expected);
  });
});

describe("a label in a fill", () => {
  const taken: Rect = { x: 6, y: 6, width: 9, height: 3 };

  it.each([
    ["cuts no rule that passes below it", draw("lines", 1, [1, 1, 4, 2], taken).lines, "M5 10H25"],
    [
      "cuts the lines of squares, and leaves no stub of a line beside it",
      draw("squares", 1, [1, 1, 3, 2], taken).lines,
      "M5 10H20M10 9V15M15 5V15",
    ],
    [
      "has no tick box under it",
      draw("checks", 1, [1, 1, 4, 2], taken).lines,
      "M5 10H25M6.1 11.1H8.9V13.9H6.1Z",
    ],
    [
      "has no dot under it, and the dots beside it stay on the grid",
      draw("dots", 1, [0, 0, 5, 3], { x: 9, y: 4, width: 2, height: 2 }).dots?.d,
      "M5 5H6.667M15 5H21.667M5 10H21.667",
    ],
    [
      "has no number under it",
      draw("numbers", 1, [1, 1, 1, 3], taken)
        .texts?.map(({ text }) => text)
        .join(),
      "2,3",
    ],
  ])("%s", (_, drawn, expected) => {
    expect(drawn).toBe(expected);
  });
});

describe("a step wider than its twins", () => {
  /** The first dot 12 mm from the edge: position 0 is the edge, position 1 the dot at 12 mm. */
  const wide = pagePlace(
    notebookWith(axisOf(60, 5, { first: 12 }), axisOf(60, 5, { first: 12 })),
    0,
  );
  const paperBox = (fill: PlanBox["fill"]) => paperBoxOn(wide, boxOf([0, 0, 2, 3, { fill }]));

  it("is ruled to its whole width", () => {
    expect(FILL_DRAWINGS.lines(paperBox("lines")).lines).toBe("M0 12H17M0 17H17");
  });

  it("has its tick boxes and numbers beside the dots, away from the paper's edge", () => {
    expect(FILL_DRAWINGS.checks(paperBox("checks")).lines).toContain("M8.1 ");
    expect(FILL_DRAWINGS.numbers(paperBox("numbers")).texts?.[0]?.x).toBe(9.5);
  });

  it("at the far edge of the paper is written in next to its dot as well", () => {
    const far = pagePlace(
      notebookWith(axisOf(60, 5, { first: 12, count: "dot-to-edge" }), axisOf(60, 5)),
      0,
    );
    const last = paperBoxOn(far, boxOf([4, 0, 1, 3, { fill: "numbers" }]));
    expect(last.lines.across).toEqual([32, 60]);
    expect(FILL_DRAWINGS.numbers(last).texts?.[0]?.x).toBe(34.5);
  });
});
