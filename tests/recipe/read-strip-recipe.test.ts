import { describe, expect, it } from "vitest";
import { spanText } from "../../src/calendar/write-span.ts";
import { readStripRecipe } from "../../src/recipe/read/read-strip-recipe.ts";
import { patternEntry } from "../../src/recipe/strip-recipe.ts";

const read = (keys: string) =>
  readStripRecipe({
    path: "strips/everyday.md",
    text: `---\n${keys}\n---\n\nKeep it in the book.\n`,
  });

describe("a strip", () => {
  it("is read as it is written", () => {
    const keys =
      "title: Everyday\nacross: [seed-list, 2027]\ndown: [seed-list]\nlanes: 3\nmake: fold\nwidth: 27.5";
    const place = (line: number, column: number, width: number) => ({
      file: "strips/everyday.md",
      line,
      column,
      width,
    });
    expect(read(keys)).toEqual({
      ok: true,
      value: {
        slug: "everyday",
        title: "Everyday",
        across: [patternEntry("seed-list"), patternEntry("2027")],
        down: [patternEntry("seed-list")],
        lanes: 3,
        make: "fold",
        width: 27.5,
        body: "Keep it in the book.",
      },
      named: [
        { slug: "seed-list", at: place(3, 10, 9) },
        { slug: "2027", at: place(3, 21, 4) },
        { slug: "seed-list", at: place(4, 8, 9) },
      ],
      divisions: [],
    });
  });

  it("names its patterns even where something else in it is wrong", () => {
    expect(read("across: [seed-list, Seed List, ../gone]\nlanes: 99")).toMatchObject({
      ok: false,
      named: [{ slug: "seed-list" }],
    });
  });

  it("reads patterns with uses, plain divisions and dates", () => {
    const keys = `title: Mine
dates: 2027-03/2027-05
across:
  - {pattern: seed-list, uses: 12}
  - {title: "Thirds, a gap", split: {count: 3, gap: 1}, margin: 1, uses: 2}
  - {title: Halves, split: 2, margin: {right: 3}}`;
    const reading = read(keys);
    if (!reading.ok) throw new Error("the strip is not all right");
    const { across, dates } = reading.value;
    expect(across.map(({ kind, slug, uses }) => [kind, slug, uses])).toEqual([
      ["pattern", "seed-list", 12],
      ["division", "thirds-a-gap", 2],
      ["division", "halves", undefined],
    ]);
    expect(across.slice(1)).toMatchObject([
      { title: "Thirds, a gap", margin: { start: 1, end: 1 }, split: { axis: "across" } },
      { title: "Halves", margin: { start: 0, end: 3 }, split: { gap: { min: 0, max: 0 } } },
    ]);
    expect(dates && spanText(dates)).toBe("2027-03/2027-05");
    expect(reading.named.map(({ slug }) => slug)).toEqual(["seed-list"]);
    expect(reading.divisions.map(({ slug }) => slug)).toEqual(["thirds-a-gap", "halves"]);
  });

  it.each([
    ["2027/2036", true],
    ["2027-03-01/2037-02-28", true],
    ["2027-03-01/2037-03-01", false],
    ["2028-02-29/2038-02-28", true],
    ["0001/9999", false],
  ])("has dates of ten years at most: %s", (dates, isOk) => {
    expect(read(`title: Mine\nacross: [seed-list]\ndates: ${dates}`).ok).toBe(isOk);
  });

  it("needs no more than a title and one side", () => {
    expect(read("title: Everyday\ndown: [seed-list]")).toMatchObject({
      ok: true,
      value: { across: [], lanes: 4, make: "edges", width: 30 },
    });
  });
});
