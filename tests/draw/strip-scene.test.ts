import { describe, expect, it } from "vitest";
import { sideScene, stripScene } from "../../src/draw/strip/strip-scene.ts";
import type { Strip, StripSide } from "../../src/strip/strip.ts";
import { notebookOf } from "../oracle/notebook-of.ts";
import { stripOf } from "../strip/hand-plans.ts";
import { ACROSS, DOWN, EVERYDAY, PLANS } from "./strip-everyday.ts";
import { pathsOf, segmentsOf, textsOf, uprights } from "./strip-lines.ts";

describe("a strip as it is made", () => {
  const ticksOf = (strip: Strip) => uprights(stripScene(strip), "tick", "lane");
  const edge = (side: StripSide) =>
    uprights(sideScene(EVERYDAY, side), "tick", "lane")
      .filter(({ y1 }) => y1 === 0)
      .map(({ x1 }) => x1);

  it("with both sides on its edges has the second turned round", () => {
    const { frame } = stripScene(EVERYDAY);
    const length = frame.width - 4;
    const ticks = ticksOf(EVERYDAY);
    expect(frame.height).toBe(30 + 4);
    expect(ticks.filter(({ y1 }) => y1 === 0).map(({ x1 }) => x1)).toEqual(edge(ACROSS));
    const below = ticks.filter(({ y2 }) => y2 === 30).map(({ x1 }) => x1);
    const turned = edge(DOWN).map((x) => length - x);
    expect(below).toEqual(turned.toSorted((a, b) => a - b));
  });

  it("to be folded is twice as high, with the fold in the middle", () => {
    const scene = stripScene({ ...EVERYDAY, make: "fold" });
    expect(scene.frame.height).toBe(2 * 30 + 4);
    expect(pathsOf(scene, "fold").flatMap(segmentsOf)).toEqual([
      { x1: 0, y1: 30, x2: scene.frame.width - 4, y2: 30 },
    ]);
  });

  it("of two pieces has two outlines to cut, both upright", () => {
    const scene = stripScene({ ...EVERYDAY, make: "two" });
    expect(pathsOf(scene, "cut")).toHaveLength(2);
    expect(scene.marks.filter((mark) => mark.kind === "text" && mark.turn !== undefined)).toEqual(
      [],
    );
  });

  it("is the same each time, with few elements for what it shows", () => {
    const scene = stripScene(EVERYDAY);
    expect(stripScene(EVERYDAY)).toEqual(scene);
    expect(scene.marks.filter(({ kind }) => kind === "path").length).toBeLessThan(45);
  });
});

describe("the key of a strip", () => {
  it("lists the patterns of its side with letter, colour and title, and its signs", () => {
    const notes = textsOf(sideScene(EVERYDAY, DOWN), "note").map(({ text }) => text);
    expect(notes).toEqual(["week", "seeds", "middle: 19", "middle of the paper"]);
    const across = textsOf(sideScene(EVERYDAY, ACROSS), "note").map(({ text }) => text);
    expect(across).toEqual([
      "week",
      "month",
      "seeds",
      "duties",
      "middle: 13",
      "middle of the paper",
      "end of the page",
    ]);
  });

  it("stands once on a strip with two sides, behind the end of the shorter one", () => {
    const scene = stripScene(EVERYDAY);
    const titles = textsOf(scene, "note").filter(({ text }) => text === "duties");
    const paper = 135;
    expect(titles.map(({ x }) => x > paper)).toEqual([true]);
    expect(textsOf(scene, "note").map(({ text }) => text)).toContain("middle: 13 across, 19 down");
  });

  it("goes beside the lanes where both sides are as long as the strip", () => {
    const { across } = notebookOf(26, 38).axes;
    const square = { ...notebookOf(26, 26), axes: { across, down: across } };
    const strip = stripOf(PLANS.slice(0, 2), {}, square);
    const scene = stripScene(strip);
    const paper = 135;
    expect(scene.frame).toMatchObject({ width: paper + 4, height: 30 + 4 });
    const words = textsOf(scene, "note", "heading").map(({ text }) => text);
    expect(words).toEqual(expect.arrayContaining(["week", "month", "middle: 13 across, 13 down"]));
    expect(words.filter((text) => text.startsWith("Everyday strip"))).toHaveLength(2);
  });

  it("has the name of its side on each side", () => {
    const headings = textsOf(stripScene(EVERYDAY), "heading").map(({ text }) => text);
    expect(headings).toEqual([
      "Everyday strip · across · 26 × 38",
      "Everyday strip · down · 26 × 38",
    ]);
  });
});
