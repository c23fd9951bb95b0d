import { describe, expect, it } from "vitest";
import { textInterval } from "../../src/draw/strip/strip-clip.ts";
import { sideScene, stripScene } from "../../src/draw/strip/strip-scene.ts";
import { stripJson } from "../../src/strip/strip-json.ts";
import { sampleStrips } from "../strip/arbitrary-strip.ts";
import { textsOf, uprights } from "./strip-lines.ts";

const STRIPS = sampleStrips(120, 1947).map(({ strip }) => strip);

describe("the drawing of any strip", () => {
  it("has a stem to the edge at every mark, where strip.json says, and nowhere else", () => {
    for (const strip of STRIPS) {
      const json = stripJson(strip);
      for (const [index, side] of strip.sides.entries()) {
        const { mm, lanes } = json.sides[index] ?? { mm: [], lanes: [] };
        const marks = new Set(lanes.flatMap(({ runs }) => runs.flatMap((run) => run.marks)));
        const stems = uprights(sideScene(strip, side), "lane").filter(({ y1 }) => y1 === 0);
        const places = [...marks].toSorted((a, b) => a - b).map((position) => mm[position] ?? -1);
        expect(stems.map(({ x1 }) => x1)).toEqual(places.map((x) => Math.round(x * 1000) / 1000));
      }
    }
  });

  it("has no number of a position under a stem", () => {
    for (const strip of STRIPS) {
      for (const side of strip.sides) {
        const scene = sideScene(strip, side);
        const stems = uprights(scene, "lane");
        const struck = textsOf(scene, "count", "total").filter((text) => {
          const { from, to } = textInterval(text);
          const [inner, outer] = text.anchor === "end" ? [from + 0.2, to] : [from, to - 0.2];
          return stems.some(({ x1 }) => inner < x1 && x1 < outer);
        });
        expect(struck).toEqual([]);
      }
    }
  });

  it("writes a count on every track, save where a label takes its place", () => {
    for (const strip of STRIPS) {
      for (const side of strip.sides) {
        const runs = side.lanes.flatMap((lane) => lane.runs);
        const tracks = runs.reduce((sum, run) => sum + run.tracks.length, 0);
        const counts = textsOf(sideScene(strip, side), "lane-text").length;
        expect(counts).toBeLessThanOrEqual(tracks);
        expect(counts).toBeGreaterThanOrEqual(tracks - runs.length);
      }
    }
  });

  it("stays inside its frame", () => {
    for (const strip of STRIPS) {
      const { frame, marks } = stripScene(strip);
      const texts = textsOf({ marks }, "count", "total", "lane-text", "lane-letter", "note");
      const outside = texts.filter(
        ({ x, y }) => !(x >= 0 && x <= frame.width - 4 && y >= 0 && y <= frame.height - 4),
      );
      expect(outside).toEqual([]);
    }
  });
});
