/** File names made from titles, by the book's rule: small letters a–z, figures and hyphens, not a hyphen first. */
import type { FieldProblem } from "../../../src/problem/field-problem.ts";
import { LONGEST_SLUG, SLUG } from "../../../src/written/slug.ts";

/** May it be the name of a file of the book, without its ending? */
export function isSlug(text: string): boolean {
  return text.length <= LONGEST_SLUG && SLUG.test(text);
}

/** What is wrong with a name that is no slug, and the nearest one that is. */
export function slugFault<F extends string>(field: F, text: string): FieldProblem<F> {
  const nearest = plainSlug(text);
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
  const slug = plainSlug(title) || fallback;
  if (!taken.includes(slug)) return slug;
  const numbered = taken.map((_, index) => `${slug}-${index + 2}`);
  return numbered.find((name) => !taken.includes(name)) ?? `${slug}-${taken.length + 2}`;
}

/** What of a title may stand in a slug; "" where nothing may. */
function plainSlug(title: string): string {
  return title
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .slice(0, LONGEST)
    .replace(/^-+|-+$/g, "");
}
