/** Pages that work a pattern out say of it what the book says: how it comes out, in how many lines, on how many pages. */
import { expect, it } from "vitest";
import { pairsOf } from "../../src/build/artifacts/make/page-artifacts.ts";
import { openPatternRenderer } from "../../src/build/artifacts/make/pattern-renderer.ts";
import {
  pairFacts,
  planFacts,
  planStatus,
  statusWords,
} from "../../src/view/pattern/plan-status.ts";
import { openPlanner } from "../../src/view/planner.ts";
import { demoContent } from "../setup/demo-content.ts";

/** Every so manieth pair: each pattern on one or two of the demo's eleven notebooks, each notebook with many patterns. */
const STRIDE = 7;

it("is one status on both pages", async () => {
  const content = await demoContent();
  const press = openPatternRenderer(content);
  const { planOf } = openPlanner(content);
  const pairs = pairsOf(content).filter((_, index) => index % STRIDE === 0);
  expect(new Set(pairs.map(({ pattern }) => pattern)).size).toBe(content.recipes.length);
  for (const { pattern, notebook } of pairs) {
    const page = press({ pattern, notebook });
    const plan = planOf(pattern, notebook);
    expect(statusWords(plan).state, `${pattern} ${notebook}`).toBe(planStatus(page));
    // A gallery's facts of a notebook that is none of the book's come from plans, those of the book's from their pages.
    const { recipes, notebooks } = content;
    const [meant] = recipes.find(({ slug }) => slug === pattern)?.attempts ?? [];
    const own = notebooks.find(({ slug }) => slug === notebook);
    if (!meant || !own) throw new Error(`${pattern} or ${notebook} is missing`);
    expect(planFacts(plan, own), `${pattern} ${notebook}`).toEqual(pairFacts(page, meant));
  }
});
