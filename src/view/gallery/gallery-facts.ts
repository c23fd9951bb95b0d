/** What the gallery sieves and sorts by: each pattern once, and how it comes out on every notebook, in little room. */
import type { Purpose } from "../../recipe/recipe.ts";
import type { CatalogueData } from "../catalogue.ts";
import type { Cards } from "../pattern/pattern-cards.ts";
import type { PlanStatus } from "../pattern/plan-status.ts";

/** Read by the page's script as `window.spanbookFacts`. */
export interface GalleryFacts {
  /** Slugs, in the book's order. */
  readonly notebooks: readonly string[];
  /** In the book's order. */
  readonly patterns: readonly GalleryPattern[];
}

export interface GalleryPattern {
  readonly slug: string;
  readonly title: string;
  readonly purpose: Purpose;
  readonly tags: readonly string[];
  /** A letter of `STATE_LETTERS` for each notebook. */
  readonly states: string;
  /** 1 or 2 for each notebook. */
  readonly pages: string;
  /** Strokes of the pen on each notebook; 0 where it does not fit. */
  readonly lines: readonly number[];
}

export const STATE_LETTERS: Readonly<Record<PlanStatus, string>> = {
  even: "e",
  over: "o",
  misfit: "m",
};

/** The facts of a whole book. */
export function galleryFacts({ notebooks, recipes }: CatalogueData, cards: Cards): GalleryFacts {
  const slugs = notebooks.map(({ slug }) => slug);
  return {
    notebooks: slugs,
    patterns: recipes.map(({ slug, title, purpose, tags }) => {
      const facts = cards.factsOf(slug);
      const each = slugs.flatMap((notebook) => facts.get(notebook) ?? []);
      return {
        slug,
        title,
        purpose,
        tags,
        states: each.map(({ state }) => STATE_LETTERS[state]).join(""),
        pages: each.map(({ pages }) => pages).join(""),
        lines: each.map(({ lines }) => lines),
      };
    }),
  };
}
