/** The part that tells a notebook's numbers as its built page would: loaded when somebody comes near them. */
import { createSvgWriter } from "../../../../src/draw/svg/write-svg.ts";
import type { Notebook } from "../../../../src/notebook/notebook.ts";
import { axisTables } from "../../../../src/view/notebook/axis-tables.ts";
import { notebookFacts } from "../../../../src/view/notebook/notebook-facts.ts";
import { axisFigures } from "../../../../src/view/notebook/notebook-figures.ts";
import { countingWords } from "./counting-words.ts";
import type { NotebookPart } from "./notebook-part.ts";
import { evenList, factsTable, partFigures, partTable, waysOfCounting } from "./tables.ts";

const write = createSvgWriter(window);

function tables(notebook: Notebook): ReturnType<NotebookPart["tables"]> {
  const axes = axisTables(notebook, {
    across: axisFigures("across", notebook, write),
    down: axisFigures("down", notebook, write),
  });
  return {
    facts: [factsTable(notebookFacts(notebook))],
    ways: axes.flatMap(waysOfCounting),
    parts: axes.flatMap(partFigures),
    evenly: axes.map(evenList),
    "whole-table": axes.map(partTable),
  };
}

const part: NotebookPart = { countingWords, tables };

Object.assign(window, { spanbookNotebook: part });
