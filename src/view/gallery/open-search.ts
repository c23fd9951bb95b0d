/** The search over patterns that the gallery and all fields which offer layouts share. */
import {
  answers,
  FIELD_WEIGHTS,
  isSmall,
  type Query,
  type Searched,
  type Span,
  searchedEntry,
} from "./match-words.ts";
import { type KnownWords, knownWords, nearQuery } from "./near-query.ts";
import { plainWords, stemOf, stemsOf } from "./plain-words.ts";
import type { SearchData } from "./search-entry.ts";

export interface SearchResult {
  /** Places of patterns, in the book or in the list that is searched, the best first. */
  readonly places: readonly number[];
  /** Is nothing called so, only what is written nearly so? */
  readonly isNear: boolean;
  /** What was probably meant, and would find something. */
  readonly meant?: string;
}

export type Search = (query: string) => SearchResult;

/** Opens a search; what it needs is made ready once. */
export function openSearch({ entries, groups }: SearchData): Search {
  const searched = entries.map(searchedEntry);
  const spansIn = spanFinder(groups.map((group) => group.map((word) => stemsOf(word).join(" "))));
  const ask = (words: readonly string[]) => ranked(searched, { words, spans: spansIn(words) });
  let known: KnownWords | undefined;
  return (text) => {
    const words = plainWords(text);
    const { places, isMissing } = ask(words);
    if (!words.some((_, index) => isMissing(index))) return { places, isNear: false };
    known ??= knownWords(entries, groups);
    const near = (edits: number) => {
      const meant = nearQuery({ words, isMissing, known: known ?? new Map(), edits });
      const found = meant ? ask(meant) : undefined;
      return meant && found && found.places.length > 0
        ? { places: found.places, meant: meant.join(" ") }
        : undefined;
    };
    const slip = near(1);
    if (slip) return { ...slip, isNear: true };
    if (places.length > 0) return { places, isNear: false };
    const guess = near(2);
    return { places, isNear: false, ...(guess ? { meant: guess.meant } : {}) };
  };
}

/** Finds the groups that some neighbouring words of a query belong to, and neighbours that may be one word. */
function spanFinder(groups: readonly (readonly string[])[]) {
  const others = new Map<string, readonly string[]>();
  for (const group of groups)
    for (const phrase of group) others.set(phrase, [...(others.get(phrase) ?? []), ...group]);
  const longest = Math.max(2, ...[...others.keys()].map((phrase) => phrase.split(" ").length));
  return (words: readonly string[]): readonly Span[] => {
    const stems = words.map(stemOf);
    return stems.flatMap((_, from) =>
      stems.slice(from, from + longest).flatMap((_, behind): readonly Span[] => {
        const to = from + behind;
        const phrases = others.get(stems.slice(from, to + 1).join(" "));
        const joined = behind === 1 ? [stemOf(words.slice(from, to + 1).join(""))] : [];
        return [
          ...(phrases ? [{ from, to, phrases, kind: "alike" } as const] : []),
          ...(joined.length > 0 ? [{ from, to, phrases: joined, kind: "same" } as const] : []),
        ];
      }),
    );
  };
}

/** What answers all words before what answers half of them or more, and half as well as the best of all. */
function ranked(searched: readonly Searched[], query: Query) {
  const { words } = query;
  const isWanted = (index: number) => words.every(isSmall) || !isSmall(words[index] ?? "");
  const wanted = words.filter((_, index) => isWanted(index)).length;
  const answered = searched.map((entry) => answers(entry, query));
  const hits = words.map((_, index) => answered.filter((one) => (one[index] ?? 0) > 0).length);
  const found = searched.flatMap((entry, place) => {
    const strengths = answered[place] ?? [];
    const count = strengths.filter((strength, index) => strength > 0 && isWanted(index)).length;
    if (count === 0) return [];
    const rare = strengths.map((one, index) => one * rarity(hits[index] ?? 0, searched.length));
    const sum = rare.reduce((total, strength) => total + strength, 0);
    return [{ place, count, score: sum + titleBonus(entry, words, strengths) }];
  });
  const most = Math.max(0, ...found.map(({ count }) => count));
  const best = Math.max(0, ...found.map(({ score }) => score));
  const places = found
    .filter(({ count, score }) => count === most || (count >= wanted / 2 && score >= best / 2))
    .sort((a, b) => b.count - a.count || b.score - a.score || a.place - b.place)
    .map(({ place }) => place);
  return { places, isMissing: (index: number) => isWanted(index) && hits[index] === 0 };
}

/** Of several words, one that few patterns have says more (an inverse document frequency). */
function rarity(hits: number, all: number): number {
  return hits === 0 ? 0 : 1 + Math.log(all / hits);
}

/** Among titles that answer alike, those that begin with what is asked for go first, and those with few other words. */
function titleBonus({ title }: Searched, words: readonly string[], strengths: readonly number[]) {
  const begins = words.every((word, index) => title[index]?.startsWith(stemOf(word)));
  const inTitle = strengths.filter((strength) => strength > FIELD_WEIGHTS.title).length;
  return (begins ? 0.5 : 0) + Math.min(1, inTitle / title.length) / 2;
}
