/** The fit page says of a pattern what the book says of it: fits, with nothing left over, or not. */
import { expect, it } from "vitest";
import { pairsOf } from "../../src/build/artifacts/make/page-artifacts.ts";
import { openPatternRenderer } from "../../src/build/artifacts/make/pattern-renderer.ts";
import { loadContent } from "../../src/build/content/load-content.ts";
import { planStatus, statusWords } from "../../src/view/pattern/plan-status.ts";
import { openPlanner } from "../../src/view/planner.ts";
import { PROJECT } from "../setup/run-command.ts";

/** Every so manieth pair: each pattern on one or two of the demo's eleven notebooks, each notebook with many patterns. */
const STRIDE = 7;

it("is one status on both pages", async () => {
  const reading = await loadContent(`${PROJECT}content`);
  if (!reading.ok) throw new Error("the content has a problem");
  const press = openPatternRenderer(reading.value);
  const { planOf } = openPlanner(reading.value);
  const pairs = pairsOf(reading.value).filter((_, index) => index % STRIDE === 0);
  expect(new Set(pairs.map(({ pattern }) => pattern)).size).toBe(reading.value.recipes.length);
  const unlike = pairs.filter(({ pattern, notebook }) => {
    const { state } = statusWords(planOf(pattern, notebook));
    return state !== planStatus(press({ pattern, notebook }));
  });
  expect(unlike).toEqual([]);
});
