/** The fit page says what the engine says: for every pattern on every notebook, and on notebooks that nobody has written down. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import type { Page } from "playwright-core";
import { beforeAll, expect, inject, it } from "vitest";
import { planJson } from "../../src/plan/plan-json.ts";
import { planPattern } from "../../src/plan/plan-pattern.ts";
import { plansInPage } from "../browser/plans-in-page.ts";
import { onDisk, openTestBrowser } from "../browser/test-browser.ts";
import { likelyNotebook } from "../random/any-notebook.ts";
import { bookContent } from "../setup/demo-content.ts";
import { SWEEP_SEED, sweepRuns, sweepSample } from "./sweep-size.ts";

const LONG = 1_800_000;

const book = inject("book");
const content = await bookContent(inject("content"));
const { notebooks, recipes } = content;

const testBrowser = openTestBrowser();
let page: Page;
beforeAll(async () => {
  page = await testBrowser.browser.newPage();
  await page.goto(onDisk("fit/index.html"));
});

it(
  "is the build's plan.json, for every pattern on every notebook",
  async () => {
    for (const notebook of sweepSample(notebooks)) {
      const plans = await plansInPage(page, notebook);
      expect(Object.keys(plans)).toHaveLength(recipes.length);
      for (const [pattern, text] of Object.entries(plans)) {
        const path = join(book, `patterns/${pattern}/${notebook.slug}/plan.json`);
        expect(text).toBe(readFileSync(path, "utf8"));
      }
    }
  },
  LONG,
);

it(
  "is what the engine writes, for every pattern on 50 notebooks drawn at random",
  async () => {
    const runs = { seed: SWEEP_SEED, numRuns: sweepRuns(50) };
    for (const notebook of fc.sample(likelyNotebook(), runs)) {
      const plans = await plansInPage(page, notebook);
      for (const recipe of recipes)
        expect(plans[recipe.slug]).toBe(planJson(planPattern(recipe, notebook)));
    }
  },
  LONG,
);
