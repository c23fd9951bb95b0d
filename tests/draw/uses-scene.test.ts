/** The chart of uses: one bar for each month with a use, as high as it has uses, hatched as far as it is drawn. */
import { describe, expect, it } from "vitest";
import { type UsesChart, usesScene } from "../../src/draw/figure/uses-scene.ts";

const months = (count: number, from = 0) =>
  Array.from({ length: count }, (_, index) => {
    const month = from + index;
    return { name: `M${(month % 12) + 1}`, letter: "m", year: 2026 + Math.floor(month / 12) };
  });

const layout = (title: string, ...byMonth: readonly (readonly [number, number])[]) => ({
  title,
  planned: byMonth.reduce((sum, [planned]) => sum + planned, 0),
  drawn: byMonth.reduce((sum, [, drawn]) => sum + drawn, 0),
  byMonth: byMonth.map(([planned, drawn]) => ({ planned, drawn })),
});

const chart = (part: Partial<UsesChart>) =>
  usesScene({ id: "uses", title: "Uses", months: months(3, 10), layouts: [], ...part });

/** Widths and heights of the bars, by the corners in their path. */
function bars(scene: ReturnType<typeof usesScene>): readonly (readonly [number, number])[] {
  const data = scene.marks.flatMap((mark) =>
    mark.kind === "path" && mark.role === "edge-fine" ? [mark.d] : [],
  );
  return [...data.join("").matchAll(/M(\S+) (\S+)H(\S+)V(\S+)H\S+Z/g)].map(
    ([, x, y, right, foot]) => [Number(right) - Number(x), Number(foot) - Number(y)] as const,
  );
}

const texts = (scene: ReturnType<typeof usesScene>) =>
  scene.marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : []));

describe("the chart of uses", () => {
  const scene = chart({
    layouts: [layout("Week", [4, 2], [0, 0], [2, 0]), layout("Month", [1, 1])],
  });

  it("has bars whose heights are in the ratio of the uses, and none for a month without", () => {
    const [four, two, one, ...others] = bars(scene).map(([, height]) => height);
    expect(others).toEqual([]);
    expect((four ?? 0) / (two ?? 1)).toBeCloseTo(2, 2);
    expect((four ?? 0) / (one ?? 1)).toBeCloseTo(4, 2);
    expect(new Set(bars(scene).map(([width]) => width.toFixed(2))).size).toBe(1);
  });

  it("is hatched only where something is drawn", () => {
    const hatched = scene.marks.filter(({ role }) => role === "fill");
    expect(hatched).toHaveLength(2);
    const bare = chart({ layouts: [layout("Week", [4, 0])] });
    expect(bare.marks.filter(({ role }) => role === "fill")).toEqual([]);
  });

  it("names layouts, numbers, months, and each year at its first month", () => {
    expect(texts(scene)).toEqual([
      "Week",
      "4",
      "2",
      "Month",
      "1",
      "M11",
      "2026",
      "M12",
      "M1",
      "2027",
    ]);
    expect(scene.description).toBe("Week: 6 uses, 2 drawn; Month: 1 use, 1 drawn.");
  });

  it("has letters in place of names where months are narrow, and stays in its frame", () => {
    const narrow = chart({ months: months(36), layouts: [layout("Week", [1, 0])] });
    expect(texts(narrow)).toContain("m");
    expect(texts(narrow)).not.toContain("M1");
    for (const mark of narrow.marks)
      if (mark.kind === "text") expect(mark.x).toBeLessThan(narrow.frame.width);
  });
});
