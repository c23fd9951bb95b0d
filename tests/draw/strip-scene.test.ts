import { describe, expect, it } from "vitest";
import { sideScene, stripScene } from "../../src/draw/strip/strip-scene.ts";
import type { Strip, StripSide } from "../../src/strip/strip.ts";
import { stripOf } from "../strip/hand-plans.ts";
import { ACROSS, acrossOf, DOWN, EVERYDAY, PLANS } from "./strip-everyday.ts";
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

describe("the tab of a strip", () => {
  it("lists the patterns of its side with letter, colour and title", () => {
    const scene = sideScene(EVERYDAY, DOWN);
    const notes = textsOf(scene, "note").map(({ text }) => text);
    expect(notes).toEqual(["week", "seeds", "middle, at 19", "middle of the paper"]);
    const paper = 195;
    const swatches = pathsOf(scene, "lane-bar").filter((mark) =>
      segmentsOf(mark).every(({ x1 }) => x1 > paper),
    );
    expect(swatches.map(({ lane }) => lane)).toEqual([1, 3]);
  });

  it("has the title where the lanes leave no room for it", () => {
    const paper = 135;
    const titled = (strip: Strip) => {
      return textsOf(sideScene(strip, acrossOf(strip)), "heading").map(({ x, text }) => [
        x > paper,
        text,
      ]);
    };
    const text = "Everyday strip · across · 26 × 38";
    expect(titled(EVERYDAY)).toEqual([[true, text]]);
    expect(titled(stripOf(PLANS.slice(0, 1)))).toEqual([[false, text]]);
  });
});
