/** A pattern on a notebook: the first of its attempts that fits, or why the first one does not. */
import { type BeyondYears, isBeyondYears } from "../calendar/span.ts";
import type { Misfit } from "../issue/facts/misfit.ts";
import type { Notebook } from "../notebook/notebook.ts";
import type { Attempt, Recipe } from "../recipe/recipe.ts";
import { paperNotes } from "./explain/paper-notes.ts";
import { weekYearNotes } from "./explain/week-year-notes.ts";
import { newBudget } from "./layout/budget.ts";
import { layOutAttempt } from "./layout/lay-out-attempt.ts";
import { type DatedAttempt, datedAttempt } from "./layout/units-to-tracks.ts";
import type { Plan } from "./plan.ts";
import { nearFits } from "./repair/near-fits.ts";
import { UNDATED, type When } from "./when.ts";

/**
 * Works a recipe out for a notebook, and a dated one for a span of days, which must be of the recipe's kind. Exact, and
 * the same on every machine; it never throws for a checked recipe.
 */
export function planPattern(recipe: Recipe, notebook: Notebook, when: When = UNDATED): Plan {
  const plan = layOutPattern(recipe, notebook, when);
  if (plan.fits || plan.misfit.kind === "beyond-years") return plan;
  const { changes: near, stop } = nearFits(plan.recipe, notebook);
  return { ...plan, near, ...(stop && { stop }) };
}

/** The same without the search for changes that would make it fit, for those who do not tell them. */
export function layOutPattern(recipe: Recipe, notebook: Notebook, when: When = UNDATED): Plan {
  const budget = newBudget();
  const dated = recipe.attempts.map((attempt) => datedFor(attempt, recipe, when));
  const planned = { ...recipe, attempts: dated.map((one) => (isBeyondYears(one) ? EMPTY : one)) };
  const common = {
    pattern: recipe.slug,
    notebook: notebook.slug,
    ...daysOf(recipe, when),
    recipe: planned,
  };
  let misfit: Misfit | undefined;
  for (const [used, attempt] of dated.entries()) {
    const result = isBeyondYears(attempt)
      ? misfitOf(attempt)
      : layOutAttempt(attempt, notebook, budget);
    if (result.kind === "pages") {
      const { pages, same } = result;
      const notes = [...paperNotes(pages, notebook), ...weekYearNotes(recipe, used)];
      const passedOver = misfit && { passedOver: misfit };
      return { ...common, fits: true, used, ...passedOver, pages, same, notes };
    }
    misfit ??= result;
  }
  if (!misfit) throw new RangeError(`the recipe ${recipe.slug} has no page`);
  return { ...common, fits: false, misfit, near: [] };
}

function misfitOf({ span, needs }: BeyondYears): Misfit {
  return { kind: "beyond-years", span: span.kind, needs };
}

/** Stands for an attempt that has no days to be planned for. */
const EMPTY: Attempt = {
  kind: "page",
  page: { label: "", margin: { steps: {} }, fill: "blank", every: 1 },
};

function datedFor(attempt: Attempt, { dates }: Recipe, when: When): DatedAttempt {
  return dates ? datedAttempt(attempt, dates, when) : attempt;
}

function daysOf({ dates }: Recipe, when: When) {
  if (!dates || !when.span) return {};
  const { from, to } = when.span;
  return { dates: { from, to } };
}
