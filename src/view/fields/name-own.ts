/** What somebody's own thing is called, and under which file name it goes. */
import { slugFor } from "./slug-for.ts";

/** A title and a slug that are "" where none was given. */
interface Named {
  readonly title: string;
  readonly slug: string;
}

export interface Naming<Own> {
  /** Are they one but for their names? */
  readonly isSame: (one: Own, two: Own) => boolean;
  readonly usualTitle: string;
  /** The file's name where a title has no letter that could stand in one. */
  readonly fallback: string;
}

/**
 * The thing with its title and slug. One that is a thing of the book in all but its name is that thing, unless it was
 * given another name; every other one goes by its own name, else by the usual title.
 */
export function nameOwn<Own extends Named, Known extends Own>(
  own: Own,
  known: readonly Known[],
  { isSame, usualTitle, fallback }: Naming<Own>,
): Own | Known {
  const twin = known.find(
    (one) =>
      isSame(own, one) &&
      (own.title === "" || own.title === one.title) &&
      (own.slug === "" || own.slug === one.slug),
  );
  if (twin) return twin;
  const title = own.title || usualTitle;
  const taken = known.map(({ slug }) => slug);
  return { ...own, title, slug: own.slug || slugFor(title, { fallback, taken }) };
}
