/** Which pages of a book lie in a folder of it. */
import type { BookPages } from "./book.ts";

/** Of a pattern, a strip or a set-up as "patterns/halves" all pages, of one as "patterns/halves/a5" that on a notebook; of a notebook its own. */
export function pagesAt(folder: string, all: BookPages): BookPages {
  const [kind, slug, notebook, ...deeper] = folder.split("/");
  const isHere = (one: { readonly notebook: string }) =>
    deeper.length === 0 && (notebook === undefined || notebook === one.notebook);
  return {
    pairs:
      kind === "patterns" ? all.pairs.filter((one) => one.pattern === slug && isHere(one)) : [],
    strips: kind === "strips" ? all.strips.filter((one) => one.strip === slug && isHere(one)) : [],
    setups: kind === "setups" ? all.setups.filter((one) => one.setup === slug && isHere(one)) : [],
    notebooks:
      kind === "notebooks" && notebook === undefined
        ? all.notebooks.filter((one) => one === slug)
        : [],
  };
}
