/** Files that an author meant as content and put where nothing is read: each is told, and where it belongs. */
import { describe, expect, it } from "vitest";
import { loadContent } from "../../src/book/content/load-content.ts";
import { sayProblem } from "../../src/problem/say/say-problem.ts";
import { TINY, writeContent } from "./write-content.ts";

const RECIPE = TINY["patterns/halves.md"] ?? "";

async function toldAbout(files: Readonly<Record<string, string>>): Promise<readonly string[]> {
  const reading = await loadContent(writeContent({ ...TINY, ...files }));
  if (reading.ok) return [];
  return reading.problems.map((problem) => {
    const { sentence, hint } = sayProblem(problem);
    return `${problem.at.file}: ${sentence} ${hint ?? ""}`;
  });
}

const into = (home: string) =>
  `This folder is not read. Move its files into \`${home}\` itself: only what lies there is read.`;

describe("what lies where nothing is read", () => {
  it.each([
    ["patterns/weeks/long.md", `patterns/weeks: ${into("patterns")}`],
    ["notebooks/old/a4.md", `notebooks/old: ${into("notebooks")}`],
    ["pattern/long.md", `pattern: ${into("patterns")}`],
    ["Patterns/long.md", `Patterns: ${into("patterns")}`],
    ["patters/long.md", `patters: ${into("patterns")}`],
    ["notebook/a4.yaml", `notebook: ${into("notebooks")}`],
    ["strip/all.md", `strip: ${into("strips")}`],
    [
      "long.md",
      "long.md: This file is not read. Move it into `patterns`, `notebooks` or `strips`, by what it describes.",
    ],
  ])("%s is told", async (path, told) => {
    expect(await toldAbout({ [path]: RECIPE })).toEqual([told]);
  });

  it("is told all at once, with what else is wrong", async () => {
    const told = await toldAbout({
      "patterns/weeks/long.md": RECIPE,
      "pattern/long.md": RECIPE,
      "patterns/halves.md": RECIPE.replace("count: 2", "colum: 2"),
    });
    expect(told).toHaveLength(3);
    expect(told.filter((line) => line.includes("is not read"))).toHaveLength(2);
  });

  it.each([
    ["patterns/pictures/shed.jpg", "a picture"],
    ["patterns/.trash/long.md", RECIPE],
    [".obsolete/long.md", RECIPE],
    ["patterns/long.md~", RECIPE],
    ["notes/minutes.md", RECIPE],
    ["drafts/long.md", RECIPE],
    ["README.md", "# How we keep this book\n"],
  ])("%s is nobody's business", async (path, text) => {
    expect(await toldAbout({ [path]: text })).toEqual([]);
  });
});
