/** The two lists of a strip, and what can be done with them. */
import { describe, expect, it } from "vitest";
import { patternEntry } from "../../src/recipe/strip-recipe.ts";
import { NO_STRIP, type StripChoice } from "../../src/view/fields/strip-fields.ts";
import { carryOn, countOf, dropFrom, moveOn, useOn } from "../../src/view/strip/edit-strip.ts";

const strip: StripChoice = {
  ...NO_STRIP,
  across: ["a", "b", "c"].map(patternEntry),
  down: [patternEntry("b")],
};
const lists = ({ across, down }: StripChoice) =>
  [across, down].map((side) => side.map(({ slug, uses = "" }) => `${slug}${uses}`).join(""));

describe("an entry of a strip", () => {
  it.each<[string, StripChoice, readonly [string, string]]>([
    ["is put on one side as the last", carryOn(strip, "down", patternEntry("a")), ["abc", "ba"]],
    ["is not put on a side twice", carryOn(strip, "down", patternEntry("b")), ["abc", "b"]],
    ["is taken off one side", dropFrom(strip, "across", "b"), ["ac", "b"]],
    ["moves up", moveOn(strip, "across", { slug: "c", by: -1 }), ["acb", "b"]],
    ["moves down", moveOn(strip, "across", { slug: "a", by: 1 }), ["bac", "b"]],
    ["stays at the top", moveOn(strip, "across", { slug: "a", by: -1 }), ["abc", "b"]],
    [
      "goes to the bottom and no further",
      moveOn(strip, "across", { slug: "a", by: 9 }),
      ["bca", "b"],
    ],
    ["that is not there does not move", moveOn(strip, "down", { slug: "a", by: 1 }), ["abc", "b"]],
    ["gets its uses", useOn(strip, "across", { slug: "b", uses: 7 }), ["ab7c", "b"]],
    [
      "loses its uses",
      useOn(useOn(strip, "across", { slug: "b", uses: 7 }), "across", {
        slug: "b",
        uses: undefined,
      }),
      ["abc", "b"],
    ],
  ])("%s", (_, changed, expected) => {
    expect(lists(changed)).toEqual(expected);
  });

  it("finds no place on a side that carries forty", () => {
    const across = Array.from({ length: 40 }, (_, index) => patternEntry(`p${index}`));
    const full = { ...strip, across };
    expect(carryOn(full, "across", patternEntry("d")).across).toEqual(across);
    expect(countOf(full)).toBe(41);
  });
});
