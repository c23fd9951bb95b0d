import { describe, expect, it } from "vitest";
import type { TextMark } from "../../src/draw/scene.ts";
import { layOutBody } from "../../src/draw/strip/body-layout.ts";
import { textInterval } from "../../src/draw/strip/strip-clip.ts";
import { laneTop, mmAt } from "../../src/draw/strip/strip-face.ts";
import { sideScene, stripScene } from "../../src/draw/strip/strip-scene.ts";
import { laneStyle } from "../../src/draw/style/lane-style.ts";
import { markStyle } from "../../src/draw/style/mark-style.ts";
import type { StripSide } from "../../src/strip/strip.ts";
import { stripJson } from "../../src/strip/strip-json.ts";
import { planOf, stripOf } from "../strip/hand-plans.ts";
import { ACROSS, acrossOf, DOWN, EVERYDAY } from "./strip-everyday.ts";
import { pathsOf, segmentsOf, textsOf, uprights } from "./strip-lines.ts";

describe("the stem at a position", () => {
  it.each([
    ["across", ACROSS],
    ["down", DOWN],
  ] as const)(
    "%s leads from the edge to the far side of the last lane that marks it",
    (_, side) => {
      const stems = uprights(sideScene(EVERYDAY, side), "lane");
      const places = [...new Set(stems.map(({ x1 }) => x1))];
      const mm = stripJson(EVERYDAY).sides.find(({ axis }) => axis === side.axis)?.mm ?? [];
      const marks = new Set(side.lanes.flatMap(({ runs }) => runs.flatMap((run) => run.marks)));
      expect(places).toEqual([...marks].toSorted((a, b) => a - b).map((position) => mm[position]));
      for (const x of places) {
        const pieces = stems.filter(({ x1 }) => x1 === x);
        const lanes = side.lanes.filter(({ runs }) =>
          runs.some((run) => run.marks.some((position) => mm[position] === x)),
        );
        const ends = lanes.map((lane) => laneEnd(side, side.lanes.indexOf(lane)));
        expect(pieces[0]?.y1).toBe(0);
        for (const end of ends) expect(pieces.map(({ y2 }) => y2)).toContain(end);
        expect(pieces.at(-1)?.y2).toBe(ends.at(-1));
      }
    },
  );

  it("is unbroken, whatever the dash of the lane", () => {
    const stems = pathsOf(sideScene(EVERYDAY, ACROSS), "lane");
    expect(stems.length).toBeGreaterThan(1);
    for (const stem of stems) expect(markStyle(stem).dash).toBeUndefined();
  });

  it("is shared half and half where one run of a lane ends and the next begins", () => {
    const strip = stripOf(
      [planOf("week", { sizes: [13] }), planOf("month", { from: 13, sizes: [13] })],
      { down: [] },
    );
    const side = acrossOf(strip);
    expect(side.lanes).toHaveLength(1);
    const [upper, lower, ...others] = uprights(sideScene(strip, side), "lane").filter(
      ({ x1 }) => x1 === 65,
    );
    expect(others).toEqual([]);
    expect([upper?.y1, upper?.y2]).toEqual([0, lower?.y1]);
  });
});

describe("a tick of a lane", () => {
  it.each([
    ["across", ACROSS],
    ["down", DOWN],
  ] as const)("%s has a block that its bars touch, and others pass at a distance", (_, side) => {
    const scene = sideScene(EVERYDAY, side);
    // Behind the last position the key has blocks, too.
    const last = mmAt(side, side.steps);
    const caps = uprights(scene, "lane-cap").filter(({ x1 }) => x1 <= last);
    const stems = uprights(scene, "lane");
    const bars = ["lane-bar", "lane-rail"] as const;
    const ends = bars.flatMap((role) => pathsOf(scene, role).flatMap(segmentsOf));
    for (const [index, lane] of side.lanes.entries()) {
      const y = (laneEnd(side, index - 1) + laneEnd(side, index)) / 2;
      const own = new Set(lane.runs.flatMap(({ marks }) => marks.map((mark) => mmAt(side, mark))));
      const here = caps.filter(({ y1, y2 }) => y1 < y + 0.01 && y - 0.01 < y2);
      expect(new Set(here.map(({ x1 }) => x1))).toEqual(own);
      for (const { tracks } of lane.runs.flat()) {
        for (const { from, length } of tracks) {
          const inside = stems.filter(
            ({ x1 }) => mmAt(side, from) < x1 && x1 < mmAt(side, from + length),
          );
          expect(inside.filter(({ y1, y2 }) => y1 < y + 0.6 && y - 0.6 < y2)).toEqual([]);
          const touching = ends.filter((bar) => Math.abs(bar.y1 - y) < 0.5);
          expect(touching.map(({ x1 }) => x1)).toContain(mmAt(side, from));
          expect(touching.map(({ x2 }) => x2)).toContain(mmAt(side, from + length));
        }
      }
    }
  });
});

