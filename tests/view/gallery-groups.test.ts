/** Which cards stand in the gallery's page, however many patterns there are. */
import { describe, expect, it } from "vitest";
import { FIRST_CARDS, galleryGroups } from "../../src/view/gallery/gallery-groups.ts";
import type { PurposeGroup } from "../../src/view/pattern/pattern-cards.ts";

/** A group of so many cards, told apart by their numbers. */
function group(purpose: PurposeGroup["purpose"], count: number): PurposeGroup {
  const cards = Array.from({ length: count }, (_, index) => ({
    ...{ pattern: `${purpose}-${index}`, notebook: "a5", title: "", purpose, notebookTitle: "" },
    ...{ tags: [], state: "even" as const, lines: 1, linesOn: [1], even: [], misfit: [] },
  }));
  return { purpose, title: "", about: "", cards };
}

describe("the gallery's page has", () => {
  it.each<[counts: readonly [number, number, number], cards: readonly number[]]>([
    [
      [1, 2, 3],
      [1, 2, 3],
    ],
    [
      [FIRST_CARDS, 0, 0],
      [FIRST_CARDS, 0, 0],
    ],
    [
      [FIRST_CARDS - 1, 3, 5],
      [FIRST_CARDS - 1, 1, 0],
    ],
    [
      [1_000, 1_000, 1_000],
      [FIRST_CARDS, 0, 0],
    ],
  ])("of groups of %j cards %j, and counts the others", (counts, cards) => {
    const [year, week, list] = counts;
    const groups = [group("year", year), group("week", week), group("list", list)];
    const shown = galleryGroups(groups);
    expect(shown.map((one) => one.cards.length)).toEqual(cards);
    expect(shown.map((one) => one.cards.length + one.rest)).toEqual(counts);
    for (const [index, one] of shown.entries())
      expect(one.cards).toEqual(groups[index]?.cards.slice(0, cards[index]));
  });
});
