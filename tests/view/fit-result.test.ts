/** What the page works out is what the build writes, byte for byte. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Notebook } from "../../src/notebook/notebook.ts";
import { readNotebook } from "../../src/notebook/read-notebook.ts";
import { writeNotebook } from "../../src/notebook/write-notebook.ts";
import { planJson } from "../../src/plan/plan-json.ts";
import { planPattern } from "../../src/plan/plan-pattern.ts";
import { stripJsonText } from "../../src/strip/strip-json.ts";
import { fieldsOf } from "../../src/view/fields/notebook-fields.ts";
import { readFields } from "../../src/view/fields/read-notebook-fields.ts";
import { NO_STRIP } from "../../src/view/fields/strip-fields.ts";
import { fitResult } from "../../src/view/fit-result.ts";
import { openPlanner } from "../../src/view/planner.ts";
import { stripResult } from "../../src/view/strip/strip-result.ts";
import { likelyNotebook } from "../random/any-notebook.ts";
import { demoCatalogue } from "../setup/demo-catalogue.ts";
import { checkRuns, checkSample } from "../sweep/sweep-size.ts";

const { content, catalogue } = await demoCatalogue();

/** A notebook as someone would fill it in, on the page. */
function filledIn(notebook: Notebook): Notebook {
  const reading = readFields({ ...fieldsOf(notebook), title: "", slug: "" });
  if (!reading.ok) throw new Error(`${notebook.slug} cannot be filled in`);
  return reading.value;
}

describe("the book in the page", () => {
  /** Where a margin or `{moon}` is written is told of files alone. */
  const withoutPlaces = (value: unknown): unknown =>
    JSON.parse(
      JSON.stringify(value, (key, one) => (key === "place" || key === "at" ? undefined : one)),
    );

  it("is the book that was read, but for texts, tags and places", () => {
    const drawn = content.recipes.map((recipe) => ({ ...recipe, tags: [], body: "" }));
    expect(withoutPlaces(catalogue.recipes)).toEqual(withoutPlaces(drawn));
    expect(JSON.stringify(catalogue.recipes)).not.toMatch(/"place"|"at"/);
    expect(catalogue.notebooks).toEqual(content.notebooks.map((one) => ({ ...one, body: "" })));
    expect(catalogue.recipes.length).toBeGreaterThan(40);
  });
});

/** Each notebook with a quarter of the patterns, and each pattern on some of the notebooks; a sweep has all. */
function somePairs(notebooks: readonly Notebook[]) {
  const pairs = notebooks.flatMap((notebook) =>
    content.recipes.map((recipe) => ({ notebook, recipe })),
  );
  const some = checkSample(pairs);
  if (new Set(some.map(({ recipe }) => recipe)).size < content.recipes.length)
    throw new Error("the sample leaves patterns out");
  return some;
}

const PAIRS = somePairs(content.notebooks);

describe("a plan of the page", () => {
  it.each(content.notebooks.map((notebook) => [notebook.slug, notebook] as const))(
    "is the build's, for every pattern on %s",
    (_, notebook) => {
      const filled = filledIn(notebook);
      for (const { recipe } of PAIRS.filter((pair) => pair.notebook === notebook)) {
        const fit = { notebook: filled, pattern: recipe.slug };
        expect(planJson(fitResult(fit, catalogue).plan)).toBe(
          planJson(planPattern(recipe, notebook)),
        );
      }
    },
    30_000,
  );

  it("is the build's, for every pattern on notebooks that nobody has written down", () => {
    const notebooks = fc.sample(likelyNotebook(), { seed: 70_010, numRuns: checkRuns(50) });
    const pairs = somePairs(notebooks);
    let fitting = 0;
    for (const { notebook, recipe } of pairs) {
      const { plan } = fitResult({ notebook, pattern: recipe.slug }, catalogue);
      expect(planJson(plan)).toBe(planJson(planPattern(recipe, fileOf(notebook))));
      if (plan.fits) fitting += 1;
    }
    expect(fitting).toBeGreaterThan(pairs.length / 10);
    expect(fitting).toBeLessThan(pairs.length);
  });
});

/** The notebook as the build reads it from its file. */
function fileOf(notebook: Notebook): Notebook {
  const text = writeNotebook(notebook);
  const reading = readNotebook({ path: `notebooks/${notebook.slug}.md`, text });
  if (!reading.ok) throw new Error(`${notebook.slug} does not read back`);
  return reading.value;
}

describe("a strip of the page", () => {
  const planner = openPlanner(content);

  it.each(content.strips.map((strip) => [strip.slug, strip] as const))(
    "is the build's, for %s on every notebook",
    (slug, recipe) => {
      for (const notebook of content.notebooks) {
        const strip = { ...recipe, title: "", slug: "" };
        const shown = stripResult({ notebook: filledIn(notebook), strip }, catalogue);
        expect(stripJsonText(shown.strip)).toBe(
          stripJsonText(planner.stripOn(slug, notebook.slug)),
        );
      }
    },
    30_000,
  );

  it("is a plain ruler while nothing lies on it", () => {
    const [notebook] = content.notebooks;
    if (!notebook) throw new Error("the demo book has no notebook");
    const { strip, isDated } = stripResult({ notebook, strip: NO_STRIP }, catalogue);
    expect(strip.sides.map(({ lanes, leftOut }) => [lanes, leftOut])).toEqual([
      [[], []],
      [[], []],
    ]);
    expect([strip.slug, isDated]).toEqual(["my-strip", false]);
  });
});
