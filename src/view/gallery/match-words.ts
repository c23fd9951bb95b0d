/** How well a pattern answers each word that is searched for: the title counts before tags, those before labels, those before the text. */
import { stemOf, stemsOf } from "./plain-words.ts";
import type { SearchEntry } from "./search-entry.ts";

/** A field ready to be looked through: its words with a blank around each, parts told apart by a bar. */
interface Field {
  readonly weight: number;
  readonly words: string;
  /** Neighbours written as one: what is called “to do” or “to-do” is also searched for as “todo”. */
  readonly joined: string;
}

export interface Searched {
  readonly fields: readonly Field[];
  /** The words of its title. */
  readonly title: readonly string[];
}

/** Whatever stands in one field counts for more than anything in the next one: see `KIND_WEIGHTS`. */
export const FIELD_WEIGHTS = { title: 8, tags: 4, labels: 2, text: 1 } as const;

/** The word itself, another word for the same, its beginning; and a beginning too short to mean much. */
const KIND_WEIGHTS = { same: 1.9, alike: 1.5, begun: 1.2, short: 0.3 } as const;

/** Fewer letters are a beginning only while a word is being typed. */
const SHORTEST_BEGINNING = 4;
const SHORTEST_TYPED = 2;
/** Behind other words, one letter tells which of their layouts is meant. */
const SHORTEST_BEHIND = 1;

export function searchedEntry({ title, tags, labels, text }: SearchEntry): Searched {
  return {
    fields: [
      field(FIELD_WEIGHTS.title, [title]),
      field(FIELD_WEIGHTS.tags, tags),
      field(FIELD_WEIGHTS.labels, labels),
      { weight: FIELD_WEIGHTS.text, words: ` ${text} `, joined: "" },
    ],
    title: stemsOf(title),
  };
}

function field(weight: number, parts: readonly string[]): Field {
  const words = parts.map(stemsOf);
  const pairs = words.flatMap((part) =>
    part.slice(1).map((word, index) => `${part[index] ?? ""}${word}`),
  );
  return {
    weight,
    words: ` ${words.map((part) => part.join(" ")).join(" | ")} `,
    joined: ` ${pairs.map(stemOf).join(" ")} `,
  };
}

/** Some neighbouring words of what is searched for, and what else stands for all of them together. */
export interface Span {
  readonly from: number;
  readonly to: number;
  readonly phrases: readonly string[];
  readonly kind: "same" | "alike";
}

/** Plain words in their order; the last one may still be typed. */
export interface Query {
  readonly words: readonly string[];
  readonly spans: readonly Span[];
}

/** For each word of the query how well the pattern answers it; 0 where it does not. */
export function answers({ fields }: Searched, { words, spans }: Query): readonly number[] {
  const strengths = words.map((word, index) => {
    const isPart = spans.some(
      (span) => span.kind === "alike" && span.from <= index && index <= span.to,
    );
    if (isSmall(word) && isPart) return 0;
    return best(fields, (each) => {
      const shortest = index === 0 ? SHORTEST_TYPED : SHORTEST_BEHIND;
      return wordKind(each, word, index === words.length - 1 ? shortest : SHORTEST_BEGINNING);
    });
  });
  for (const { from, to, phrases, kind } of spans) {
    const strength = best(fields, ({ words, joined }) => {
      const isThere = phrases.some(
        (phrase) => words.includes(` ${phrase} `) || joined.includes(` ${phrase} `),
      );
      return isThere ? kind : undefined;
    });
    for (let index = from; index <= to; index += 1)
      strengths[index] = Math.max(strengths[index] ?? 0, strength);
  }
  return strengths;
}

/** One or two letters mean nothing beside longer words, or as a part of several that mean one thing. */
export function isSmall(word: string): boolean {
  return word.length < 3 && !/\p{N}/u.test(word);
}

type Kind = keyof typeof KIND_WEIGHTS;

function best(fields: readonly Field[], kindIn: (field: Field) => Kind | undefined): number {
  const strengths = fields.map((each) => {
    const kind = kindIn(each);
    return kind === undefined ? 0 : each.weight * KIND_WEIGHTS[kind];
  });
  return Math.max(...strengths);
}

/** `shortest` is how many letters a beginning has at least. */
function wordKind({ words, joined }: Field, word: string, shortest: number): Kind | undefined {
  const stem = ` ${stemOf(word)} `;
  if (words.includes(stem) || joined.includes(stem)) return "same";
  if (!words.includes(` ${word}`)) return undefined;
  if (word.length < shortest) return undefined;
  return word.length < SHORTEST_BEGINNING ? "short" : "begun";
}
