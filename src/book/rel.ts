/** Relative addresses: the same folder works from a web root, from a sub-path and straight from disk. */
import { posix } from "node:path";

/** The address of `to` as seen from the page `from`, both from the book's root: a folder stands for its `index.html`. */
export function rel(to: string, from: string): string {
  const [path = "", ...fragment] = to.split(/(?=#)/);
  const target = path.endsWith("/") ? `${path}index.html` : path;
  const base = from.endsWith("/") ? from : posix.dirname(from);
  return (posix.relative(base, target) || posix.basename(target)) + fragment.join("");
}
