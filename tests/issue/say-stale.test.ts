/** The words for what stands there still while something that was written since is not valid. */
import { describe, expect, it } from "vitest";
import { fieldOffer } from "../../src/issue/words/say-field-issue.ts";
import { sayHeld, sayStaleDrawing } from "../../src/issue/words/say-stale.ts";

describe("what is old", () => {
  it.each([
    [1, "1 problem: the drawing still shows what was written before."],
    [3, "3 problems: the drawing still shows what was written before."],
  ])("is called so, with %i to mend", (issues, words) => {
    expect(sayStaleDrawing(issues)).toBe(words);
  });

  it("is not saved, and the field is named that has to be mended", () => {
    const expected = { kind: "whole", unit: "dots", min: 2, max: 400 } as const;
    expect(sayHeld("Dots across", { field: "dotsAcross", kind: "unsuitable", expected })).toBe(
      "Correct “Dots across” first. This needs a whole number of dots from 2 to 400.",
    );
  });
});

describe("an offer at a field", () => {
  it("is the nearest file name that would do", () => {
    expect(fieldOffer({ field: "slug", kind: "no-file-name", nearest: "my-slug" })).toEqual({
      text: "my-slug",
      words: "Make it my-slug",
    });
  });

  it.each([
    { field: "slug", kind: "no-file-name" },
    { field: "title", kind: "control-character" },
  ] as const)("is none where nothing is known to do: %j", (issue) => {
    expect(fieldOffer(issue)).toBeUndefined();
  });
});
