/** The part that plans set-ups only to count what they use: loaded where somebody looks back on them. */
import { usesScene } from "../../../../src/draw/figure/uses-scene.ts";
import type { Plan } from "../../../../src/plan/plan.ts";
import { setupSteps } from "../../../../src/setup/plan-setup.ts";
import { type CountedSetup, usesByMonth } from "../../../../src/setup/uses-by-month.ts";
import { usesView } from "../../../../src/view/kept/uses-view.ts";
import { setupResult } from "../../../../src/view/setup/setup-result.ts";
import type { UsesCounted, UsesPart, UsesQuestion } from "./uses-part.ts";

function* count({ setups, own, catalogue }: UsesQuestion): Generator<number, UsesCounted> {
  const counted: CountedSetup[] = [];
  const uncounted: string[] = [];
  /** Set-ups by one calendar have many plans in common. */
  const plans = new Map<string, Map<string, Plan>>();
  const recipes = own.map(({ recipe }) => recipe);
  for (const [index, { title, asked, drawn }] of setups.entries()) {
    yield index;
    const { question } = setupResult(asked, { catalogue, own: recipes });
    if (!question) {
      uncounted.push(title);
      continue;
    }
    const key = JSON.stringify(asked.calendar);
    const known = plans.get(key) ?? new Map<string, Plan>();
    plans.set(key, known);
    const steps = setupSteps({ ...question, known });
    let step = steps.next();
    for (; !step.done; step = steps.next()) yield index;
    counted.push({ setup: step.value, drawn });
  }
  const view = usesView(usesByMonth(counted), counted.length, own);
  return { ...(view && { view }), uncounted };
}

const part: UsesPart = { count, scene: usesScene };

Object.assign(window, { spanbookUses: part });
