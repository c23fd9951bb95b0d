/** The general layouts: enough of each kind, on the notebooks that most people have, in words that are soon read. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { readNotebook } from "../../src/notebook/read-notebook.ts";
import { planPattern } from "../../src/plan/plan-pattern.ts";
import { readRecipe } from "../../src/recipe/read/read-recipe.ts";
import { PURPOSES } from "../../src/recipe/recipe.ts";
import { demoText } from "../setup/demo-files.ts";
import { PROJECT } from "../setup/run-command.ts";

const FOLDER = join(PROJECT, "content/general/patterns");
const RECIPES = readdirSync(FOLDER).map((name) => {
  const path = `patterns/${name}`;
  const reading = readRecipe({ path, text: readFileSync(join(FOLDER, name), "utf8") });
  if (!reading.ok) throw new Error(`${path} has a problem`);
  return reading.value;
});

const SMALL = `---
title: 24 × 35
paper: [130, 190]
pitch: 5
dots: [24, 35]
firstDot: [5, 7.5]
---
`;
const NOTEBOOKS = [
  ["24 × 35", SMALL],
  ["A5, 26 × 38", demoText("notebooks/a5.md")],
  ["A6", demoText("notebooks/a6.md")],
  ["B5", demoText("notebooks/b5-right.md")],
  ["letter", demoText("notebooks/letter.md")],
] as const;

describe("the general layouts", () => {
  it.each(PURPOSES)("are at least eight of the purpose %s", (purpose) => {
    expect(RECIPES.filter((recipe) => recipe.purpose === purpose).length).toBeGreaterThanOrEqual(8);
  });

  it.each(NOTEBOOKS)("fit %s, each by its first page or by another", (_, text) => {
    const reading = readNotebook({ path: "notebooks/one.md", text });
    if (!reading.ok) throw new Error("the notebook has a problem");
    const misfits = RECIPES.filter((recipe) => !planPattern(recipe, reading.value).fits);
    expect(misfits.map(({ slug }) => slug)).toEqual([]);
  });

  it("have titles of their own", () => {
    const titles = RECIPES.map(({ title }) => title.toLowerCase());
    expect(titles.filter((title, index) => titles.indexOf(title) !== index)).toEqual([]);
  });

  it("say in at most 20 words a sentence, in the mean, when and how each is drawn", () => {
    const long = RECIPES.flatMap(({ slug, body }) => {
      const sentences = body.split(/[.!?:](?:\s|$)/).filter((sentence) => sentence.trim() !== "");
      const words = body.split(/\s+/).filter((word) => word !== "").length;
      return sentences.length >= 2 && words / sentences.length <= 20 ? [] : [slug];
    });
    expect(long).toEqual([]);
  });
});
