/** File names made from titles, by the book's rule: small letters a–z, figures and hyphens, not a hyphen first. */
import type { FieldIssue } from "../../issue/facts/field-issue.ts";
import { plainSlug } from "../../source/slug.ts";

/** What is wrong with a name that is no slug, and the nearest one that is. */
export function slugFault<F extends string>(field: F, text: string): FieldIssue<F> {
  const nearest = plainSlug(text, LONGEST);
  return { field, kind: "no-file-name", ...(nearest !== "" && { nearest }) };
}

/** Shorter than the longest name that the book takes, so that a number still finds room behind it. */
const LONGEST = 60;

interface SlugOptions {
  /** The name where the title has no letter that could stand in one. */
  readonly fallback: string;
  /** Names that are somebody else's. */
  readonly taken: readonly string[];
}

/** `Ferne’s greenhouse book` is `ferne-s-greenhouse-book`; where that is taken, with the first free number from 2. */
export function slugFor(title: string, { fallback, taken }: SlugOptions): string {
  const slug = plainSlug(title, LONGEST) || fallback;
  if (!taken.includes(slug)) return slug;
  const numbered = taken.map((_, index) => `${slug}-${index + 2}`);
  return numbered.find((name) => !taken.includes(name)) ?? `${slug}-${taken.length + 2}`;
}
