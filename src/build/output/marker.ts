/** The marker in a folder that a build made: which of its files are the build's own, so that nothing else is ever taken for one. */
import {
  lstatSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmdirSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { basename, join } from "node:path";
import { filesIn, foldersIn } from "./files-in.ts";

const MARKER = ".spanbook";
/** A marker on its way, so that none is ever half written. */
const DRAFT = ".spanbook.draft";

const FINISHED =
  "A book made by Spanbook. Each build replaces this folder as a whole; it will not where it finds files that are not listed here with their sizes.";

/** A process has one number and fills one folder, so that a copied marker stands for nothing. */
const growing = (pid: number) =>
  `A book that Spanbook's process ${pid} was making. When that has ended, the next build removes this folder.\n`;

/** Dropped into folders by desktops, and nobody's loss. */
const DROPPINGS = new Set([".DS_Store", "Thumbs.db", "desktop.ini"]);

/** Says of an empty folder that all that comes into it is a build's. */
export function markGrowing(folder: string, pid: number): void {
  writeMarker(folder, growing(pid));
}

/** Says of a folder that it is a finished book; its files, with the marker. */
export function markFinished(folder: string): readonly string[] {
  const files = filesIn(folder).filter((file) => file !== MARKER);
  const lines = files.map((file) => `${sizeOf(folder, file)} ${file}`);
  writeMarker(folder, [FINISHED, ...lines, ""].join("\n"));
  return [MARKER, ...files];
}

export interface Inspection {
  /** Does it carry the marker of a finished book? */
  readonly isMarked: boolean;
  /** The files that are not the book's. */
  readonly foreign: readonly string[];
}

/** Compares a folder with its own marker; without one, every file is foreign. */
export function inspectBook(folder: string): Inspection {
  const sizes = listedSizes(folder);
  const there = filesIn(folder).filter(
    (file) => !DROPPINGS.has(basename(file)) && !(sizes && [MARKER, DRAFT].includes(file)),
  );
  const strange = there.filter((file) => !sizes?.has(file));
  const listed = there.filter((file) => sizes?.has(file));
  const changed = listed.filter((file) => sizes?.get(file) !== sizeOf(folder, file));
  // A book that somebody wrote on is still a book; where most is changed, a marker lies with somebody else's files.
  const isTheBook = changed.length * 2 <= listed.length;
  return {
    isMarked: sizes !== undefined,
    foreign: isTheBook ? strange : [...strange, ...changed],
  };
}

/** Removes what a build made of a folder, and the folder where nothing else is in it. */
export function removeBook(folder: string, pid: number): void {
  const { isMarked, foreign } = inspectBook(folder);
  const isGrowing = readMarker(folder) === growing(pid);
  if (!isMarked && !isGrowing) return;
  const kept = new Set(isGrowing ? [] : foreign);
  // What is half removed is no book any more.
  if (kept.size === 0) markGrowing(folder, pid);
  removeFiles(
    folder,
    filesIn(folder).filter((file) => !kept.has(file)),
  );
}

/** The marker goes last: what is left where that is cut short is known again. */
function removeFiles(folder: string, files: readonly string[]): void {
  for (const file of files) if (file !== MARKER) rmSync(join(folder, file), { force: true });
  for (const path of foldersIn(folder)) removeEmpty(join(folder, path));
  rmSync(join(folder, MARKER), { force: true });
  removeEmpty(folder);
}

function removeEmpty(folder: string): void {
  if (readdirSync(folder).length === 0) rmdirSync(folder);
}

/** The files that a finished book's marker lists, with their sizes in bytes; undefined where there is no such marker. */
function listedSizes(folder: string): ReadonlyMap<string, number> | undefined {
  const [head, ...lines] = readMarker(folder).split("\n");
  if (head !== FINISHED) return undefined;
  const entries = lines.map((line) => /^(\d+) (.+)$/.exec(line));
  return new Map(entries.flatMap((entry) => (entry ? [[entry[2] ?? "", Number(entry[1])]] : [])));
}

function writeMarker(folder: string, text: string): void {
  writeFileSync(join(folder, DRAFT), text);
  renameSync(join(folder, DRAFT), join(folder, MARKER));
}

function readMarker(folder: string): string {
  const path = join(folder, MARKER);
  return lstatSync(path, { throwIfNoEntry: false })?.isFile() ? readFileSync(path, "utf8") : "";
}

function sizeOf(folder: string, file: string): number {
  return lstatSync(join(folder, file)).size;
}
