/** Which notebooks and patterns a book has, and whether the names in it are those of files. */
import type { Issue } from "../issue/facts/issue.ts";
import { nearest } from "../source/nearest-word.ts";
import type { NamedSlug } from "../source/schema/named-slugs.ts";
import type { Chosen } from "./book-file.ts";
import type { Recipe } from "./recipe.ts";

type What = "notebook" | "pattern" | "strip" | "setup";

/** As titles stand in an English list; the locale is named, so that no machine has another order. */
const TITLES = new Intl.Collator("en", { numeric: true });

/** By their titles, and by their slugs where these are alike: nobody sees a slug. */
export function byTitle<Entry extends { readonly slug: string; readonly title: string }>(
  entries: readonly Entry[],
): readonly Entry[] {
  return entries.toSorted(
    (one, other) => TITLES.compare(one.title, other.title) || (one.slug < other.slug ? -1 : 1),
  );
}

/** The chosen ones in the book's order; all in the given order where the book has no list. */
export function chosenOf<T extends { readonly slug: string }>(
  chosen: Chosen,
  all: readonly T[],
): readonly T[] {
  if (chosen === "all") return all;
  return chosen.flatMap(({ slug }) => all.find((one) => one.slug === slug) ?? []);
}

/** A problem for each name in a list that no file has. */
export function unknownIn(chosen: Chosen, what: What, known: readonly string[]): readonly Issue[] {
  if (chosen === "all") return [];
  return chosen
    .filter(({ slug }) => !known.includes(slug))
    .map((name) => unknown(name, what, known));
}

/** A problem for each plain division of a strip whose title makes the name of a pattern. */
export function takenTitles(
  divisions: readonly NamedSlug[],
  patterns: readonly string[],
): readonly Issue[] {
  const taken = divisions.filter(({ slug }) => patterns.includes(slug));
  return taken.map(({ slug, at }) => ({ about: "book", kind: "title-of-pattern", slug, at }));
}

/** The patterns that strips and set-ups name and the book does not list. */
export function unlistedOf(
  named: readonly NamedSlug[],
  listed: readonly Recipe[],
  all: readonly Recipe[],
): readonly Recipe[] {
  const slugs = new Set(named.map(({ slug }) => slug));
  return all.filter((recipe) => slugs.has(recipe.slug) && !listed.includes(recipe));
}

function unknown({ slug, at }: NamedSlug, what: What, known: readonly string[]): Issue {
  const meant = nearest(slug, known);
  return {
    about: "book",
    kind: "unknown-slug",
    what,
    slug,
    known,
    ...(meant === undefined ? {} : { nearest: meant }),
    at,
  };
}
