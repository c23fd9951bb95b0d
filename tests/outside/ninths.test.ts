/** Book-page margins by the ninths canon, built as a recipe with shares. */
import { describe, expect, it } from "vitest";
import { planPattern } from "../../src/plan/plan-pattern.ts";
import { upTo } from "../oracle/all-splits.ts";
import { notebookOf } from "../oracle/notebook-of.ts";
import { area, columns, onePage, recipeOf, rows, track } from "../oracle/recipe-of.ts";
import { shareTrack } from "../oracle/track.ts";

/**
 * Inner margin, text and outer margin take 1, 6 and 2 ninths of the width; top, text and bottom the same of the height
 * (the Van de Graaf canon). On a page of 2 to 3 the margins are then as 2 : 3 : 4 : 6 (inner, top, outer, bottom; wording
 * from memory), and the text is as high as the page is wide.
 */
const NINTHS = [shareTrack(1), shareTrack(6), shareTrack(2)];
const CANON = recipeOf(
  onePage(
    area({
      split: columns([
        shareTrack(1),
        track(shareTrack(6), area({ split: rows(NINTHS) })),
        shareTrack(2),
      ]),
    }),
  ),
);

function canonOn(across: number, down: number) {
  const plan = planPattern(CANON, notebookOf(across, down));
  if (!plan.fits) throw new Error("the canon does not fit");
  const [inner, top, text, bottom, outer] = plan.pages[0]?.boxes ?? [];
  const margins = [inner?.w, top?.h, outer?.w, bottom?.h];
  return { margins, text: { x: text?.x, y: text?.y, w: text?.w, h: text?.h } };
}

describe("the ninths canon", () => {
  it.each(upTo(7))(
    "has margins as 2 : 3 : 4 : 6 on a page of 2 to 3, %i times 18 × 27 steps",
    (k) => {
      expect(canonOn(18 * k, 27 * k)).toEqual({
        margins: [2 * k, 3 * k, 4 * k, 6 * k],
        text: { x: 2 * k, y: 3 * k, w: 12 * k, h: 18 * k },
      });
    },
  );

  it("has margins of 3, 4, 6 and 8 on 27 × 36 steps", () => {
    expect(canonOn(27, 36)).toEqual({
      margins: [3, 4, 6, 8],
      text: { x: 3, y: 4, w: 18, h: 24 },
    });
  });

  it("gives the step that ninths cannot share to the bottom on 26 × 38, where its remainder is largest", () => {
    expect(canonOn(26, 38)).toEqual({
      margins: [3, 4, 6, 9],
      text: { x: 3, y: 4, w: 17, h: 25 },
    });
  });
});
