/** The strip of most uses as a whole list: from plans to what is carried and left out. */
import { describe, expect, it } from "vitest";
import { buildStrip } from "../../src/strip/build-strip.ts";
import { laneChoice } from "../../src/strip/lane-choice.ts";
import { FIRST_COME } from "../../src/strip/lay-lanes.ts";
import { MOST_USED } from "../../src/strip/most-used.ts";
import type { StripSide } from "../../src/strip/strip.ts";
import { entryOfPlan, type SideEntry } from "../../src/strip/strip-entry.ts";
import { laneChoiceWords } from "../../src/view/strip/strip-side-view.ts";
import { notebookOf } from "../oracle/notebook-of.ts";
import { randomFrom } from "../oracle/random.ts";
import { randomRuns } from "../oracle/random-runs.ts";
import { planOf, stripRecipeOf } from "./hand-plans.ts";

/** `a 0-4 5, b 3-7 6`: patterns of one run each, with their uses. */
function entriesOf(listed: string): readonly SideEntry[] {
  return listed.split(", ").map((one) => {
    const [name = "", stretch = "", uses] = one.split(" ");
    const [from = 0, to = 0] = stretch.split("-").map(Number);
    const plan = planOf(name, { from, sizes: [to - from] });
    return entryOfPlan(plan, { title: name.toUpperCase(), uses: Number(uses) });
  });
}

function sideOf(entries: readonly SideEntry[], lanes: number, chooser = MOST_USED): StripSide {
  const strip = buildStrip({
    head: { ...stripRecipeOf({}), lanes },
    notebook: notebookOf(40, 40),
    entries: { across: entries, down: [] },
    chooser,
  });
  const [across] = strip.sides;
  if (!across) throw new Error("a strip has a side across");
  return across;
}

const keptIn = ({ lanes }: StripSide) => lanes.flatMap(({ runs }) => runs);
const namesIn = (side: StripSide) =>
  keptIn(side)
    .flatMap(({ sources }) => sources.map((source) => source.pattern))
    .sort()
    .join(" ");
const usesIn = (side: StripSide) => keptIn(side).reduce((sum, { uses }) => sum + uses, 0);

/** Worked by hand for this project, and each found by trying all sets, by HiGHS 1.15.3 and by a flow. */
const WORKED: readonly (readonly [limit: number, listed: string, most: number, kept: string])[] = [
  [1, "a 0-4 5, b 3-7 6, c 6-10 5", 10, "a c"],
  [1, "a 0-2 1, b 1-9 10, c 4-6 1, d 8-10 1", 10, "b"],
  [2, "a 0-6 3, b 2-8 4, c 4-10 5, d 9-12 2", 11, "b c d"],
  [2, "a 0-3 4, b 4-7 4, c 0-5 5, d 6-9 5, e 2-9 7", 18, "a b c d"],
  [1, "p 0-6 2, q 0-6 2, r 0-2 2, s 4-6 3", 5, "r s"],
  [1, "p 0-6 3, q 0-6 3, r 0-2 2, s 4-6 3", 6, "p q"],
  [1, "a 0-3 2, b 3-6 2, c 2-4 3", 4, "a b"],
  [3, "a 0-10 4, b 0-4 3, c 5-10 3, d 2-7 2, e 3-8 6, f 9-12 1", 17, "a b c e f"],
  [4, "a 0-10 4, b 0-4 3, c 5-10 3, d 2-7 2, e 3-8 6, f 9-12 1", 19, "a b c d e f"],
  [1, "a 0-4 3, b 2-6 3", 3, "a"],
  [2, "a 0-3 3, b 0-2 3, c 6-10 2, d 2-6 5", 13, "a b c d"],
  [2, "a 5-9 1, b 3-8 2, c 7-9 5, d 4-5 6, e 1-6 2", 14, "a c d e"],
];

