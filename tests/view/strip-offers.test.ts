/** Typed words find the layout or the division that they mean, among the first few. */
import { describe, expect, it } from "vitest";
import { stripOffers } from "../../src/view/strip/strip-offers.ts";
import { demoCatalogue } from "../setup/demo-catalogue.ts";

const { catalogue } = await demoCatalogue();
const offersFor = (text: string) =>
  stripOffers(text, { recipes: catalogue.recipes, patterns: catalogue.carried }).map(
    ({ title }) => title,
  );

describe("words", () => {
  it.each<[string, readonly string[]]>([
    ["", ["Halves", "Halves, gap 1", "Thirds", "Thirds, gap 1", "Quarters", "Quarters, gap 1"]],
    ["halves", ["Halves", "Halves, gap 1", "Halves, gap 2"]],
    ["Thirds gap 1", ["Thirds, gap 1"]],
    ["thirds with a gap", ["Thirds, gap 1"]],
    ["thirds with a gap of 2, margin 1", ["Thirds, gap 2, margin 1"]],
    ["1/3", ["Thirds", "Thirds, gap 1", "Thirds, gap 2"]],
    ["13 parts", ["13 parts", "13 parts, gap 1", "13 parts, gap 2"]],
    ["seed list", ["Seed list", "Seed swap"]],
    ["zzz", []],
    ["thirds of cake", []],
    ["99999", []],
    ["<script>", []],
  ])("%j offer", (text, expected) => {
    expect(offersFor(text)).toEqual(expected);
  });

  it.each([
    ["week", "Week in two rows"],
    ["tracker", "Month of small duties"],
    ["half", "Halves, gap 1"],
  ])("%j have among the first eight: %s", (text, title) => {
    expect(offersFor(text)).toContain(title);
    expect(offersFor(text).length).toBeLessThanOrEqual(8);
  });

  it("offer a division on both sides with the margins of each", () => {
    const [offer] = stripOffers("halves gap 1 margin 2", { recipes: [], patterns: new Set() });
    expect(offer?.entries.across).toMatchObject({
      kind: "division",
      margin: { start: 2, end: 2 },
      split: { axis: "across" },
    });
    expect(offer?.entries.down).toMatchObject({
      kind: "division",
      margin: { start: 2, end: 2 },
      split: { axis: "down" },
    });
  });
});
