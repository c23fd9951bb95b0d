/** The book's content in the page: what the build checked and wrote into a script beside it. */
import type { Notebook } from "../notebook/notebook.ts";
import type { Recipe } from "../recipe/recipe.ts";
import type { StripRecipe } from "../recipe/strip-recipe.ts";

/** As the build wrote it; recipes come without their text. */
export interface CatalogueData {
  readonly notebooks: readonly Notebook[];
  readonly recipes: readonly Recipe[];
  readonly strips: readonly StripRecipe[];
}

declare global {
  interface Window {
    /** Set by `book.js`, which the build writes. */
    readonly spanbookContent?: CatalogueData;
  }
}

/** The content, ready to be looked up by slug. */
export interface Catalogue extends CatalogueData {
  readonly recipeBySlug: ReadonlyMap<string, Recipe>;
  readonly titles: ReadonlyMap<string, string>;
  readonly slugs: ReadonlySet<string>;
}

/** Throws where a page was put together without its content. */
export function openCatalogue(content: CatalogueData | undefined): Catalogue {
  if (!content) throw new Error("this page is without the book's content");
  const { recipes } = content;
  return {
    ...content,
    recipeBySlug: new Map(recipes.map((recipe) => [recipe.slug, recipe])),
    titles: new Map(recipes.map(({ slug, title }) => [slug, title])),
    slugs: new Set(recipes.map(({ slug }) => slug)),
  };
}
