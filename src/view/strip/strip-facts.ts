/** What a strip comes to on each notebook, in numbers for lists. */
import type { Content } from "../../build/content/load-content.ts";
import { notebookEntry } from "../notebook/notebook-facts.ts";
import type { StripFacts, StripPair, StripPiece } from "./strip-view.ts";

/** The finished piece of a pair. */
export type StripPieceOf = (pair: StripPair) => StripPiece;

/** The facts of a strip, in the order of the book's notebooks. */
export type StripFactsOf = (strip: string) => readonly StripFacts[];

/** Works them out once for each strip, when they are asked for. */
export function openStripFacts({ notebooks }: Content, pieceOf: StripPieceOf): StripFactsOf {
  const known = new Map<string, readonly StripFacts[]>();
  return (strip) => {
    const facts =
      known.get(strip) ??
      notebooks.map((notebook) => ({
        notebook: notebookEntry(notebook),
        ...factsOf(pieceOf({ strip, notebook: notebook.slug })),
      }));
    known.set(strip, facts);
    return facts;
  };
}

function factsOf({ length, width, sides }: StripPiece): Omit<StripFacts, "notebook"> {
  const lacking = new Set(sides.flatMap(({ leftOut }) => leftOut.map(({ pattern }) => pattern)));
  return { length, width, lanes: sides.map(({ lanes }) => lanes.length), lacking: lacking.size };
}
