import { describe, expect, it } from "vitest";
import type { Count } from "../../src/measure/grid-axis.ts";
import { copyingCard } from "../../src/strip/copying-card.ts";
import { notebookOf } from "../oracle/notebook-of.ts";
import { planOf, stripOf } from "./hand-plans.ts";

function cardOf(count: Count, sizes: readonly number[]) {
  const plain = notebookOf(26, 38);
  const across = { ...plain.axes.across, count };
  const notebook = { ...plain, axes: { ...plain.axes, across } };
  const [side] = copyingCard(stripOf([planOf("week", { sizes })], {}, notebook));
  if (side === undefined) throw new Error("a card has a side across");
  return side;
}

describe("the marks of a copying card", () => {
  it.each<[Count, string, string, number, readonly (number | "start" | "end")[]]>([
    ["edge-to-dot", "edge", "dot", 26, ["start", 13, 26]],
    ["dot-to-dot", "dot", "dot", 25, [1, 14, 26]],
    ["dot-to-edge", "dot", "edge", 26, [1, 14, "end"]],
    ["edge-to-edge", "edge", "edge", 27, ["start", 13, "end"]],
  ])("counted %s lie between %s and %s, on these dots", (count, start, end, steps, dots) => {
    const side = cardOf(count, [13, steps - 13]);
    expect(side).toMatchObject({ start, end, steps, dots: 26 });
    const [run] = side.lanes[0] ?? [];
    expect(run?.marks).toEqual(
      [0, 13, steps].map((position, index) => ({ position, dot: dots[index] })),
    );
  });
});

describe("a copying card", () => {
  const week = planOf("week", { sizes: [6, 6], gap: 1 }, { sizes: [26] });
  const rota = planOf("rota", { sizes: [26] });
  const [across, down] = copyingCard(stripOf([week, rota]));

  it("goes side by side and lane by lane, from the edge inward", () => {
    expect(across?.lanes.map((lane) => lane.map(({ label }) => label))).toEqual([["Aa"], ["Ab+B"]]);
    expect(down?.lanes).toEqual([]);
  });

  it("says between which positions to write what, and what the run is for", () => {
    const [run] = across?.lanes[0] ?? [];
    expect(run).toMatchObject({
      colour: 1,
      patterns: [{ slug: "week" }],
      tracks: [
        { from: 0, length: 6 },
        { from: 7, length: 6 },
      ],
    });
  });

  it("marks the middle", () => {
    expect([across?.middles, down?.middles]).toEqual([[13], [19]]);
  });
});
