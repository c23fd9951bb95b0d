/** The fit page says of a pattern what the book says of it: fits, comes out even, or not, on every notebook of the demo. */
import { expect, it } from "vitest";
import { pairsOf } from "../../src/build/artifacts/make/page-artifacts.ts";
import { openPatternRenderer } from "../../src/build/artifacts/make/pattern-renderer.ts";
import { loadContent } from "../../src/build/content/load-content.ts";
import { planStatus, statusWords } from "../../src/view/pattern/plan-status.ts";
import { openPlanner } from "../../src/view/planner.ts";
import { PROJECT } from "../setup/run-command.ts";

it("is one status on both pages", async () => {
  const reading = await loadContent(`${PROJECT}content`);
  if (!reading.ok) throw new Error("the content has a problem");
  const press = openPatternRenderer(reading.value);
  const { planOf } = openPlanner(reading.value);
  const unlike = pairsOf(reading.value).filter(({ pattern, notebook }) => {
    const { state } = statusWords(planOf(pattern, notebook));
    return state !== planStatus(press({ pattern, notebook }));
  });
  expect(unlike).toEqual([]);
});
