/** Watches a content folder for edits of all kinds, and for files that vanish, which Eleventy does not follow. */
import { existsSync, type FSWatcher, lstatSync, readdirSync, watch } from "node:fs";
import { join, sep } from "node:path";
import { isLeftAlone } from "../content/misplaced-file.ts";
import { systemErrorIn } from "./say-failure.ts";

/** Is called with the path of a file or a folder; `isMoved` where it came or went. */
type OnEdit = (path: string, isMoved: boolean) => void;

/** A book's folder may hold thousands of files that nobody reads: packages, what is kept, a finished book, a history. */
const UNREAD = /^\.|^node_modules$|^_site/;

/** Calls back with each edit of what may be content; until the returned function is called. Edits after the call are told. */
export function watchFolder(folder: string, onEdit: OnEdit): () => void {
  const watchers = new Map<string, FSWatcher>();
  // Node can watch a folder with all that is in it, but begins with that at some later time, and watches each file.
  const follow = (path: string) => {
    const tell = (event: string, name: string | null) => {
      if (name === null || isUnread(name)) return;
      const edited = join(path, name);
      // A folder that came, went or was replaced is another one from now on.
      leave(edited);
      if (isFolder(edited)) unlessGone(() => follow(edited));
      onEdit(edited, event === "rename");
    };
    watchers.set(path, watch(path, tell));
    for (const inner of foldersIn(path)) unlessGone(() => follow(inner));
  };
  const leave = (path: string) => {
    for (const [watched, watcher] of watchers) {
      if (watched !== path && !watched.startsWith(path + sep)) continue;
      watcher.close();
      watchers.delete(watched);
    }
  };
  follow(folder);
  return () => leave(folder);
}

/** Editors put a new file in the place of the old one: what is back by then was not removed. */
const BACK_BY_MS = 200;

/** Calls back with the path of each file that is gone for good; until the returned function is called. */
export function watchRemovals(folder: string, onRemoved: (path: string) => void): () => void {
  return watchFolder(folder, (path, isMoved) => {
    if (!isMoved || existsSync(path)) return;
    setTimeout(() => {
      if (!existsSync(path)) onRemoved(path);
    }, BACK_BY_MS);
  });
}

/** What vanishes before it is looked at is told by the folder around it. */
function unlessGone(follow: () => void): void {
  try {
    follow();
  } catch (error) {
    if (systemErrorIn(error)?.code !== "ENOENT") throw error;
  }
}

function isUnread(name: string): boolean {
  return UNREAD.test(name) || isLeftAlone(name);
}

function isFolder(path: string): boolean {
  return lstatSync(path, { throwIfNoEntry: false })?.isDirectory() ?? false;
}

function foldersIn(folder: string): readonly string[] {
  const names = readdirSync(folder).filter((name) => !isUnread(name));
  return names.map((name) => join(folder, name)).filter(isFolder);
}
