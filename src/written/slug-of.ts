/** A file's name is its slug. */

/** `patterns/seed-list.md` is `seed-list`. */
export function slugOf(path: string): string {
  return path.slice(path.lastIndexOf("/") + 1).replace(/\.md$/, "");
}
