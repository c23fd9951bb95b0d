/** A set-up on a notebook: what it wants is planned for the side it lies on, and laid on one free page after another. */
import { isBeyondYears, type Span } from "../calendar/span.ts";
import type { SetupLeftOut } from "../issue/facts/setup-left-out.ts";
import type { FacingSide } from "../measure/paper-side.ts";
import type { Binding, Notebook } from "../notebook/notebook.ts";
import type { FittingPlan, Plan } from "../plan/plan.ts";
import { layOutPattern } from "../plan/plan-pattern.ts";
import type { When } from "../plan/when.ts";
import { onSide } from "../recipe/area-tree.ts";
import type { Recipe } from "../recipe/recipe.ts";
import type { SetupRecipe } from "../recipe/setup-recipe.ts";
import type { DrawnPage, LeftOutPlace, Setup, SetupPage } from "./setup.ts";
import { type WantedPage, wantedPages } from "./wanted-pages.ts";

export interface SetupQuestion {
  readonly setup: SetupRecipe;
  readonly notebook: Notebook;
  /** How weeks are counted and what days are called. */
  readonly when: When;
  /** A pattern by its slug. Throws where there is none: names are checked before. */
  readonly recipe: (slug: string) => Recipe;
  /** Plans of the same patterns, days' names and notebook, as an earlier set-up left them: those that are new are added. */
  readonly known?: Map<string, Plan>;
}

/** The set-up, page by page. It must have passed the check of set-ups, which counts its pages. */
export function planSetup(question: SetupQuestion): Setup {
  const steps = setupSteps(question);
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
  }
}

/** The same in steps, a page or a spread each, for whoever has something else to do between them. */
export function* setupSteps(question: SetupQuestion): Generator<undefined, Setup> {
  const { setup, notebook, when, recipe, known = new Map() } = question;
  const { slug, title, binding } = notebook;
  const paging: Paging = {
    question,
    shelf: openPlans(notebook, when, known),
    pages: [],
    titles: new Map(),
    leftOut: new Map(),
  };
  for (const wanted of wantedPages(setup, { recipe, rule: when.rule })) {
    if (!isBeyondYears(wanted)) takePages(paging, wanted);
    yield;
  }
  const { pages, titles, leftOut, shelf } = paging;
  return {
    recipe: setup,
    notebook: { slug, title, binding },
    ...{ pages, titles, plans: shelf.plans, leftOut: [...leftOut.values()] },
  };
}

/** Odd pages lie at the right; in a notebook bound at the right, at the left (common practice, no source). */
export function sideOfPage(number: number, binding: Binding): FacingSide {
  return (number % 2 === 1) === (binding !== "right") ? "right" : "left";
}

/** What grows while pages are laid down. */
interface Paging {
  readonly question: SetupQuestion;
  readonly shelf: ReturnType<typeof openPlans>;
  readonly pages: SetupPage[];
  readonly titles: Map<string, string>;
  /** By pattern and first day, each once. */
  readonly leftOut: Map<string, LeftOutPlace>;
}

/** Lays a page or a spread down, or leaves it out. A spread takes an even page and the odd one after it. */
function takePages(paging: Paging, { recipe, span, ...place }: WantedPage): void {
  const { shelf, titles } = paging;
  const { slug, title } = recipe;
  const plan = shelf.planOn(recipe, nextPage(paging).side, span);
  if (!plan.fits) {
    leaveOut(paging, plan, title);
    return;
  }
  const count = plan.pages.length;
  if (count === 2 && nextPage(paging).number % 2 === 1) fillPage(paging);
  titles.set(slug, title);
  const dates = span && { dates: { from: span.from, to: span.to } };
  const drawn = { pattern: slug, ...dates, plan: shelf.indexOf(plan), ...place };
  for (let half = 0; half < count; half++) putPage(paging, drawn, count);
}

/** The page before a spread: filled where there is something for it that fits. */
function fillPage(paging: Paging): void {
  const { question, shelf, titles } = paging;
  const { setup, recipe } = question;
  const filling = setup.fill === undefined ? undefined : recipe(setup.fill);
  const plan = filling && shelf.planOn(filling, nextPage(paging).side);
  if (filling && plan?.fits && plan.pages.length === 1) {
    titles.set(filling.slug, filling.title);
    putPage(paging, { pattern: filling.slug, plan: shelf.indexOf(plan) });
  } else {
    if (filling && plan) leaveOut(paging, plan, filling.title);
    putPage(paging);
  }
}

function nextPage({ question, pages }: Paging): Pick<SetupPage, "number" | "side"> {
  const number = question.setup.first + pages.length;
  return { number, side: sideOfPage(number, question.notebook.binding) };
}

/** Of a plan with so many pages the one that lies on the next page's side. */
function putPage(paging: Paging, drawn?: Omit<DrawnPage, "page">, count = 1): void {
  const next = nextPage(paging);
  const page = count === 2 && next.side === "right" ? 1 : 0;
  paging.pages.push({ ...next, ...(drawn && { drawn: { ...drawn, page } }) });
}

/** What fits and is left out should have filled a page. */
function leaveOut({ leftOut, titles }: Paging, plan: Plan, title: string): void {
  const { pattern, dates } = plan;
  const key = `${pattern} ${dates?.from ?? ""}`;
  if (leftOut.has(key)) return;
  titles.set(pattern, title);
  const why: SetupLeftOut = plan.fits
    ? { kind: "fill-takes-spread" }
    : { kind: "misfit", misfit: plan.misfit };
  leftOut.set(key, { pattern, ...(dates && { dates }), why, plan });
}

/** Plans of one notebook, each worked out once; a plan has a number from the first page that it is drawn on. */
function openPlans(notebook: Notebook, when: When, known: Map<string, Plan>) {
  const numbers = new Map<string, number>();
  const plans: FittingPlan[] = [];
  return {
    plans,
    planOn: (recipe: Recipe, side: FacingSide, span?: Span): Plan => {
      const key = `${recipe.slug} ${side} ${span?.from ?? ""}`;
      const plan =
        known.get(key) ??
        layOutPattern(onSide(recipe, side), notebook, { ...when, ...(span && { span }) });
      known.set(key, plan);
      return plan;
    },
    indexOf: (plan: FittingPlan): number => {
      const sides = plan.pages.map(({ side }) => side);
      const key = `${plan.pattern} ${plan.dates?.from ?? ""} ${sides.join()}`;
      const number = numbers.get(key) ?? plans.push(plan) - 1;
      numbers.set(key, number);
      return number;
    },
  };
}
