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
import { checkRuns } from "../sweep/sweep-size.ts";

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

describe("a plan of the page", () => {
  it.each(content.notebooks.map((notebook) => [notebook.slug, notebook] as const))(
    "is the build's, for every pattern on %s",
    (_, notebook) => {
      for (const recipe of content.recipes) {
        const fit = { notebook: filledIn(notebook), pattern: recipe.slug };
        expect(planJson(fitResult(fit, catalogue).plan)).toBe(
          planJson(planPattern(recipe, notebook)),
        );
      }
    },
    30_000,
  );

  it("is the build's, for every pattern on notebooks that nobody has written down", () => {
    const notebooks = fc.sample(likelyNotebook(), { seed: 70_010, numRuns: checkRuns(50) });
    let fitting = 0;
    for (const asked of notebooks) {
      const notebook = fileOf(asked);
      for (const recipe of content.recipes) {
        const { plan } = fitResult({ notebook: asked, pattern: recipe.slug }, catalogue);
        expect(planJson(plan)).toBe(planJson(planPattern(recipe, notebook)));
        if (plan.fits) fitting += 1;
      }
    }
    expect(fitting).toBeGreaterThan(notebooks.length * 6);
    expect(fitting).toBeLessThan(notebooks.length * content.recipes.length);
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
  it.each(content.strips.map((strip) => [strip.slug, strip] as const))(
    "is the build's, for %s on every notebook",
    (slug, recipe) => {
      for (const notebook of content.notebooks) {
        const strip = { ...recipe, title: "", slug: "" };
        const shown = stripResult({ notebook: filledIn(notebook), strip }, catalogue);
        expect(stripJsonText(shown.strip)).toBe(
          stripJsonText(openPlanner(content).stripOn(slug, notebook.slug)),
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
