/** What typed words may mean in a set-up: layouts, and blocks that repeat what is put into them, the likeliest first. */
import { asSentence } from "../../issue/words/say-count.ts";
import type { Recipe } from "../../recipe/recipe.ts";
import { EACH_KINDS, type SetupEntry } from "../../recipe/setup-recipe.ts";
import { PURPOSE_WORDS } from "../pattern/purpose-words.ts";
import { recipesFor, typedWords } from "../pattern/rank-recipe.ts";
import { patternOnce } from "./edit-setup.ts";

/** Something that can be put on the pages. */
export interface SetupOffer {
  readonly title: string;
  /** What it is, in a word or two. */
  readonly about: string;
  readonly entry: SetupEntry;
}

/** More are not looked through. */
const MOST = 8;

/** The offers for some words; for none, the blocks and then what a month is set up with most. */
export function setupOffers(
  text: string,
  { recipes, own }: { readonly recipes: readonly Recipe[]; readonly own: ReadonlySet<string> },
): readonly SetupOffer[] {
  const words = typedWords(text);
  const found = words.length === 0 ? usualRecipes(recipes) : recipesFor(recipes, words);
  const offers = found.map((recipe) => recipeOffer(recipe, own));
  return [...blockOffers(words), ...offers].slice(0, MOST);
}

const USUAL_PURPOSES = ["month", "week", "tracker"] as const;

/** The first two of each purpose. */
function usualRecipes(recipes: readonly Recipe[]): readonly Recipe[] {
  return USUAL_PURPOSES.flatMap((purpose) =>
    recipes.filter((recipe) => recipe.purpose === purpose).slice(0, 2),
  );
}

function recipeOffer({ slug, title, purpose }: Recipe, own: ReadonlySet<string>): SetupOffer {
  const { title: about } = PURPOSE_WORDS[purpose];
  return { title, about: own.has(slug) ? `${about}, yours` : about, entry: patternOnce(slug) };
}

/** Weeks are repeated most. They are asked for by “each” or “every”, and the unit. */
const BLOCKS = ["week", ...EACH_KINDS.filter((kind) => kind !== "week")] as const;

function blockOffers(words: readonly string[]): readonly SetupOffer[] {
  const [first, second = "", ...others] = words;
  const isAsked =
    first === undefined ||
    (others.length === 0 && ["each", "every"].some((word) => word.startsWith(first)));
  if (!isAsked) return [];
  const meant = first === undefined ? BLOCKS.slice(0, 2) : BLOCKS;
  return meant
    .filter((kind) => kind.startsWith(second))
    .map((each) => ({
      title: asSentence(`each ${each}`),
      about: "Block: repeats what you put into it",
      entry: { kind: "each", each, borders: "both", pages: [] },
    }));
}
