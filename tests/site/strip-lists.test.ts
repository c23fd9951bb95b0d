/** The two lists of a strip, and what can be done with them. */
import { describe, expect, it } from "vitest";
import { carryOn, dropFrom, moveOn, toggleCarried } from "../../site/script/fit/strip-lists.ts";
import { NO_STRIP, type StripChoice } from "../../src/view/fields/strip-fields.ts";

const strip: StripChoice = { ...NO_STRIP, across: ["a", "b", "c"], down: ["b"] };
const lists = ({ across, down }: StripChoice) => [across.join(""), down.join("")];

describe("a pattern of a strip", () => {
  it.each<[string, StripChoice, readonly [string, string]]>([
    ["is put on both sides as the least used", toggleCarried(strip, "d"), ["abcd", "bd"]],
    ["is taken off both, wherever it is", toggleCarried(strip, "b"), ["ac", ""]],
    ["is taken off both, if it is on one alone", toggleCarried(strip, "a"), ["bc", "b"]],
    ["is put on one side", carryOn(strip, "down", "a"), ["abc", "ba"]],
    ["is not put on a side twice", carryOn(strip, "down", "b"), ["abc", "b"]],
    ["is taken off one side", dropFrom(strip, "across", "b"), ["ac", "b"]],
    ["moves up", moveOn(strip, "across", { slug: "c", by: -1 }), ["acb", "b"]],
    ["moves down", moveOn(strip, "across", { slug: "a", by: 1 }), ["bac", "b"]],
    ["stays at the top", moveOn(strip, "across", { slug: "a", by: -1 }), ["abc", "b"]],
    ["stays at the bottom", moveOn(strip, "across", { slug: "c", by: 5 }), ["abc", "b"]],
    ["that is not there does not move", moveOn(strip, "down", { slug: "a", by: 1 }), ["abc", "b"]],
  ])("%s", (_, changed, expected) => {
    expect(lists(changed)).toEqual(expected);
  });

  it("finds no place on a side that carries forty", () => {
    const full = { ...strip, across: Array.from({ length: 40 }, (_, index) => `p${index}`) };
    expect(toggleCarried(full, "d").across).toEqual(full.across);
    expect(toggleCarried(full, "d").down).toEqual(["b", "d"]);
  });
});
