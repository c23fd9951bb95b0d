import { describe, expect, it } from "vitest";
import { fromMm } from "../../src/measure/length.ts";
import type { Notebook } from "../../src/notebook/notebook.ts";
import { stripJson } from "../../src/strip/strip-json.ts";
import { notebookOf } from "../oracle/notebook-of.ts";
import { planOf, stripOf } from "./hand-plans.ts";

/** An A5 of 26 by 38 dots, 5 mm apart, centred on the paper. */
const A5: Notebook = {
  ...notebookOf(26, 38),
  slug: "a5",
  axes: {
    across: {
      dots: 26,
      pitch: fromMm(5),
      firstDot: fromMm(11.5),
      paper: fromMm(148),
      count: "edge-to-dot",
    },
    down: {
      dots: 38,
      pitch: fromMm(5),
      firstDot: fromMm(12.5),
      paper: fromMm(210),
      count: "edge-to-dot",
    },
  },
};

const WEEK = planOf("two-row-week", { sizes: [5, 5, 5, 5], gap: 1, length: 26 });
const SEEDS = planOf("seed-list", { sizes: [26] });

describe("strip.json", () => {
  const json = stripJson(stripOf([WEEK, SEEDS], { lanes: 1, down: ["two-row-week"] }, A5));
  const [across, down] = json.sides;

  it("names the strip, the notebook and both sides in this order", () => {
    expect(Object.keys(json)).toEqual(["strip", "notebook", "sides"]);
    expect([json.strip, json.notebook]).toEqual(["everyday", "a5"]);
    expect(json.sides.map(({ axis }) => axis)).toEqual(["across", "down"]);
    expect(Object.keys(across ?? {})).toEqual([
      "axis",
      "steps",
      "mm",
      "middle",
      "lanes",
      "left_out",
    ]);
  });

  it("has a place in millimetres for every position", () => {
    expect(across?.mm).toHaveLength(27);
    expect(across?.mm.slice(0, 3)).toEqual([0, 11.5, 16.5]);
    expect(across?.mm.at(-1)).toBe(136.5);
    expect(down?.mm.slice(0, 3)).toEqual([0, 12.5, 17.5]);
    expect(down?.mm.at(-1)).toBe(197.5);
  });

  it("writes a run out", () => {
    expect(across?.lanes).toEqual([
      {
        runs: [
          {
            patterns: ["two-row-week"],
            from: 0,
            to: 26,
            marks: [0, 5, 6, 11, 12, 17, 18, 23],
            sizes: [5],
            colour: 1,
            uses: 1,
          },
        ],
      },
    ]);
  });

  it("says what is left out and why", () => {
    expect(across?.left_out).toEqual([
      {
        pattern: "seed-list",
        from: 0,
        to: 26,
        why: "The columns, from 0 to 26, find no room: the one lane is taken there.",
      },
    ]);
    expect(down?.left_out).toEqual([
      { pattern: "two-row-week", why: "It has no rows, so there is nothing to mark down." },
    ]);
  });

  it("is the same text each time", () => {
    const again = stripJson(stripOf([WEEK, SEEDS], { lanes: 1, down: ["two-row-week"] }, A5));
    expect(JSON.stringify(again)).toBe(JSON.stringify(json));
  });
});

describe("millimetres in strip.json", () => {
  // A quarter inch is 6.35 mm exactly (ISO 31 and the international yard of 1959: 1 in = 25.4 mm).
  it("are exact to six decimals and end at the paper's edge where counting does", () => {
    const across = {
      dots: 32,
      pitch: fromMm(6.35),
      firstDot: fromMm(9.525),
      paper: fromMm(215.9),
      count: "edge-to-edge",
    } as const;
    const notebook = { ...A5, axes: { ...A5.axes, across } };
    const [side] = stripJson(stripOf([SEEDS], {}, notebook)).sides;
    expect(side?.steps).toBe(33);
    expect(side?.mm.slice(0, 4)).toEqual([0, 9.525, 15.875, 22.225]);
    expect(side?.mm.slice(-2)).toEqual([206.375, 215.9]);
  });

  it("begin at the first dot where counting does", () => {
    const across = { ...A5.axes.across, count: "dot-to-dot" } as const;
    const [side] = stripJson(stripOf([SEEDS], {}, { ...A5, axes: { ...A5.axes, across } })).sides;
    expect(side?.steps).toBe(25);
    expect(side?.mm[0]).toBe(11.5);
    expect(side?.mm.at(-1)).toBe(136.5);
  });
});
