/** A pattern on a notebook: the first of its attempts that fits, or why the first one does not. */
import { isBeyondYears } from "../calendar/span.ts";
import type { Misfit } from "../issue/facts/misfit.ts";
import type { Notebook } from "../notebook/notebook.ts";
import type { Attempt, Recipe } from "../recipe/recipe.ts";
import { paperNotes } from "./explain/paper-notes.ts";
import { weekYearNotes } from "./explain/week-year-notes.ts";
import { newBudget } from "./layout/budget.ts";
import { layOutAttempt } from "./layout/lay-out-attempt.ts";
import { type DatedAttempt, datedAttempt } from "./layout/units-to-tracks.ts";
import type { MisfitPlan, Plan } from "./plan.ts";
import { nearFits } from "./repair/near-fits.ts";
import { UNDATED, type When } from "./when.ts";

/**
 * Works a recipe out for a notebook, and a dated one for a span of days, which must be of the recipe's kind. Exact, and
 * the same on every machine; it never throws for a checked recipe.
 */
export function planPattern(recipe: Recipe, notebook: Notebook, when: When = UNDATED): Plan {
  const names = { pattern: recipe.slug, notebook: notebook.slug, ...daysOf(recipe, when) };
  const budget = newBudget();
  const attempts = recipe.attempts.map((attempt) => datedFor(attempt, recipe, when));
  let first: Pick<MisfitPlan, "misfit" | "attempt"> | undefined;
  for (const [used, attempt] of attempts.entries()) {
    if (isBeyondYears(attempt)) {
      const { span, needs } = attempt;
      const misfit: Misfit = { kind: "beyond-years", span: span.kind, needs };
      first ??= { misfit, attempt: EMPTY };
      continue;
    }
    const result = layOutAttempt(attempt, notebook, budget);
    if (result.kind === "pages") {
      const { pages, same } = result;
      const notes = [...paperNotes(pages, notebook), ...weekYearNotes(recipe, used)];
      const passedOver = first && { passedOver: first.misfit };
      return { ...names, fits: true, used, ...passedOver, attempt, pages, same, notes };
    }
    first ??= { misfit: result, attempt };
  }
  if (!first) throw new RangeError(`the recipe ${recipe.slug} has no page`);
  const tried = attempts.map((attempt) => (isBeyondYears(attempt) ? EMPTY : attempt));
  const near = first.misfit.kind === "beyond-years" ? [] : nearFits(tried, notebook);
  return { ...names, fits: false, ...first, near };
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
