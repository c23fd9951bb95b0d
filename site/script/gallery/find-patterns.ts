/** Brings the search and its index into the page when they are first needed. */
import type { AsPlainObject } from "minisearch";
import { ownAddress, scriptLoader } from "../page/load-script.ts";
import type { openSearch, Search } from "./search-patterns.ts";

declare global {
  interface Window {
    readonly spanbookOpenSearch?: typeof openSearch;
    readonly spanbookSearchIndex?: AsPlainObject;
  }
}

/** Asks for the search; rejects where it cannot be loaded, and may then be asked again. Only to be made as the page's script first runs. */
export function searchLoader(window: Window): () => Promise<Search> {
  const loadPart = scriptLoader(ownAddress());
  const loadIndex = scriptLoader(window.document.baseURI);
  let opened: Search | undefined;
  return async () => {
    if (opened) return opened;
    await Promise.all([loadPart("search.js"), loadIndex("search-index.js")]);
    const { spanbookOpenSearch: open, spanbookSearchIndex: index } = window;
    if (!open || !index) throw new Error("the search came without its index");
    opened ??= open(index);
    return opened;
  };
}
