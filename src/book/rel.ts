/** Relative addresses: the same folder works from a web root, from a sub-path and straight from disk. */

/**
 * The address of `to` as seen from the page `from`, both written from the book's root: up to the root and down again.
 * A folder stands for its `index.html`, for a folder's own address lists its files when it is opened from disk.
 */
export function rel(to: string, from: string): string {
  const hash = to.indexOf("#");
  const path = hash < 0 ? to : to.slice(0, hash);
  const fragment = hash < 0 ? "" : to.slice(hash);
  const file = path.endsWith("/") ? `${path}index.html` : path;
  return "../".repeat(from.split("/").length - 2) + file.slice(1) + fragment;
}
