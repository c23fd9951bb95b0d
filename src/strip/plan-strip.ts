/** A strip's recipe on a notebook: its patterns and plain divisions planned, and chosen by the rule that its list asks for. */
import { spanText } from "../calendar/write-span.ts";
import type { Axis } from "../measure/axis.ts";
import type { Notebook } from "../notebook/notebook.ts";
import { type Budget, newBudget } from "../plan/layout/budget.ts";
import type { When } from "../plan/when.ts";
import type { Recipe } from "../recipe/recipe.ts";
import { isByUse, patternsOf, type StripEntry, type StripRecipe } from "../recipe/strip-recipe.ts";
import { buildStrip } from "./build-strip.ts";
import { FIRST_COME } from "./lay-lanes.ts";
import { MOST_USED } from "./most-used.ts";
import { planCases } from "./plan-cases.ts";
import { planDivision } from "./plan-division.ts";
import type { Strip } from "./strip.ts";
import type { PlanCase, SideEntry } from "./strip-entry.ts";

export interface PlanStripQuestion {
  readonly recipe: StripRecipe;
  readonly notebook: Notebook;
  /** By slug; throws for a pattern that there is none of: readers refuse such recipes before. */
  readonly recipeOf: (slug: string) => Recipe;
  /** How weeks are counted and days are called. */
  readonly when: When;
}

/** The strip; what does not fit is said beside it. */
export function planStrip(question: PlanStripQuestion): Strip {
  const { recipe, notebook, recipeOf, when } = question;
  const { dates: days } = recipe;
  const slugs = patternsOf(recipe);
  const cases = new Map(
    slugs.map((slug) => [slug, planCases(recipeOf(slug), notebook, { when, days })]),
  );
  // All divisions of a strip together may take no more work than one page.
  const planning = { notebook, recipeOf, cases, budget: newBudget() };
  const isDated = slugs.some((slug) => recipeOf(slug).dates !== undefined);
  return buildStrip({
    head: recipe,
    notebook,
    entries: {
      across: recipe.across.map((entry) => sideEntry(entry, "across", planning)),
      down: recipe.down.map((entry) => sideEntry(entry, "down", planning)),
    },
    chooser: isByUse(recipe) ? MOST_USED : FIRST_COME,
    ...(days && isDated ? { dates: spanText(days) } : {}),
  });
}

interface Planning {
  readonly notebook: Notebook;
  readonly recipeOf: (slug: string) => Recipe;
  readonly cases: ReadonlyMap<string, readonly PlanCase[]>;
  readonly budget: Budget;
}

function sideEntry(entry: StripEntry, axis: Axis, planning: Planning): SideEntry {
  const { slug, uses } = entry;
  const counted = uses === undefined ? {} : { uses };
  if (entry.kind === "pattern") {
    const { title } = planning.recipeOf(slug);
    return { slug, title, ...counted, cases: planning.cases.get(slug) ?? [] };
  }
  const plan = planDivision(entry, axis, planning);
  return { slug, title: entry.title, ...counted, isPlain: true, cases: [{ plan, spans: [] }] };
}
