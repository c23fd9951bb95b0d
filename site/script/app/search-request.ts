/** A search that may still be on its way: what it has found, or why it has not. */
import type { Search, SearchResult } from "../../../src/view/gallery/open-search.ts";

export type QueryResult =
  | { readonly kind: "none" }
  | { readonly kind: "waiting" }
  | { readonly kind: "failed" }
  | ({ readonly kind: "found" } & SearchResult);

export interface Query {
  /** Brings the search in before something is searched for. */
  prepare(): void;
  /** What is found now; where the search is still coming, `onReady` tells when to ask again. */
  ask(query: string): QueryResult;
}

/** A search that failed to come is sent for again when something else is searched for. */
export function openQuery(load: () => Promise<Search>, onReady: () => void): Query {
  let search: Search | undefined;
  let failedFor: string | undefined;
  const bring = (query: string) => {
    load().then(
      (opened) => {
        search = opened;
        if (query !== "") onReady();
      },
      () => {
        failedFor = query;
        if (query !== "") onReady();
      },
    );
  };
  return {
    prepare: () => {
      if (!search) bring("");
    },
    ask: (query) => {
      if (query === "") return { kind: "none" };
      if (search) return { kind: "found", ...search(query) };
      if (failedFor === query) return { kind: "failed" };
      bring(query);
      return { kind: "waiting" };
    },
  };
}
