/** A recipe as somebody writes it: read, planned on a notebook for some days, drawn; or every problem told at its place. */
import fc from "fast-check";
import { planRecipe } from "../../site/script/recipe/plan-recipe.ts";
import type { Notebook } from "../../src/notebook/notebook.ts";
import { drawOrder } from "../../src/plan/order/draw-order.ts";
import type { Plan } from "../../src/plan/plan.ts";
import { planJson } from "../../src/plan/plan-json.ts";
import { layOutPattern, planPattern } from "../../src/plan/plan-pattern.ts";
import { readRecipe } from "../../src/recipe/read/read-recipe.ts";
import type { Recipe } from "../../src/recipe/recipe.ts";
import { retyped } from "../../src/recipe/retype.ts";
import { packText, unpackText } from "../../src/view/address/recipe-address.ts";
import type { DatesChoice } from "../../src/view/fields/span-fields.ts";
import { anyDates } from "../random/any-dates.ts";
import { datedTexts, wildFile } from "../random/wild-file.ts";
import { promiseDrawn, promisePlan } from "./plan-promises.ts";
import { promise, promiseSame, promiseTold, type Seen } from "./promises.ts";
import type { Sources } from "./sources.ts";

export function recipeKind({ catalogue, slugs, texts, notebooks }: Sources) {
  const text = wildFile({
    owner: "recipe",
    texts: fc.oneof(texts.patterns, datedTexts()),
    slugs,
  });
  const path = "patterns/recipe.md";

  function attempt({ text, notebook, dates }: Case, seen: Seen): void {
    const draft = { notebook, slug: "", text, dates };
    const result = seen.run(() => planRecipe(draft, { readRecipe }, catalogue));
    promiseKeptAsItIs(text);
    if (!result.ok) {
      seen.depth("refused");
      promiseTold(result.issues, { path, text }, seen);
      return;
    }
    const { plan, recipe } = result;
    seen.depth(plan.fits ? "fits" : "misfit");
    promisePlan(plan, seen);
    promiseDrawn(plan, result.notebook, seen);
    if (plan.fits) for (const page of plan.pages) seen.run(() => drawOrder(page, result.notebook));
    // What a dated one was planned as has its days written out.
    if (!recipe.dates) promisePlannedAgain(plan, recipe, result.notebook);
    promiseRetyped(text);
  }

  return {
    name: "recipes",
    cases: fc.record({ text, notebook: notebooks, dates: anyDates() }),
    attempt,
  };
}

interface Case {
  readonly text: string;
  readonly notebook: Notebook;
  readonly dates: DatesChoice;
}

function promisePlannedAgain(plan: Plan, recipe: Recipe, notebook: Notebook): void {
  const again = planPattern(structuredClone(recipe), structuredClone(notebook));
  promiseSame(planJson(again), planJson(plan), "other bytes for the same");
  const laid = layOutPattern(recipe, notebook);
  promise(laid.fits === plan.fits, "fits only where changes are not sought");
}

function promiseKeptAsItIs(text: string): void {
  const isLarge = text.length * 3 > 256 * 1024;
  if (/\p{Cs}/u.test(text) || isLarge) return;
  promise(unpackText(packText(text)) === text, "a text that does not come out as it went in");
}

/** Another title, and nothing else. */
function promiseRetyped(text: string): void {
  const title = "Of another name";
  const file = { path: "patterns/recipe.md", text };
  const [before, after] = [
    readRecipe(file),
    readRecipe({ ...file, text: retyped(text, { title }) }),
  ];
  promise(before.ok && after.ok, "a retyped title spoils the file", after);
  promise(after.value.title === title, "a title that is not retyped", after.value.title);
  const strip = ({ title: _, ...rest }: typeof before.value) => JSON.stringify(rest, withoutPlaces);
  promise(strip(before.value) === strip(after.value), "retyping changes more than the title");
}

function withoutPlaces(key: string, value: unknown): unknown {
  return /^at$|[pP]lace$/.test(key) ? undefined : value;
}
