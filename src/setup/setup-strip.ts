/** The one strip for all pages of a set-up. */
import { spanText } from "../calendar/write-span.ts";
import type { Notebook } from "../notebook/notebook.ts";
import { buildStrip } from "../strip/build-strip.ts";
import { MOST_USED } from "../strip/most-used.ts";
import type { Strip } from "../strip/strip.ts";
import { entryOfPlan } from "../strip/strip-entry.ts";
import { beginsPlan, type Setup } from "./setup.ts";

/**
 * Carries what adds up to most uses of its pages: a set of marks is used by each page, or spread, that has it. So every
 * plan counts by itself: left and right pages, and months of five and six rows, may have different marks. Plans come in
 * the order of their first pages.
 */
export function setupStrip(setup: Setup, notebook: Notebook): Strip {
  const { recipe, titles, plans } = setup;
  const times = plans.map(() => 0);
  for (const page of setup.pages) {
    if (page.drawn && beginsPlan(page, setup))
      times[page.drawn.plan] = (times[page.drawn.plan] ?? 0) + 1;
  }
  const entries = plans.map((plan, index) => {
    const title = titles.get(plan.pattern) ?? plan.pattern;
    return entryOfPlan(plan, { title, uses: times[index] ?? 1 });
  });
  return buildStrip({
    head: recipe,
    notebook,
    entries: { across: entries, down: entries },
    chooser: MOST_USED,
    ...(plans.some(({ dates }) => dates) && { dates: spanText(recipe.dates) }),
  });
}
