/** The files that lie beside the pages, and putting them there. */
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import type { NotebookPiece } from "./notebook-piece.ts";
import type { PatternPiece } from "./pattern-piece.ts";

/** The path is from the book's root, with forward slashes. */
export interface SideFile {
  readonly path: string;
  readonly text: string;
}

/** What lies beside the page of a pattern on a notebook. */
export function patternFiles(folder: string, piece: PatternPiece): readonly SideFile[] {
  return [
    { path: `${folder}page.svg`, text: piece.pageSvg },
    { path: `${folder}thumb.svg`, text: piece.thumbSvg },
    { path: `${folder}strip.svg`, text: piece.stripSvg },
    { path: `${folder}plan.json`, text: piece.planJson },
  ];
}

/** What lies beside the page of a notebook. */
export function notebookFiles(folder: string, piece: NotebookPiece): readonly SideFile[] {
  return [
    { path: `${folder}grid.svg`, text: piece.gridSvg },
    { path: `${folder}thumb.svg`, text: piece.thumbSvg },
    { path: `${folder}parts.svg`, text: piece.partsSvg },
    { path: `${folder}notebook.json`, text: piece.notebookJson },
  ];
}

/** Writes files below a folder, but leaves those alone that are there with the same text; how many there are. */
export function writeSideFiles(folder: string, files: Iterable<SideFile>): number {
  let count = 0;
  for (const { path, text } of files) {
    writeChanged(join(folder, path), text);
    count += 1;
  }
  return count;
}

function writeChanged(path: string, text: string): void {
  try {
    if (readFileSync(path, "utf8") === text) return;
  } catch {
    mkdirSync(dirname(path), { recursive: true });
  }
  writeFileSync(path, text);
}
