import { describe, expect, it } from "vitest";
import { readStripRecipe } from "../../src/recipe/read/read-strip-recipe.ts";

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
        across: ["seed-list", "2027"],
        down: ["seed-list"],
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
    });
  });

  it("names its patterns even where something else in it is wrong", () => {
    expect(read("across: [seed-list, Seed List, ../gone]\nlanes: 99")).toMatchObject({
      ok: false,
      named: [{ slug: "seed-list" }],
    });
  });

  it("needs no more than a title and one side", () => {
    expect(read("title: Everyday\ndown: [seed-list]")).toMatchObject({
      ok: true,
      value: { across: [], lanes: 4, make: "edges", width: 30 },
    });
  });
});
