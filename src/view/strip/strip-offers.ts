/** What typed words may mean on a strip: layouts of the book and of one's own, and plain divisions of the page, the likeliest first. */
import { sayParts } from "../../issue/words/say-division.ts";
import { AXES, type Axis } from "../../measure/axis.ts";
import type { Recipe } from "../../recipe/recipe.ts";
import { patternEntry, type StripEntry } from "../../recipe/strip-recipe.ts";
import { withFreeTitle } from "../fields/strip-fields.ts";
import { PURPOSE_WORDS } from "../pattern/purpose-words.ts";
import { recipesMeant, typedWords } from "../pattern/rank-recipe.ts";
import { plainDivision } from "./plain-division.ts";

/** Something that can be put on a strip. */
export interface StripOffer {
  readonly slug: string;
  readonly title: string;
  /** What it is, in a word or two. */
  readonly about: string;
  /** Both sides have an entry of their own: a division's margin lies at the ends of an axis. */
  readonly entries: Readonly<Record<Axis, StripEntry>>;
}

/** More are not looked through. */
const MOST = 8;

export interface KnownLayouts {
  readonly recipes: readonly Recipe[];
  /** Names that are taken. */
  readonly patterns: ReadonlySet<string>;
  /** The keeper's. */
  readonly own?: readonly Recipe[];
  /** Places of the recipes that the gallery's search has found for the words, the best first; undefined while it is not there. */
  readonly found?: readonly number[] | undefined;
  /** The same among the keeper's. */
  readonly foundOwn?: readonly number[] | undefined;
}

/** The offers for some words; for none, the divisions that are asked for most. One's own layouts go before the book's. */
export function stripOffers(
  text: string,
  { recipes, patterns, own = [], found, foundOwn }: KnownLayouts,
): readonly StripOffer[] {
  const words = typedWords(text);
  const divisions = divisionsMeant(words).map((meant) => divisionOffer(meant, patterns));
  if (words.length === 0) return divisions;
  return [
    ...divisions,
    ...recipesMeant(own, words, foundOwn).map((recipe) => patternOffer(recipe, "Yours")),
    ...recipesMeant(recipes, words, found).map((recipe) =>
      patternOffer(recipe, PURPOSE_WORDS[recipe.purpose].title),
    ),
  ].slice(0, MOST);
}

function patternOffer({ slug, title }: Recipe, about: string): StripOffer {
  const entry = patternEntry(slug);
  return { slug, title, about, entries: { across: entry, down: entry } };
}

interface Division {
  readonly parts: number;
  readonly gap: number;
  readonly margin: number;
}

function divisionOffer(
  { parts, gap, margin }: Division,
  patterns: ReadonlySet<string>,
): StripOffer {
  const choice = { parts, gap, margin: [margin, margin] } as const;
  const [across, down] = AXES.map((axis) => withFreeTitle(plainDivision(axis, choice), patterns));
  if (across?.kind !== "division" || !down) throw new Error("a page has two directions");
  const { slug, title } = across;
  return { slug, title, about: "Plain division", entries: { across, down } };
}

/** Halves to twelfths by name, or so many parts by number; then a gap and a margin by their words. */
function divisionsMeant(words: readonly string[]): readonly Division[] {
  const [first, ...rest] = words;
  if (first === undefined) return USUAL;
  const said = settingsIn(rest);
  const counts = countsMeant(first);
  if (!said || counts.length === 0) return [];
  const gaps = said.gap === undefined ? [0, 1, 2] : [said.gap];
  return counts.flatMap((parts) => gaps.map((gap) => ({ parts, gap, margin: said.margin ?? 0 })));
}

const USUAL: readonly Division[] = [2, 3, 4].flatMap((parts) =>
  [0, 1].map((gap) => ({ parts, gap, margin: 0 })),
);

/** More parts than have a name, too, if they are typed as a number; `1/3` is thirds. */
const MOST_PARTS = 40;

function countsMeant(word: string): readonly number[] {
  const number = /^(?:1\/)?(\d{1,2})$/.exec(word)?.[1];
  if (number !== undefined) {
    const parts = Number(number);
    return parts >= 2 && parts <= MOST_PARTS ? [parts] : [];
  }
  const named = Array.from({ length: 11 }, (_, index) => index + 2);
  return word.length < 2
    ? []
    : named.filter((parts) => startsWith(sayParts(parts), word)).slice(0, 2);
}

/** `half` and `third` are one of theirs. */
function startsWith(name: string, word: string): boolean {
  return name.startsWith(word) || (word === "half" && name === "halves");
}

/** The gap and the margin among the words behind the first; nothing where there are others. */
function settingsIn(
  words: readonly string[],
): { readonly gap?: number; readonly margin?: number } | undefined {
  const text = words.filter((word) => !FILLERS.includes(word)).join(" ");
  const [, gap, gapSteps, margin] = SETTINGS.exec(text) ?? [];
  if (text !== "" && !SETTINGS.test(text)) return undefined;
  return {
    ...(gap === undefined ? {} : { gap: Number(gapSteps ?? 1) }),
    ...(margin === undefined ? {} : { margin: Number(margin) }),
  };
}

const FILLERS = ["a", "of", "with", "and", "parts", "steps", "step"];
const SETTINGS = /^(gap?(?: (\d{1,2}))?)? ?(?:margin (\d{1,2}))?$/;
