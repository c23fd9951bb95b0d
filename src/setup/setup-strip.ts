/** The one strip for all pages of a set-up. */
import { spanText } from "../calendar/write-span.ts";
import type { Notebook } from "../notebook/notebook.ts";
import { buildStrip } from "../strip/build-strip.ts";
import { MOST_USED } from "../strip/most-used.ts";
import type { Strip } from "../strip/strip.ts";
import type { PlanCase, SideEntry } from "../strip/strip-entry.ts";
import { beginsPlan, type Setup } from "./setup.ts";

/**
 * Carries what adds up to most uses of its pages: a set of marks is used by each page, or spread, that has it. So every
 * plan counts by itself: left and right pages, and months of five and six rows, may have different marks. Plans come in
 * the order of their first pages.
 */
export function setupStrip(setup: Setup, notebook: Notebook): Strip {
  const { recipe, titles, plans, leftOut } = setup;
  const times = plans.map(() => 0);
  for (const page of setup.pages) {
    if (page.drawn && beginsPlan(page, setup))
      times[page.drawn.plan] = (times[page.drawn.plan] ?? 0) + 1;
  }
  const drawn = plans.map((plan, index): SideEntry => {
    const { pattern: slug } = plan;
    const isFirst = plans.findIndex(({ pattern }) => pattern === slug) === index;
    const cases = [{ plan, spans: [] }, ...(isFirst ? misfitsOf(setup, slug) : [])];
    return { slug, title: titles.get(slug) ?? slug, uses: times[index] ?? 1, cases };
  });
  const known = new Set(plans.map(({ pattern }) => pattern));
  const slugs = new Set(leftOut.flatMap(({ pattern, plan }) => (plan.fits ? [] : pattern)));
  const others = [...slugs]
    .filter((slug) => !known.has(slug))
    .map((slug): SideEntry => {
      return { slug, title: titles.get(slug) ?? slug, cases: misfitsOf(setup, slug) };
    });
  const entries = [...drawn, ...others];
  return buildStrip({
    head: recipe,
    notebook,
    entries: { across: entries, down: entries },
    chooser: MOST_USED,
    ...(plans.some(({ dates }) => dates) && { dates: spanText(recipe.dates) }),
  });
}

/** What of a pattern does not fit, to be told beside the strip with its days. */
function misfitsOf({ leftOut }: Setup, slug: string): readonly PlanCase[] {
  return leftOut
    .filter(({ pattern, plan }) => pattern === slug && !plan.fits)
    .map(({ plan, dates }) => ({ plan, spans: dates ? [dates] : [] }));
}
