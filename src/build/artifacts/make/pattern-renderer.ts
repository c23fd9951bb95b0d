/** Makes artifacts of one content, one pair after another. */
import { openCatalogue } from "../../../view/catalogue.ts";
import type { Pair } from "../../../view/entries.ts";
import { makePatternView, type PatternView } from "../../../view/pattern/pattern-view.ts";
import type { Content } from "../../content/load-content.ts";
import { openSvgWriter } from "./svg-writer.ts";

/** Makes the artifact of a pair. Throws where the content has no such pattern or notebook. */
export type PatternRenderer = (pair: Pair) => PatternView;

/** A renderer with a drawing window of its own. */
export function openPatternRenderer(content: Content): PatternRenderer {
  const { recipe, notebook, when } = openCatalogue(content);
  const write = openSvgWriter();
  return (pair) => makePatternView(recipe(pair.pattern), notebook(pair.notebook), { write, when });
}
