/** What typed words may mean in a set-up: layouts, and blocks that repeat what is put into them, the likeliest first. */
import { SPAN_KINDS, type SpanKind } from "../../calendar/span.ts";
import { asSentence } from "../../issue/words/say-count.ts";
import type { Recipe } from "../../recipe/recipe.ts";
import { EACH_KINDS, type EachKind, type SetupEntry } from "../../recipe/setup-recipe.ts";
import { PURPOSE_WORDS } from "../pattern/purpose-words.ts";
import { recipesMeant, typedWords } from "../pattern/rank-recipe.ts";
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

export interface OfferSources {
  readonly recipes: readonly Recipe[];
  /** The names of those that are the keeper's. */
  readonly own: ReadonlySet<string>;
  /** What the block is repeated for that something is to be put into. */
  readonly within?: EachKind | undefined;
  /** Places of the recipes that the gallery's search has found for the words, the best first. */
  readonly found?: readonly number[] | undefined;
}

/**
 * The offers for some words; for none, the blocks and then what a month is set up with most. Into a block goes no other
 * block from here, and nothing for more days than it has.
 */
export function setupOffers(
  text: string,
  { recipes, own, within, found }: OfferSources,
): readonly SetupOffer[] {
  const words = typedWords(text);
  const isFitting = ({ dates }: Recipe) => isWithin(dates?.span, within);
  const meant =
    words.length === 0
      ? usualRecipes(recipes.filter(isFitting))
      : recipesMeant(recipes, words, found).filter(isFitting);
  const offers = meant.map((recipe) => recipeOffer(recipe, own));
  return [...(within ? [] : blockOffers(words)), ...offers].slice(0, MOST);
}

function isWithin(span: SpanKind | undefined, within: EachKind | undefined): boolean {
  return !span || !within || SPAN_KINDS.indexOf(span) <= SPAN_KINDS.indexOf(within);
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
