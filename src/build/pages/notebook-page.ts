/** The page of one notebook. */
import { axisTables } from "../../view/notebook/axis-tables.ts";
import { notebookEntry, notebookFacts } from "../../view/notebook/notebook-facts.ts";
import type { PatternCard } from "../../view/pattern/pattern-cards.ts";
import type { PlanStatus } from "../../view/pattern/plan-status.ts";
import { notebookPath } from "../content/content-paths.ts";
import type { NotebookPage, StateGroup } from "./book.ts";
import type { PatternPageSources } from "./pattern-page.ts";

/** What the template of a notebook's page shows. */
export function notebookPage(slug: string, sources: PatternPageSources): NotebookPage {
  const { artifacts, cards, bodyHtml, originOf, sourceHtml } = sources;
  const notebook = artifacts.notebook(slug);
  const view = artifacts.notebookView(slug);
  const all = cards.groupsOn(slug).flatMap((group) => group.cards);
  const states = stateGroups(all);
  return {
    entry: notebookEntry(notebook),
    bodyHtml: bodyHtml(notebook.body),
    sourceHtml: sourceHtml(notebookPath(slug)),
    origin: originOf(notebookPath(slug)),
    gridSvg: view.gridSvg,
    partsSvg: view.partsSvg,
    facts: notebookFacts(notebook),
    axes: axisTables(notebook, view.figures),
    states,
    fitting: all.filter(({ state }) => state !== "misfit").length,
    even: all.filter(({ state }) => state === "even").length,
  };
}

/** What comes out alike, in the order of how well it does. */
const STATE_TITLES: readonly (readonly [state: PlanStatus, title: string])[] = [
  ["even", "Nothing left over"],
  ["over", "Steps left over"],
  ["misfit", "Does not fit"],
];

function stateGroups(cards: readonly PatternCard[]): readonly StateGroup[] {
  return STATE_TITLES.map(([state, title]) => ({
    state,
    title,
    cards: cards.filter((card) => card.state === state),
  })).filter((group) => group.cards.length > 0);
}
