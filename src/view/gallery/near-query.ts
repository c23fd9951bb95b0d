/** What somebody probably meant whose words are found nowhere: known words that are a slip or two of the pen away. */
import type { WordGroups } from "../../recipe/words.ts";
import { leastEdits, letterEdits } from "../../source/nearest-word.ts";
import { plainWords, stemOf } from "./plain-words.ts";
import type { SearchEntry } from "./search-entry.ts";

/** Shorter words are near to too many others. */
const SHORTEST = 5;

/** The words that are known, as they are compared, each with its plain forms; those of titles and tags come first. */
export function knownWords(entries: readonly SearchEntry[], groups: WordGroups): KnownWords {
  const texts = [
    ...entries.flatMap(({ title, tags }) => [title, ...tags]),
    ...groups.flat(),
    ...entries.flatMap(({ labels }) => labels),
    ...entries.map(({ text }) => text),
  ];
  const known = new Map<string, Set<string>>();
  for (const word of texts.flatMap(plainWords)) {
    if (word.length < SHORTEST - 1) continue;
    const forms = known.get(stemOf(word)) ?? new Set();
    known.set(stemOf(word), forms.add(word));
  }
  return known;
}

export type KnownWords = ReadonlyMap<string, ReadonlySet<string>>;

interface Slipped {
  readonly words: readonly string[];
  /** Is the word at a place found nowhere? */
  readonly isMissing: (index: number) => boolean;
  readonly known: KnownWords;
  /** How many letters of a word may be wrong, too many, too few or turned round. */
  readonly edits: number;
}

/** The words with those that are missing put right, as far as something is near them; undefined where nothing is. */
export function nearQuery({
  words,
  isMissing,
  known,
  edits,
}: Slipped): readonly string[] | undefined {
  const meant = words.map((word, index) =>
    isMissing(index) ? (nearWord(word, known, edits) ?? word) : word,
  );
  return meant.every((word, index) => word === words[index]) ? undefined : meant;
}

/** The nearest known word, in its form that is nearest; of those that are equally near, the one that is known first. */
function nearWord(word: string, known: KnownWords, edits: number): string | undefined {
  if (word.length < SHORTEST + 2 * (edits - 1)) return undefined;
  const stem = nearestOf(stemOf(word), known.keys(), edits);
  return stem === undefined ? undefined : nearestOf(word, known.get(stem) ?? [], word.length);
}

function nearestOf(word: string, others: Iterable<string>, edits: number): string | undefined {
  let nearest: { readonly other: string; readonly apart: number } | undefined;
  for (const other of others) {
    const most = (nearest?.apart ?? edits + 1) - 1;
    if (leastEdits(word, other) > most) continue;
    const apart = letterEdits(word, other);
    if (apart <= most) nearest = { other, apart };
  }
  return nearest?.other;
}
