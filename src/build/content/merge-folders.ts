/** Makes one book of what several folders hold: which files it has, which names are there twice, and what comes from where. */
import { basename } from "node:path";
import type { Issue } from "../../issue/facts/issue.ts";
import type { Reading, TextFile } from "../../issue/facts/reading.ts";
import { CONTENT_FOLDERS, type ContentFolder, type Misplaced } from "./find-misplaced.ts";
import { type Root, wholeFileIssue } from "./load-file.ts";
import { byCharacters, type Folder } from "./load-folder.ts";

export type Folders = Readonly<Record<ContentFolder, Folder>>;

/** What lies in one folder of content. */
export interface LoadedRoot {
  readonly root: Root;
  readonly folders: Folders;
  readonly misplaced: Misplaced;
  /** `words.yaml`, where it has one. */
  readonly words: Reading<TextFile> | undefined;
}

/** What lies in all of them, in the order of the files' names. */
export function mergeFolders(roots: readonly LoadedRoot[]): Folders {
  const of = (name: ContentFolder) => merged(roots.map(({ folders }) => folders[name]));
  return {
    notebooks: of("notebooks"),
    patterns: of("patterns"),
    strips: of("strips"),
    setups: of("setups"),
  };
}

function merged(folders: readonly Folder[]): Folder {
  const byName = (a: TextFile, b: TextFile) => byCharacters(basename(a.path), basename(b.path));
  return {
    files: folders.flatMap(({ files }) => files).sort(byName),
    slugs: folders.flatMap(({ slugs }) => slugs).sort(byCharacters),
    issues: folders.flatMap(({ issues }) => issues),
  };
}

/** What has a wrong place in any of them. */
export function mergeMisplaced(roots: readonly LoadedRoot[]): Misplaced {
  return {
    issues: roots.flatMap(({ misplaced }) => misplaced.issues),
    meant: new Set(roots.flatMap(({ misplaced }) => [...misplaced.meant])),
  };
}

/** A problem for each file whose name a folder before its own has already. */
export function namesTwice(roots: readonly LoadedRoot[]): readonly Issue[] {
  return CONTENT_FOLDERS.flatMap((name) => {
    const first = new Map<string, string>();
    const files = roots.flatMap(({ root, folders }) =>
      folders[name].slugs.map((slug) => ({ slug, path: `${root.prefix}${name}/${slug}.md` })),
    );
    return files.flatMap(({ slug, path }): readonly Issue[] => {
      const other = first.get(slug);
      if (other === undefined) first.set(slug, path);
      if (other === undefined) return [];
      const { at } = wholeFileIssue(path, { kind: "unreadable" });
      return [{ about: "book", kind: "twice", what: WHAT[name], slug, other, at }];
    });
  });
}

const WHAT = {
  notebooks: "notebook",
  patterns: "pattern",
  strips: "strip",
  setups: "setup",
} as const satisfies Record<ContentFolder, string>;

/** Does nothing lie there that is content, or was meant to be? */
export function isBare({ folders, misplaced, words }: LoadedRoot): boolean {
  return (
    words === undefined &&
    misplaced.issues.length === 0 &&
    Object.values(folders).every(({ slugs, issues }) => slugs.length + issues.length === 0)
  );
}

/** Each file by its path in the book, which does not say in which folder it lies. */
export function byPathInBook(folders: Folders): ReadonlyMap<string, TextFile> {
  return new Map(
    CONTENT_FOLDERS.flatMap((name) =>
      folders[name].files.map((file) => [`${name}/${basename(file.path)}`, file] as const),
    ),
  );
}
