/** How the patterns of a book are searched: the same at build time, where they are gathered, and in the page. */
import type { Options } from "minisearch";

/** One pattern as it is searched; its `id` is its place in the gallery's facts. */
export interface SearchEntry {
  readonly id: number;
  readonly title: string;
  readonly labels: string;
  readonly tags: string;
  readonly text: string;
}

/** Words are taken apart as Unicode does, and told neither by their case nor by their accents. */
export const SEARCH_OPTIONS: Options<SearchEntry> = {
  fields: ["title", "labels", "tags", "text"],
  processTerm: plainTerm,
  searchOptions: {
    boost: { title: 4, tags: 2, labels: 2 },
    combineWith: "AND",
    prefix: true,
  },
};

function plainTerm(term: string): string {
  return term.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase();
}
