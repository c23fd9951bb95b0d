/** The demo book's content, worked out, and the fonts that it is printed with. */
import { readFileSync } from "node:fs";
import type { Notebook } from "../../src/notebook/notebook.ts";
import type { FittingPlan, Plan } from "../../src/plan/plan.ts";
import { planPattern } from "../../src/plan/plan-pattern.ts";
import { FONT_FILES, readFonts } from "../../src/print/pdf/font/print-fonts.ts";
import type { Recipe } from "../../src/recipe/recipe.ts";
import type { Strip } from "../../src/strip/strip.ts";
import { openPlanner } from "../../src/view/planner.ts";
import { demoOnAllNotebooks } from "../setup/demo-content.ts";

const FILES = new URL("../../node_modules/@fontsource/fira-sans/files/", import.meta.url);

/** The bytes of one of the book's font files. */
export function fontFile(name: string): Uint8Array {
  return new Uint8Array(readFileSync(new URL(name, FILES)));
}

/** The book's fonts. */
export const FONTS = readFonts({
  normal: FONT_FILES.normal.map(fontFile),
  bold: FONT_FILES.bold.map(fontFile),
});

export const SETTINGS = { fonts: FONTS, language: "en" } as const;

const content = await demoOnAllNotebooks();
const { notebooks, recipes, strips, book } = content;
const planner = openPlanner(content);

export { book as BOOK, notebooks as NOTEBOOKS, recipes as RECIPES };

/** A notebook by its slug. */
export function notebookOf(slug: string): Notebook {
  const found = notebooks.find((notebook) => notebook.slug === slug);
  if (!found) throw new Error(`no notebook ${slug}`);
  return found;
}

/** The plans of all patterns on a notebook, by slug. */
export function plansOf(notebook: Notebook): ReadonlyMap<string, Plan> {
  return new Map(recipes.map((recipe) => [recipe.slug, planPattern(recipe, notebook)]));
}

/** All strips of the book on a notebook. */
export function stripsOf(notebook: Notebook): readonly Strip[] {
  return strips.map(({ slug }) => stripOf(slug, notebook.slug));
}

/** A strip of the book on a notebook. */
export function stripOf(slug: string, notebook: string): Strip {
  return planner.stripOn(slug, notebook);
}

/** A pattern that fits a notebook, as it is drawn. */
export function pageOf(
  pattern: string,
  notebookSlug: string,
): { readonly recipe: Recipe; readonly plan: FittingPlan; readonly notebook: Notebook } {
  const notebook = notebookOf(notebookSlug);
  const recipe = recipes.find(({ slug }) => slug === pattern);
  if (!recipe) throw new Error(`no pattern ${pattern}`);
  const plan = planPattern(recipe, notebook);
  if (!plan.fits) throw new Error(`${pattern} does not fit ${notebookSlug}`);
  return { recipe, plan, notebook };
}

/** A pattern of a notebook's book on paper. */
export function bookEntry(plan: Plan) {
  const pages = plan.fits ? plan.pages.length : 0;
  return { title: plan.recipe.title, pages, plan: () => plan };
}