describe("the worked cases as lists", () => {
  it.each(WORKED)("in %i lanes, %s: %i uses", (limit, listed, most, kept) => {
    const entries = entriesOf(listed);
    const side = sideOf(entries, limit);
    expect(usesIn(side)).toBe(most);
    expect(namesIn(side)).toBe(kept);
    const lost = new Set(side.leftOut.map(({ pattern }) => pattern));
    expect([...lost, ...kept.split(" ")].sort()).toEqual(entries.map(({ slug }) => slug).sort());
  });

  it("says of a merged run that is left out for each pattern where it lies and how often it is used", () => {
    const side = sideOf(entriesOf("p 0-6 2, q 0-6 2, r 0-2 2, s 4-6 3"), 1);
    const lost = { kind: "no-lane", from: 0, to: 6, uses: 4, lanes: 1 };
    expect(side.leftOut).toMatchObject([
      { ...lost, pattern: "p" },
      { ...lost, pattern: "q" },
    ]);
  });
});

describe("of equal sums", () => {
  it.each([
    ["more runs win", "a 0-6 4, b 0-3 2, c 3-6 2", "b c"],
    ["then what stands first in the list", "a 0-4 3, b 2-6 3", "a"],
    ["wherever it lies on the page", "b 2-6 3, a 0-4 3", "b"],
    ["a merged run stands where its first entry does", "a 0-4 1, b 2-6 2, c 0-4 1", "a c"],
    ["even where its larger part comes later", "a 0-4 1, b 2-6 9, c 0-4 8", "a c"],
  ])("%s", (_, listed, kept) => {
    expect(namesIn(sideOf(entriesOf(listed), 1))).toBe(kept);
  });

  it("of one pattern its first split in the order of the recipe", () => {
    const plan = planOf(
      "zones",
      { path: "rows.0.columns", from: 2, sizes: [4] },
      { path: "rows.1.columns", from: 0, sizes: [4] },
    );
    const side = sideOf([entryOfPlan(plan, { title: "Zones", uses: 3 })], 1);
    expect(keptIn(side).map(({ from, to }) => [from, to])).toEqual([[2, 6]]);
  });
});

describe("an entry in several cases", () => {
  const left = planOf("week", { sizes: [4, 4] });
  const right = planOf("week", { sizes: [4, 4] }, { path: "columns.1.columns", sizes: [2, 2] });

  it("uses a set of marks once, in however many of them it occurs", () => {
    const cases = [left, right].map((plan) => ({ plan, spans: [] }));
    const side = sideOf([{ slug: "week", title: "Week", uses: 5, cases }], 4);
    expect(side.asked.runs.map(({ marks, uses }) => [marks.join(" "), uses])).toEqual([
      ["0 4 8", 5],
      ["0 2 4", 5],
    ]);
  });

  it("while entries of one slug add up, as pages of a set-up do", () => {
    const entries = [
      entryOfPlan(left, { title: "Week", uses: 3 }),
      entryOfPlan(right, { title: "Week", uses: 2 }),
    ];
    const side = sideOf(entries, 4);
    expect(side.asked.runs.map(({ marks, uses }) => [marks.join(" "), uses])).toEqual([
      ["0 4 8", 5],
      ["0 2 4", 2],
    ]);
    expect(side.asked.runs[0]?.sources).toHaveLength(1);
  });
});

describe("what is chosen by uses", () => {
  it("comes to at least as much as any order of first come", () => {
    const random = randomFrom(1995);
    let better = 0;
    for (let round = 0; round < 1_000; round++) {
      const runs = randomRuns(random, { most: 16, steps: 24, uses: random.pick([2, 9, 10_000]) });
      const entries = runs.map(({ name, from, to, uses }) =>
        entryOfPlan(planOf(name, { from, sizes: [to - from] }), { title: name, uses }),
      );
      const lanes = random.whole(1, 4);
      const heaviest = entries.toSorted((a, b) => (b.uses ?? 1) - (a.uses ?? 1));
      const most = usesIn(sideOf(entries, lanes));
      for (const order of [entries, heaviest]) {
        const first = usesIn(sideOf(order, lanes, FIRST_COME));
        expect(most, JSON.stringify({ runs, lanes })).toBeGreaterThanOrEqual(first);
        if (most > first) better++;
      }
    }
    expect(better).toBeGreaterThan(300);
  });
});

