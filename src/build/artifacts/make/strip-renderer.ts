/** Makes the pieces of a book's strips, one after another. */
import { createSVGWindow } from "svgdom";
import { createSvgWriter } from "../../../draw/svg/write-svg.ts";
import { openPlanner } from "../../../view/planner.ts";
import { makeStripPiece } from "../../../view/strip/make-strip-view.ts";
import type { StripPieceOf } from "../../../view/strip/strip-facts.ts";
import type { StripPair } from "../../../view/strip/strip-view.ts";
import type { Content } from "../../content/load-content.ts";
import { stripSources } from "../pdf/pdf-file.ts";

/** A press with a drawing window of its own, quickest for pairs in the order of `stripPairs`. */
export function openStripPress(content: Content): StripPieceOf {
  const { printer } = content.book;
  const write = createSvgWriter(createSVGWindow());
  const sources = { planner: openPlanner(content), write, ...(printer ? { printer } : {}) };
  return (pair) => makeStripPiece(pair, sources);
}

/** Every strip on every notebook, notebook by notebook: patterns that strips share are planned once. */
export function stripPairs({ notebooks, strips }: Content): readonly StripPair[] {
  return notebooks.flatMap(({ slug: notebook }) =>
    strips.map(({ slug: strip }) => ({ strip, notebook })),
  );
}

/** What a strip's piece is made from, for the memo. */
export function stripPieceSources(
  pair: StripPair,
  content: Content,
  version: string,
): readonly string[] {
  return [version, ...stripSources(pair, content)];
}
