import { describe, expect, it } from "vitest";
import type { Misfit } from "../../src/issue/facts/misfit.ts";
import { sayMisfit, sayReason } from "../../src/issue/words/say-misfit.ts";
import type { PageSide } from "../../src/measure/paper-side.ts";

function short(path: string, needs: number, has: number, side: PageSide = "single"): Misfit {
  const axis = path.endsWith("columns") ? "across" : "down";
  return { kind: "split-too-short", side, path, axis, needs, has };
}

describe("why a pattern does not fit", () => {
  it.each<[Misfit, string]>([
    [short("rows", 41, 38), "The rows need 41 steps and have 38: 3 too few."],
    [short("columns", 2, 1), "The columns need 2 steps and have 1: 1 too few."],
    [short("rows.1.columns", 9, 8), "The columns of row 2 need 9 steps and have 8: 1 too few."],
    [
      short("rows.1.columns.0.rows", 9, 8, "left"),
      "The rows of column 1 of row 2 on the left page need 9 steps and have 8: 1 too few.",
    ],
    [
      { kind: "area-too-small", side: "single", path: "", axis: "across", margins: 28, has: 26 },
      "The page has 26 steps across and its margins take 28: no step is left to draw in.",
    ],
    [
      { kind: "area-too-small", side: "right", path: "", axis: "down", margins: 1, has: 1 },
      "The right page has 1 step down and its margins take 1: no step is left to draw in.",
    ],
    [
      { kind: "area-too-small", side: "left", path: "rows.0", axis: "down", margins: 0, has: 0 },
      "Row 1 on the left page has 0 steps down: too few to draw in.",
    ],
    [
      { kind: "same-impossible", name: "day", min: 5, max: 3 },
      "No one size suits all parts named “day”: one needs at least 5 steps and one takes at most 3.",
    ],
    [
      { kind: "same-impossible", name: "day", min: 5, max: Number.POSITIVE_INFINITY },
      "No one size suits all parts named “day”: at 5 steps or more the pattern does not fit.",
    ],
    [
      { kind: "same-impossible", name: "day", min: 3, max: 5 },
      "No one size suits all parts named “day”: from 3 to 5 steps the pattern does not fit.",
    ],
    [
      { kind: "same-impossible", name: "day", min: 1, max: 1 },
      "No one size suits all parts named “day”: at 1 step the pattern does not fit.",
    ],
    [
      { kind: "margin-clash", side: "single", path: "", paperSide: "top", keys: ["top", "inner"] },
      "Two margins of the page land on its top side with this binding: top and inner.",
    ],
    [
      { kind: "too-much", what: "boxes", limit: 40_000 },
      "The pattern has more than 40000 boxes, more than a page can carry.",
    ],
    [
      { kind: "too-much", what: "work", limit: 4_000_000 },
      "The pattern is too complicated to be worked out for one page.",
    ],
  ])("%j", (misfit, sentence) => {
    expect(sayMisfit(misfit)).toBe(sentence);
  });

  it.each([
    [1, "ended after the first try, so"],
    [87, "ended after 87 tries, so"],
  ])("says where the search for changes ended: after %i", (tries, words) => {
    const misfit = short("columns", 9, 8);
    const said = sayReason({ misfit, stop: { kind: "search-stop", tries } });
    expect(said.startsWith(`${sayMisfit(misfit)} The search for changes`)).toBe(true);
    expect(said).toContain(words);
    expect(sayReason({ misfit })).toBe(sayMisfit(misfit));
  });

  it("calls an area by its label, and what lies in it by where it lies", () => {
    const labelAt = ({ path }: { readonly path: string }) =>
      path === "rows.1" ? "Week" : undefined;
    expect(sayMisfit(short("rows.1.columns", 9, 8), labelAt)).toBe(
      "The columns of “Week” need 9 steps and have 8: 1 too few.",
    );
    expect(sayMisfit(short("rows.1.columns.2.rows", 9, 8), labelAt)).toBe(
      "The rows of column 3 of “Week” need 9 steps and have 8: 1 too few.",
    );
  });
});