describe("one lane more", () => {
  const words = (side: StripSide) => {
    const slugs = [...new Set(side.asked.runs.flatMap(({ sources }) => sources))];
    const patterns = slugs.map(({ pattern }) => {
      return { slug: pattern, title: pattern.toUpperCase(), colour: 1, letter: "A" };
    });
    return laneChoiceWords(side, patterns);
  };

  it.each([
    [
      "brings what had no room",
      1,
      "a 0-4 5, b 3-7 6, c 6-10 5",
      [
        "In 1 lane it carries 2 of 3 sets of marks, with 10 of 16 uses: no other choice has more.",
        "One lane more would carry 3 of 3, with 16 uses: 6 more; it would add B (3 to 7).",
      ],
    ],
    [
      "is of no use where all is carried",
      3,
      "a 0-4 5, b 3-7 6",
      ["It carries everything on the list: 2 sets of marks, 11 uses in all."],
    ],
    [
      "brings one that is long",
      1,
      "a 0-10 8, b 0-5 5, c 5-10 4, d 2-7 7",
      [
        "In 1 lane it carries 2 of 4 sets of marks, with 9 of 24 uses: no other choice has more.",
        "One lane more would carry 3 of 4, with 17 uses: 8 more; it would add A (0 to 10).",
      ],
    ],
  ])("%s", (_, lanes, listed, said) => {
    expect(words(sideOf(entriesOf(listed), lanes))).toEqual(said);
  });

  it("is told without uses where the list is in order", () => {
    const side = sideOf(entriesOf("a 0-4 1, b 3-7 1"), 1, FIRST_COME);
    expect(words(side)).toEqual([
      "In 1 lane it carries 1 of 2 sets of marks: what comes first in its list goes first.",
      "One lane more would carry 2 of 2; it would add B (3 to 7).",
    ]);
  });

  it("names what would go for it", () => {
    // In one lane x, m and y; in two x and q, p and y, which leave no room for m.
    const side = sideOf(entriesOf("x 0-3 3, m 3-6 3, y 6-9 3, p 0-5 5, q 4-9 5"), 1);
    expect(words(side)).toEqual([
      "In 1 lane it carries 3 of 5 sets of marks, with 9 of 19 uses: no other choice has more.",
      "One lane more would carry 4 of 5, with 16 uses: 7 more; it would add P (0 to 5) and Q (4 to 9) and leave out M (3 to 6) for it.",
    ]);
  });

  it("is no question where nothing is asked for, or at twelve", () => {
    expect(words(sideOf([], 4))).toEqual([]);
    const many = Array.from({ length: 14 }, (_, at) => `p${at} 0-${at + 1} 1`).join(", ");
    expect(laneChoice(sideOf(entriesOf(many), 12)).oneMore).toBeUndefined();
  });
});

describe("a hostile list", () => {
  it("chooses among so many runs and leaves the pattern out with which they would be more", () => {
    const marks = (shift: number) =>
      Array.from({ length: 1_500 }, (_, index) => ({
        path: `rows.${index}.columns`,
        from: (index % 30) + 1,
        before: 0,
        sizes: [1 + (index % 7), 1 + Math.floor(index / 30), shift],
      }));
    const entries = [1, 2].map((shift) =>
      entryOfPlan(planOf(`p${shift}`, ...marks(shift)), { title: "P", uses: 2 }),
    );
    const side = sideOf(entries, 12);
    expect(side.asked.runs).toHaveLength(1_500);
    expect(side.leftOut.filter(({ kind }) => kind === "too-many-runs")).toEqual([
      { kind: "too-many-runs", pattern: "p2", axis: "across", limit: 2_000 },
    ]);
  });
});
