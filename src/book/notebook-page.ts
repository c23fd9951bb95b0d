/** The page of one notebook. */
import { AXES } from "../measure/axis.ts";
import { usableSteps } from "../measure/grid-axis.ts";
import type { NotebookPage } from "./book.ts";
import { countingTable } from "./counting-table.ts";
import { divisionRows } from "./division-rows.ts";
import { notebookEntry, notebookFacts } from "./notebook-facts.ts";
import type { PageSources } from "./pattern-page.ts";
import { notebookPath } from "./pieces.ts";

/** What the template of a notebook's page shows. */
export function notebookPage(slug: string, sources: PageSources): NotebookPage {
  const { pieces, cards, bodyHtml, sourceHtml } = sources;
  const notebook = pieces.notebook(slug);
  const piece = pieces.notebookPiece(slug);
  const groups = cards.groupsOn(slug);
  const states = groups.flatMap((group) => group.cards.map((card) => card.state));
  return {
    entry: notebookEntry(notebook),
    bodyHtml: bodyHtml(notebook.body),
    sourceHtml: sourceHtml(notebookPath(slug)),
    gridSvg: piece.gridSvg,
    partsSvg: piece.partsSvg,
    facts: notebookFacts(notebook),
    axes: AXES.map((axis) => {
      const grid = notebook.axes[axis];
      const steps = usableSteps(grid);
      return {
        axis,
        steps,
        counting: countingTable(grid, notebook.middle),
        divisions: divisionRows(steps),
      };
    }),
    groups,
    fitting: states.filter((state) => state !== "misfit").length,
    even: states.filter((state) => state === "even").length,
  };
}
