import { describe, expect, it } from "vitest";
import { cardScene } from "../../src/draw/card/card-scene.ts";
import { CLOSING_STEPS, openingSteps, runStep } from "../../src/draw/card/card-steps.ts";
import { textInterval } from "../../src/draw/strip/strip-clip.ts";
import { CUTTING_CAUTION } from "../../src/issue/words/cutting-caution.ts";
import { sayPositions, sayTracks } from "../../src/issue/words/say-positions.ts";
import type { Count } from "../../src/measure/grid-axis.ts";
import { copyingCard } from "../../src/strip/copying-card.ts";
import { notebookOf } from "../oracle/notebook-of.ts";
import { planOf, stripOf } from "../strip/hand-plans.ts";
import { ACROSS, EVERYDAY } from "./strip-everyday.ts";
import { pathsOf, segmentsOf, textsOf } from "./strip-lines.ts";

describe("positions in few words", () => {
  it.each([
    [[1, 6, 7, 12], "1, 6, 7, 12"],
    [[0, 8, 16], "0, 8, 16"],
    [[0, 8, 16, 24], "every 8 from 0 to 24"],
    [[3, 7, 8, 9, 10, 26], "3, all from 7 to 10, 26"],
    [[0, 5, 8, 11, 14], "0, every 3 from 5 to 14"],
    [[1, 2, 3, 17, 20, 23, 26], "1, 2, 3, every 3 from 17 to 26"],
  ])("%j", (positions, words) => {
    expect(sayPositions(positions)).toBe(words);
  });
});

describe("tracks in few words", () => {
  it.each([
    [
      [
        [1, 5],
        [7, 5],
      ],
      "1–6, 7–12",
    ],
    [
      [
        [0, 8],
        [8, 8],
        [16, 8],
      ],
      "0–8, 8–16, 16–24",
    ],
    [
      [
        [5, 3],
        [8, 3],
        [11, 3],
        [14, 3],
        [20, 3],
      ],
      "each from 5 to 17, 20–23",
    ],
  ])("%j", (tracks, words) => {
    expect(sayTracks(tracks.map(([from = 0, length = 0]) => ({ from, length })))).toBe(words);
  });
});

describe("the card's sentences", () => {
  it.each<[Count, string]>([
    ["edge-to-dot", "the left edge is 0, the last dot is 26"],
    ["dot-to-dot", "the first dot is 0, the last dot is 25"],
    ["dot-to-edge", "the first dot is 0, the right edge is 26"],
    ["edge-to-edge", "the left edge is 0, the right edge is 27"],
  ])("say for a grid counted %s that %s", (count, words) => {
    const plain = notebookOf(26, 38);
    const notebook = { ...plain, axes: { ...plain.axes, across: { ...plain.axes.across, count } } };
    const [side] = copyingCard(stripOf([planOf("week", { sizes: [9] })], {}, notebook));
    const texts = side === undefined ? [] : openingSteps(side).map(({ text }) => text);
    expect(texts).toContain(`In pencil, number the dots: ${words}.`);
  });

  it("rule each side's band off on a leaf of its own, so that no edge is missing, and cut neither yet", () => {
    const bands = copyingCard(EVERYDAY).map((side) => openingSteps(side)[0]?.text);
    expect(bands).toEqual([
      "On the last leaf, rule off a band 7 dots wide along the top. Do not cut it yet.",
      "On the leaf before it, whose edges are whole, rule off a band 4 dots wide along the side. Do not cut it yet.",
    ]);
  });

  it("give the caution before the cut, and the cut last of all", () => {
    const [caution, cut] = CLOSING_STEPS.slice(-2).map(({ text }) => text);
    expect(caution).toBe(`${CUTTING_CAUTION.head} ${CUTTING_CAUTION.words}`);
    expect(cut).toBe("Now cut each band off along the line that you ruled.");
  });

  it("say for a run what it is, what to tick and what to write", () => {
    const [side] = copyingCard(stripOf([planOf("week", { from: 1, sizes: [5, 5, 3], gap: 1 })]));
    const [run] = side?.lanes[0] ?? [];
    expect(run && runStep(run, 0)).toEqual({
      run: { colour: 1, label: "A" },
      text: "week: blue, unbroken. Tick 1, 6, 7, 12, 13, 16, from the edge to row 2. Write 5 on 1–6, 7–12; 3 on 13–16.",
    });
  });
});

describe("the card", () => {
  const scene = cardScene(EVERYDAY);
  const texts = textsOf(scene, "note", "heading", "lane-letter");

  it("is one page as wide as A6 (ISO 216), and no lower", () => {
    expect(scene.frame).toMatchObject({ x: 0, y: 0, width: 105 });
    expect(scene.frame.height).toBeGreaterThanOrEqual(148);
    expect(cardScene(stripOf([planOf("week", { sizes: [9] })], { down: [] })).frame.height).toBe(
      148,
    );
  });

  it("keeps all text on the page, line below line", () => {
    for (const text of texts) {
      const { from, to } = textInterval(text);
      expect(from).toBeGreaterThanOrEqual(0);
      expect(to).toBeLessThanOrEqual(105);
      expect(text.y).toBeLessThanOrEqual(scene.frame.height);
    }
    const lines = textsOf(scene, "note").map(({ y }) => y);
    expect(lines).toEqual(lines.toSorted((a, b) => a - b));
  });

  it("has rows of dots down to the last lane, and its caution", () => {
    const [dots] = pathsOf(scene, "grid");
    expect(dots && segmentsOf(dots)).toHaveLength(ACROSS.lanes.length + 1);
    const said = textsOf(scene, "note")
      .map(({ text }) => text)
      .join(" ");
    expect(said).toContain(CUTTING_CAUTION.words);
  });
});
