/** The words of the gallery's ranges follow their bounds. */
import { expect, it } from "vitest";
import { LINE_RANGES } from "../../src/view/gallery/gallery-query.ts";
import { lineWords } from "../../src/view/gallery/query-words.ts";

it("a range of strokes is called by its bounds", () => {
  expect(LINE_RANGES.map(({ name }) => lineWords(name))).toEqual([
    { label: "Up to 15", said: "up to 15 lines" },
    { label: "16 to 30", said: "16 to 30 lines" },
    { label: "More", said: "more than 30 lines" },
  ]);
});
