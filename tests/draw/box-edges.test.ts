import { describe, expect, it } from "vitest";
import { boxEdges, type WeightedEdge } from "../../src/draw/page/box-edges.ts";
import type { PlanPage } from "../../src/plan/plan.ts";
import { pageOf, type ShortBox } from "./plan-of.ts";
import { samplePlans } from "./sample-plans.ts";

/** `across 3: 0-4` is a line along row 3 from column 0 to column 4. */
function written(edges: readonly WeightedEdge[]): string[] {
  return edges.map(
    ({ axis, at, from, to, weight }) =>
      `${axis} ${at}: ${from}-${to}${weight === "fine" ? " fine" : ""}`,
  );
}

const TABLE: readonly (readonly [string, readonly ShortBox[], readonly string[]])[] = [
  ["no box has no lines", [], []],
  [
    "one box has four",
    [[1, 1, 3, 2]],
    ["across 1: 1-4", "across 3: 1-4", "down 1: 1-3", "down 4: 1-3"],
  ],
  [
    "two boxes with a gap have eight, those on one height not joined",
    [
      [0, 0, 2, 2],
      [3, 0, 2, 2],
    ],
    [
      "across 0: 0-2",
      "across 0: 3-5",
      "across 2: 0-2",
      "across 2: 3-5",
      "down 0: 0-2",
      "down 2: 0-2",
      "down 3: 0-2",
      "down 5: 0-2",
    ],
  ],
  [
    "twins that touch share one fine line, and their outline is one",
    [
      [0, 0, 2, 3],
      [2, 0, 2, 3],
    ],
    ["across 0: 0-4", "across 3: 0-4", "down 0: 0-3", "down 2: 0-3 fine", "down 4: 0-3"],
  ],
  [
    "twins of which leftover made one larger still share a fine line",
    [
      [0, 0, 2, 3],
      [2, 0, 3, 3],
    ],
    ["across 0: 0-5", "across 3: 0-5", "down 0: 0-3", "down 2: 0-3 fine", "down 5: 0-3"],
  ],
  [
    "a heading is parted from the columns below by a strong line",
    [
      [0, 0, 4, 1],
      [0, 1, 2, 4],
      [2, 1, 2, 4],
    ],
    [
      "across 0: 0-4",
      "across 1: 0-4",
      "across 5: 0-4",
      "down 0: 0-5",
      "down 2: 1-5 fine",
      "down 4: 0-5",
    ],
  ],
];

describe("the lines around boxes", () => {
  it.each(TABLE)("%s", (_, boxes, expected) => {
    expect(written(boxEdges(pageOf(6, 6, boxes)))).toEqual(expected);
  });

  it("cover every side of every box, and nothing else, once", () => {
    for (const page of samplePlans(150, 7).flatMap(({ plan }) => plan.pages)) {
      const drawn = boxEdges(page).flatMap(unitsOfLine);
      expect(new Set(drawn).size).toBe(drawn.length);
      expect(new Set(drawn)).toEqual(new Set(page.boxes.flatMap(unitsOfBox)));
    }
  });

  it("run as far as they go: no line ends where one of its weight goes on", () => {
    const page: PlanPage = pageOf(12, 12, [
      [0, 0, 3, 3],
      [3, 0, 3, 3],
      [0, 3, 3, 3],
      [3, 3, 3, 3],
    ]);
    expect(boxEdges(page)).toHaveLength(6);
  });
});

/** One name for each step of a line. */
function unitsOfLine({ axis, at, from, to }: WeightedEdge): string[] {
  return Array.from({ length: to - from }, (_, step) => `${axis} ${at} ${from + step}`);
}

function unitsOfBox({ x, y, w, h }: PlanPage["boxes"][number]): string[] {
  return [
    ...[y, y + h].flatMap((at) =>
      Array.from({ length: w }, (_, step) => `across ${at} ${x + step}`),
    ),
    ...[x, x + w].flatMap((at) => Array.from({ length: h }, (_, step) => `down ${at} ${y + step}`)),
  ];
}
