/** The files that lie beside the pages, and putting them there. */
import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import type { NotebookView } from "../../view/notebook/notebook-view.ts";
import type { PatternView } from "../../view/pattern/pattern-view.ts";

/** The path is from the book's root, with forward slashes. */
export interface SideFile {
  readonly path: string;
  readonly text: string;
}

/** A file that is about all of a book, and so is another one after each edit: it is made when somebody asks for it. */
export interface ListFile {
  readonly path: string;
  text(): string;
}

/** Made at most once. */
export function listFile(path: string, make: () => string): ListFile {
  let made: string | undefined;
  return {
    path,
    text: () => {
      made ??= make();
      return made;
    },
  };
}

/** What lies beside the page of a pattern on a notebook. */
export function patternFiles(folder: string, artifact: PatternView): readonly SideFile[] {
  return [
    { path: `${folder}page.svg`, text: artifact.pageSvg },
    { path: `${folder}thumb.svg`, text: artifact.thumbSvg },
    { path: `${folder}strip.svg`, text: artifact.stripSvg },
    { path: `${folder}plan.json`, text: artifact.planJson },
  ];
}

/** What lies beside the page of a notebook. */
export function notebookFiles(folder: string, artifact: NotebookView): readonly SideFile[] {
  return [
    { path: `${folder}grid.svg`, text: artifact.gridSvg },
    { path: `${folder}thumb.svg`, text: artifact.thumbSvg },
    { path: `${folder}parts.svg`, text: artifact.partsSvg },
    { path: `${folder}notebook.json`, text: artifact.notebookJson },
  ];
}

/** Writes files below a folder. */
export function writeSideFiles(folder: string, files: Iterable<SideFile>): void {
  const made = new Set<string>();
  for (const { path, text } of files) {
    const target = join(folder, path);
    const parent = dirname(target);
    if (!made.has(parent)) mkdirSync(parent, { recursive: true });
    made.add(parent);
    writeFileSync(target, text);
  }
}
