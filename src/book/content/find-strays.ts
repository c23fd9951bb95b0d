/** Finds what an author probably meant as content, and put where nothing is read. */
import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import { nearest } from "../../problem/nearest.ts";
import type { Problem } from "../../problem/problem.ts";
import { type Root, wholeFileProblem } from "./load-file.ts";
import { isMeant } from "./load-folder.ts";

const FOLDERS = ["notebooks", "patterns", "strips"];

/** Folders with nearly the right name, folders in folders, and recipes that lie beside the folders. By their paths. */
export async function strayFiles(root: Root): Promise<readonly Problem[]> {
  const entries = await entriesOf(root.folder);
  const found = await Promise.all([
    ...FOLDERS.map((folder) => insideOf(root, folder)),
    ...entries.map((entry) =>
      entry.isFolder ? misspelt(root, entry.name) : besideFolders(root, entry.name),
    ),
  ]);
  return found.flat();
}

/** Only the folder itself is read; one inside may hold pictures, but no Markdown. */
async function insideOf(root: Root, folder: string): Promise<readonly Problem[]> {
  const inner = (await entriesOf(join(root.folder, folder))).filter(({ isFolder }) => isFolder);
  const strays = await Promise.all(
    inner.map(async ({ name }) => {
      const path = `${folder}/${name}`;
      return (await holdsContent(root, path)) ? [notRead(path, "folder", folder)] : [];
    }),
  );
  return strays.flat();
}

async function misspelt(root: Root, name: string): Promise<readonly Problem[]> {
  if (FOLDERS.includes(name)) return [];
  const home = nearest(name.toLowerCase(), FOLDERS);
  // A folder of notes is nobody's misspelt notebooks.
  if (!home || Math.abs(home.length - name.length) > 2) return [];
  return (await holdsContent(root, name)) ? [notRead(name, "folder", home)] : [];
}

/** A text that begins as all content does. Other texts may lie there, such as a note to the next author. */
async function besideFolders(root: Root, name: string): Promise<readonly Problem[]> {
  if (!/\.(md|markdown)$/i.test(name)) return [];
  const text = await readFile(join(root.folder, name), "utf8").catch(() => "");
  return /^\uFEFF?---\s*\n/.test(text) ? [notRead(name, "file")] : [];
}

async function holdsContent(root: Root, path: string): Promise<boolean> {
  const entries = await entriesOf(join(root.folder, path));
  return entries.some(({ name, isFolder }) => !isFolder && isMeant(name));
}

interface Entry {
  readonly name: string;
  readonly isFolder: boolean;
}

/** All that is not hidden, by name; nothing where it cannot be looked at. */
async function entriesOf(folder: string): Promise<readonly Entry[]> {
  const entries = await readdir(folder, { withFileTypes: true }).catch(() => []);
  return entries
    .filter(({ name }) => !name.startsWith("."))
    .map((entry) => ({ name: entry.name, isFolder: entry.isDirectory() }))
    .sort((a, b) => (a.name < b.name ? -1 : 1));
}

function notRead(path: string, what: "folder" | "file", home?: string): Problem {
  return wholeFileProblem(path, { kind: "not-read", what, ...(home && { home }) });
}
