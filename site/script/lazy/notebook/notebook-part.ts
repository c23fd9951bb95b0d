/** What the part that tells a notebook's numbers gives to the fit page, once it is loaded. */
import type { Notebook } from "../../../../src/notebook/notebook.ts";

export interface NotebookPart {
  /** How to count it, once and right. */
  countingWords(notebook: Notebook): readonly HTMLElement[];
  /** What a built notebook's page has, by the names of the parts of the page that they stand in. */
  tables(notebook: Notebook): Readonly<Record<NotebookTable, readonly HTMLElement[]>>;
}

/** The numbers of both axes, the ways of counting, equal parts as pictures, what comes out even, and the whole table. */
export const NOTEBOOK_TABLES = ["facts", "ways", "parts", "evenly", "whole-table"] as const;
export type NotebookTable = (typeof NOTEBOOK_TABLES)[number];

declare global {
  interface Window {
    readonly spanbookNotebook?: NotebookPart;
  }
}

/** The part, loaded if it is not there yet. Rejects where its script cannot be loaded. */
export async function notebookPart(
  window: Window,
  load: (name: string) => Promise<void>,
): Promise<NotebookPart> {
  await load("notebook.js");
  if (window.spanbookNotebook) return window.spanbookNotebook;
  throw new Error("the part with a notebook's numbers is not what was expected");
}
