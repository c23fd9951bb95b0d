/** A pattern as it is searched for: the same for the book's, at build time, and for the keeper's own, in the page. */
import { areasOf } from "../../recipe/area-tree.ts";
import type { Recipe } from "../../recipe/recipe.ts";
import type { WordGroups } from "../../recipe/words.ts";
import { PURPOSE_WORDS } from "../pattern/purpose-words.ts";
import { stemsOf } from "./plain-words.ts";

export interface SearchEntry {
  readonly title: string;
  readonly tags: readonly string[];
  readonly labels: readonly string[];
  /** Each word of the text once, as it is compared; none that stands elsewhere as well. */
  readonly text: string;
}

/** What a search needs; a pattern is known by its place. */
export interface SearchData {
  readonly entries: readonly SearchEntry[];
  readonly groups: WordGroups;
}

/** `text` is what a reader finds on its page, without the signs of Markdown. */
export function searchEntry({ title, purpose, tags, attempts }: Recipe, text: string): SearchEntry {
  const labels = new Set(attempts.flatMap(areasOf).map(({ label }) => label));
  const entry = {
    title,
    tags: [...tags, PURPOSE_WORDS[purpose].title],
    labels: [...labels].filter((label) => label !== ""),
  };
  const elsewhere = new Set([title, ...entry.tags, ...entry.labels].flatMap(stemsOf));
  const joined = (text.match(/\p{L}+(?:[-‐]\p{L}+)+/gu) ?? []).map((word) =>
    word.replace(/[-‐]/gu, ""),
  );
  const words = new Set([text, ...joined].flatMap(stemsOf));
  return { ...entry, text: [...words].filter((word) => !elsewhere.has(word)).join(" ") };
}
