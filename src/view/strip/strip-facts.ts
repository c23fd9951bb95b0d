/** What a strip comes to on each notebook, in numbers for lists. */
import type { CatalogueData } from "../catalogue.ts";
import { notebookEntry } from "../notebook/notebook-facts.ts";
import type { StripFacts, StripPair, StripView } from "./strip-view.ts";

/** The finished artifact of a pair. */
export type StripViewOf = (pair: StripPair) => StripView;

/** The facts of a strip, in the order of the book's notebooks. */
export type StripFactsOf = (strip: string) => readonly StripFacts[];

/** Works them out once for each strip, when they are asked for. */
export function openStripFacts({ notebooks }: CatalogueData, viewOf: StripViewOf): StripFactsOf {
  const known = new Map<string, readonly StripFacts[]>();
  return (strip) => {
    const facts =
      known.get(strip) ??
      notebooks.map((notebook) => ({
        notebook: notebookEntry(notebook),
        ...factsOf(viewOf({ strip, notebook: notebook.slug })),
      }));
    known.set(strip, facts);
    return facts;
  };
}

function factsOf({ length, width, sides }: StripView): Omit<StripFacts, "notebook"> {
  const lacking = new Set(sides.flatMap(({ leftOut }) => leftOut.map(({ pattern }) => pattern)));
  return { length, width, lanes: sides.map(({ lanes }) => lanes.length), lacking: lacking.size };
}
