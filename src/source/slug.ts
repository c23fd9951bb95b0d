/** Slugs: the names of files, which are the names of pages too. */

/** The rule of file names, so that a name can never lead out of a folder. */
export const SLUG = /^[a-z0-9][a-z0-9-]*$/;

export const LONGEST_SLUG = 80;

/** The slug that a name was probably meant to be, without marks, spaces, folder and ending; "" where none is left. */
export function slugFrom(name: string): string {
  return plainSlug(name.replace(/^.*[\\/]/, "").replace(/\.[^.]*$/, ""));
}

/** What of a text may stand in a slug of so many characters; "" where nothing may. */
export function plainSlug(text: string, longest = LONGEST_SLUG): string {
  return text
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .slice(0, longest)
    .replace(/^-+|-+$/g, "");
}

/** Can a file be called so? */
export function isSlug(name: string): boolean {
  return SLUG.test(name) && name.length <= LONGEST_SLUG;
}

/** `patterns/seed-list.md` is `seed-list`. */
export function slugOf(path: string): string {
  return path.slice(path.lastIndexOf("/") + 1).replace(/\.md$/, "");
}
