/** A book's content, looked up by slug: the same in the build and in the page. */
import type { Notebook } from "../notebook/notebook.ts";
import { UNDATED, type When } from "../plan/when.ts";
import type { Recipe } from "../recipe/recipe.ts";
import type { SetupRecipe } from "../recipe/setup-recipe.ts";
import type { StripRecipe } from "../recipe/strip-recipe.ts";

/** What a book is made of; in the page recipes come without their text. */
export interface CatalogueData {
  readonly notebooks: readonly Notebook[];
  readonly recipes: readonly Recipe[];
  /** Patterns that have no page in the book, but strips carry them or set-ups draw them. */
  readonly unlisted?: readonly Recipe[];
  readonly strips: readonly StripRecipe[];
  /** Left out where nobody draws them. */
  readonly setups?: readonly SetupRecipe[];
  /** How the book counts weeks and calls its days; left out: as ISO 8601 has them, in English. */
  readonly when?: When;
  /** How many minutes its clock is ahead of UTC; left out: no pattern asks for the moon. */
  readonly utcOffset?: number;
}

/** The content, ready to be looked up. What is asked for by slug must be there: names are checked before. */
export interface Catalogue extends CatalogueData {
  /** Throws a RangeError where there is none; `recipe` also finds those that only strips carry. */
  readonly recipe: (slug: string) => Recipe;
  readonly notebook: (slug: string) => Notebook;
  readonly strip: (slug: string) => StripRecipe;
  readonly setup: (slug: string) => SetupRecipe;
  readonly when: When;
  /** Of the recipes that have pages. */
  readonly slugs: ReadonlySet<string>;
  /** Of all recipes that a strip can carry. */
  readonly carried: ReadonlySet<string>;
  readonly titles: ReadonlyMap<string, string>;
}

/** Throws where a page was put together without its content. */
export function openCatalogue(content: CatalogueData | undefined): Catalogue {
  if (!content) throw new Error("this page is without the book's content");
  const { recipes, unlisted = [], notebooks, strips, setups = [], when = UNDATED } = content;
  return {
    ...content,
    when,
    recipe: bySlug([...recipes, ...unlisted]),
    notebook: bySlug(notebooks),
    strip: bySlug(strips),
    setup: bySlug(setups),
    slugs: new Set(recipes.map(({ slug }) => slug)),
    carried: new Set([...recipes, ...unlisted].map(({ slug }) => slug)),
    titles: new Map(recipes.map(({ slug, title }) => [slug, title])),
  };
}

function bySlug<Entry extends { readonly slug: string }>(
  entries: readonly Entry[],
): (slug: string) => Entry {
  const known = new Map(entries.map((entry) => [entry.slug, entry]));
  return (slug) => {
    const entry = known.get(slug);
    if (!entry) throw new RangeError(`the book has no ${slug}`);
    return entry;
  };
}
