/** The page of one strip on one notebook. */

import { patternsOf } from "../../recipe/strip-recipe.ts";
import { writeStripAddress } from "../../view/address/strip-address.ts";
import { unnamed } from "../../view/fields/name-notebook.ts";
import { notebookEntry } from "../../view/notebook/notebook-facts.ts";
import type { Planner } from "../../view/planner.ts";
import type { StripFactsOf, StripViewOf } from "../../view/strip/strip-facts.ts";
import type { StripPage, StripPair } from "../../view/strip/strip-view.ts";
import { stripPath } from "../content/content-paths.ts";
import type { PageSources } from "./page-sources.ts";

export interface StripPageSources extends PageSources {
  readonly planner: Planner;
  readonly viewOf: StripViewOf;
  readonly factsOf: StripFactsOf;
}

/** What the template of a strip's page shows. */
export function stripPage(pair: StripPair, sources: StripPageSources): StripPage {
  const { content, planner, viewOf, factsOf, bodyHtml, originOf, sourceHtml } = sources;
  const recipe = planner.strip(pair.strip);
  const notebook = planner.notebook(pair.notebook);
  const listed = content.recipes.map(({ slug }) => slug);
  return {
    strip: pair.strip,
    title: recipe.title,
    make: recipe.make,
    notebook: notebookEntry(notebook),
    shown: viewOf(pair),
    bodyHtml: bodyHtml(recipe.body),
    sourceHtml: sourceHtml(stripPath(pair.strip)),
    origin: originOf(stripPath(pair.strip)),
    listed: patternsOf(recipe).filter((slug) => listed.includes(slug)),
    elsewhere: factsOf(pair.strip).filter((one) => one.notebook.slug !== pair.notebook),
    // There it has no name until it gets one of its own.
    changeHash: writeStripAddress({
      notebook: unnamed(notebook),
      strip: { ...recipe, title: "", slug: "" },
    }),
  };
}
