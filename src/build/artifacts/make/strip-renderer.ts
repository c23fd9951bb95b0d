/** Makes the artifacts of a book's strips, one after another. */
import { openPlanner } from "../../../view/planner.ts";
import { makeStripView } from "../../../view/strip/make-strip-view.ts";
import type { StripViewOf } from "../../../view/strip/strip-facts.ts";
import type { StripPair } from "../../../view/strip/strip-view.ts";
import type { Content } from "../../content/load-content.ts";
import { openSvgWriter } from "./svg-writer.ts";

/** A renderer with a drawing window of its own, quickest for pairs in the order of `stripPairs`. */
export function openStripRenderer(content: Content): StripViewOf {
  const { printer } = content.book;
  const write = openSvgWriter();
  const sources = { planner: openPlanner(content), write, ...(printer ? { printer } : {}) };
  return (pair) => makeStripView(pair, sources);
}

/** Every strip on every notebook, notebook by notebook: patterns that strips share are planned once. */
export function stripPairs({ notebooks, strips }: Content): readonly StripPair[] {
  return notebooks.flatMap(({ slug: notebook }) =>
    strips.map(({ slug: strip }) => ({ strip, notebook })),
  );
}
