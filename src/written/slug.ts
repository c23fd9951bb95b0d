/** Slugs: the names of files, which are the names of pages too. */

/** The rule of file names, so that a name can never lead out of a folder. */
export const SLUG = /^[a-z0-9][a-z0-9-]*$/;

export const LONGEST_SLUG = 80;

/** Can a file be called so? */
export function isSlug(name: string): boolean {
  return SLUG.test(name) && name.length <= LONGEST_SLUG;
}
