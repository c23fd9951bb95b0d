import { describe, expect, it } from "vitest";
import { letterOf, runLabels } from "../../src/strip/run-labels.ts";
import { type HandSplit, planOf, stripOf } from "./hand-plans.ts";

const LABELLED: readonly (readonly [
  name: string,
  patterns: Readonly<Record<string, readonly HandSplit[]>>,
  labels: readonly string[],
])[] = [
  ["its letter where a pattern has one run", { week: [{ sizes: [13, 13] }] }, ["A"]],
  [
    "a small letter more where it has several, nearest the edge first",
    { week: [{ sizes: [26] }, { sizes: [13, 13] }, { sizes: [8, 18] }] },
    ["Aa", "Ab", "Ac"],
  ],
  [
    "the letters of all patterns that it serves",
    { week: [{ sizes: [13, 13] }], seeds: [{ sizes: [8, 18] }], rota: [{ sizes: [13, 13] }] },
    ["A+C", "B"],
  ],
  [
    "both where it is one of several and serves others",
    { week: [{ sizes: [13, 13] }, { sizes: [26] }], rota: [{ sizes: [26] }] },
    ["Aa", "Ab+B"],
  ],
];

describe("a run's label is", () => {
  it.each(LABELLED)("%s", (_, patterns, labels) => {
    const plans = Object.entries(patterns).map(([slug, splits]) => planOf(slug, ...splits));
    const strip = stripOf(plans, { lanes: 12 });
    const [across] = strip.sides;
    if (across === undefined) throw new Error("a strip has a side across");
    expect([...runLabels(across, strip.patterns).values()]).toEqual(labels);
  });
});

describe("letters", () => {
  it.each([
    [0, "A"],
    [25, "Z"],
    [26, "AA"],
    [39, "AN"],
  ])("number %i is %s", (index, letter) => {
    expect(letterOf(index)).toBe(letter);
  });
});
