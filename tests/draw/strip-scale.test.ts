import { describe, expect, it } from "vitest";
import { sideScene } from "../../src/draw/strip/strip-scene.ts";
import { COUNTS } from "../../src/measure/grid-axis.ts";
import { fromMm } from "../../src/measure/length.ts";
import type { Notebook } from "../../src/notebook/notebook.ts";
import { stripJson } from "../../src/strip/strip-json.ts";
import { notebookOf } from "../oracle/notebook-of.ts";
import { planOf, stripOf } from "../strip/hand-plans.ts";
import { ACROSS, acrossOf, EVERYDAY, PLANS } from "./strip-everyday.ts";
import { pathsOf, textsOf, uprights } from "./strip-lines.ts";

/** A grid of quarter inches on a page that is no whole number of them. */
function quarterInch(count: (typeof COUNTS)[number]): Notebook {
  const grid = {
    dots: 26,
    pitch: fromMm(6.35),
    firstDot: fromMm(9.525),
    paper: fromMm(190),
    count,
  };
  return { ...notebookOf(26, 38), axes: { across: grid, down: { ...grid, dots: 24 } } };
}

describe("a side in true size", () => {
  it.each(COUNTS)(
    "counted %s has a tick at the edge for every position, where strip.json says",
    (count) => {
      const strip = stripOf([planOf("week", { sizes: [8, 8] })], {}, quarterInch(count));
      const [side, json] = [strip.sides[0], stripJson(strip).sides[0]];
      if (!side) throw new Error("a strip has a side across");
      const ticks = uprights(sideScene(strip, side), "tick").filter(({ y1 }) => y1 === 0);
      expect(ticks.map(({ x1 }) => x1)).toEqual(json?.mm);
    },
  );

  it("has its numbers in steps, and all of them at the last position", () => {
    const texts = textsOf(sideScene(EVERYDAY, ACROSS), "count", "total").map(({ text }) => text);
    expect(texts).toEqual([...Array.from({ length: 26 }, (_, k) => String(k)), "26"]);
  });

  it("numbers from the other end as well where it is asked to", () => {
    const scene = sideScene(EVERYDAY, ACROSS, { countsBack: true });
    const texts = textsOf(scene, "count", "total");
    const rows = [...new Set(texts.map(({ y }) => y))];
    const [forth, back] = rows.map((row) =>
      texts.filter(({ y }) => y === row).map(({ text }) => text),
    );
    expect(forth?.slice(0, 3)).toEqual(["0", "1", "2"]);
    expect(new Set(back)).toEqual(new Set(Array.from({ length: 27 }, (_, k) => String(k))));
  });

  it("numbers every fifth position and the marks where there is no room for all", () => {
    const fine = { ...notebookOf(40, 40).axes.across, pitch: fromMm(2), paper: fromMm(90) };
    const notebook = { ...notebookOf(40, 40), axes: { across: fine, down: fine } };
    const strip = stripOf([planOf("week", { from: 12, sizes: [7, 7] })], {}, notebook);
    const side = acrossOf(strip);
    const texts = textsOf(sideScene(strip, side), "count", "total").map(({ text }) => text);
    expect(texts).toEqual(["0", "5", "10", "12", "15", "19", "20", "25", "26", "30", "35", "40"]);
  });

  it("marks the counted middle and the paper's, one mark where they are one", () => {
    const apart = sideScene(EVERYDAY, ACROSS);
    expect(pathsOf(apart, "middle").map(({ d }) => d.split("L")[0])).toContain("M65 0");
    expect(pathsOf(apart, "paper-middle").map(({ d }) => d.split("L")[0])).toContain("M67.5 0");
    const grid = { ...notebookOf(25, 37).axes.across, count: "edge-to-edge" } as const;
    const alike = stripOf(PLANS, {}, { ...notebookOf(25, 37), axes: { across: grid, down: grid } });
    const side = acrossOf(alike);
    expect(pathsOf(sideScene(alike, side), "paper-middle")).toEqual([]);
  });
});