describe("the bars of a lane", () => {
  const scene = sideScene(EVERYDAY, ACROSS);

  it("are broad in every other lane, so that neighbours differ even in one pattern", () => {
    const heights = (role: "lane-bar" | "lane-rail") =>
      new Set(
        pathsOf(scene, role)
          .flatMap(segmentsOf)
          .filter(({ x2 }) => x2 < 131)
          .map(({ y1 }) => y1),
      );
    expect(ACROSS.lanes).toHaveLength(5);
    expect(heights("lane-bar").size).toBe(3);
    expect(heights("lane-rail").size).toBe(2 * 2);
  });

  it("have the colour and the dash of their pattern", () => {
    const bars = [...pathsOf(scene, "lane-bar"), ...pathsOf(scene, "lane-rail")];
    expect(new Set(bars.map(({ lane }) => lane))).toEqual(new Set([1, 2, 3, 4]));
    for (const bar of bars) {
      const { colour, dash } = laneStyle(bar.lane ?? 0);
      expect(markStyle(bar)).toMatchObject({ stroke: colour });
      expect(markStyle(bar).dash ?? []).toEqual(dash);
    }
  });

  it.each([
    ["across", ACROSS],
    ["down", DOWN],
  ] as const)("%s carry the count of every track and the label of every run", (_, side) => {
    const drawn = sideScene(EVERYDAY, side);
    const runs = side.lanes.flatMap((lane) => lane.runs);
    const sizes = runs.flatMap(({ tracks }) => tracks.map(({ length }) => String(length)));
    expect(
      textsOf(drawn, "lane-text")
        .map(({ text }) => text)
        .toSorted(),
    ).toEqual(sizes.toSorted());
    const letters = textsOf(drawn, "lane-letter").filter(({ anchor }) => anchor === "middle");
    expect(letters).toHaveLength(runs.length);
    expect(new Set(letters.map(({ text }) => text)).size).toBe(runs.length);
  });
});

describe("what is written on a side", () => {
  it.each([
    ["across", ACROSS],
    ["down", DOWN],
  ] as const)("%s is crossed by no stem and by nothing else that is written", (_, side) => {
    const scene = sideScene(EVERYDAY, side);
    const texts = textsOf(scene, "count", "total", "lane-text", "lane-letter", "note", "heading");
    const stems = uprights(scene, "lane");
    for (const text of texts) {
      const crossing = stems.filter((stem) => isOver(text, stem));
      expect([text.text, crossing]).toEqual([text.text, []]);
    }
    const clashes = texts.flatMap((a, index) =>
      texts
        .slice(index + 1)
        .filter((b) => a.y === b.y && meet(a, b))
        .map((b) => `${a.text} and ${b.text}`),
    );
    expect(clashes).toEqual([]);
  });

  it("lies inside the cut", () => {
    for (const make of ["edges", "fold", "two"] as const) {
      const { marks, frame } = stripScene({ ...EVERYDAY, make });
      for (const text of textsOf({ marks }, "count", "total", "lane-text", "note", "heading")) {
        const { from, to } = textInterval(text);
        expect(from).toBeGreaterThanOrEqual(0);
        expect(to).toBeLessThanOrEqual(frame.x + frame.width);
        expect(text.y).toBeGreaterThan(0);
        expect(text.y).toBeLessThan(frame.y + frame.height);
      }
    }
  });
});

/** Where a lane ends, from the edge of its face: before the first, where the numbers end. */
function laneEnd(side: StripSide, lane: number): number {
  const [face] = layOutBody(EVERYDAY, [side], {}).faces;
  return face ? Math.round(laneTop(face, lane + 1) * 1000) / 1000 : Number.NaN;
}

/** Does an upright line run through a text? Half its size stands for the height of its letters. */
function isOver(
  text: TextMark,
  stem: { readonly x1: number; readonly y1: number; readonly y2: number },
) {
  const { from, to } = textInterval(text);
  const middle = text.y - text.size * 0.36;
  return from < stem.x1 && stem.x1 < to && stem.y1 < middle && middle < stem.y2;
}

/** Widths are estimated on the wide side, so a tenth of a millimetre is no clash. */
function meet(a: TextMark, b: TextMark): boolean {
  const [one, other] = [textInterval(a), textInterval(b)];
  return one.from + 0.1 < other.to && other.from + 0.1 < one.to;
}
