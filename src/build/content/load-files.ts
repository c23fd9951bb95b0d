/** What lies on disk in a content folder and in those that it builds on, as the files of one book, before anything is understood. */
import { basename } from "node:path";
import type { Issue } from "../../issue/facts/issue.ts";
import type { TextFile } from "../../issue/facts/reading.ts";
import type { BookReading } from "../../recipe/book-file.ts";
import { NAMES_NOTHING, readBook } from "../../recipe/read/read-book.ts";
import {
  BOOK,
  CONTENT_FOLDERS,
  type ContentFolder,
  findMisplaced,
  type Misplaced,
} from "./find-misplaced.ts";
import { loadFile, type Root, wholeFileIssue } from "./load-file.ts";
import { byCharacters, type Folder, loadFolder } from "./load-folder.ts";
import { badPack, type NamedFolder, openPacks, type Pack } from "./open-packs.ts";

export type Folders = Readonly<Record<ContentFolder, Folder>>;

export interface BookFiles {
  readonly book: BookReading;
  /** Of all folders together, in the order of the files' names. */
  readonly folders: Folders;
  readonly misplaced: Misplaced;
  readonly packs: readonly Pack[];
  /** What is wrong with the folders to build on, and between them. */
  readonly issues: readonly Issue[];
  /** What they say in vain. */
  readonly notes: readonly Issue[];
  /** The text of each file by its path, as it is told. */
  readonly texts: ReadonlyMap<string, string>;
  /** The same by its path in the book, which does not say in which folder it lies; without what folders to build on say of themselves. */
  readonly bookTexts: ReadonlyMap<string, string>;
  /** By a file's path in the book, the title of the folder that it comes from; none for the content's own. */
  readonly origins: ReadonlyMap<string, string>;
}

/** All that is there; `others` are folders to build on that `book.yaml` does not name. */
export async function loadFiles(root: Root, others: readonly NamedFolder[]): Promise<BookFiles> {
  const bookFile = await loadFile(root, BOOK);
  const book = bookFile.ok ? readBook(bookFile.value) : { ...bookFile, ...NAMES_NOTHING };
  const opened = await openPacks(root, book.packs, others);
  const packs = await Promise.all(
    opened.packs.map(async (pack) => ({ pack, ...(await loadRoot(pack.root, [], [])) })),
  );
  const isThere = (name: ContentFolder) => packs.some((one) => one.folders[name].slugs.length > 0);
  const names = book.packs.map(({ slug }) => slug);
  const needed = (["notebooks", "patterns"] as const).filter((name) => !isThere(name));
  const own = await loadRoot(root, names, needed);
  // The content's own come last: a name is the other folder's until it is used a second time.
  const all = [...packs, own];
  const folders = eachFolder((name) => merged(all.map((one) => one.folders[name])));
  const bookFiles = bookFile.ok ? [bookFile.value] : [];
  const files = [...bookFiles, ...Object.values(folders).flatMap((one) => one.files)];
  return {
    book,
    folders,
    misplaced: {
      issues: all.flatMap(({ misplaced }) => misplaced.issues),
      meant: new Set(all.flatMap(({ misplaced }) => [...misplaced.meant])),
    },
    packs: opened.packs,
    issues: [
      ...opened.issues,
      ...packs.filter(isEmpty).map(({ pack }) => badPack({ ...pack, why: "empty" })),
      ...CONTENT_FOLDERS.flatMap((name) => twice(name, all)),
    ],
    notes: opened.notes,
    texts: textsOf([...files, ...opened.files], ({ path }) => path),
    bookTexts: new Map([
      ...textsOf(bookFiles, () => BOOK),
      ...CONTENT_FOLDERS.flatMap((name) => [
        ...textsOf(folders[name].files, ({ path }) => inBook(name, path)),
      ]),
    ]),
    origins: new Map(packs.flatMap(originsIn)),
  };
}

interface LoadedRoot {
  readonly root: Root;
  readonly folders: Folders;
  readonly misplaced: Misplaced;
}

async function loadRoot(
  root: Root,
  packs: readonly string[],
  needed: readonly ContentFolder[],
): Promise<LoadedRoot> {
  const load = (name: ContentFolder) => loadFolder(root, name, needed.includes(name));
  const [misplaced, notebooks, patterns, strips, setups] = await Promise.all([
    findMisplaced(root, packs),
    load("notebooks"),
    load("patterns"),
    load("strips"),
    load("setups"),
  ]);
  return { root, misplaced, folders: { notebooks, patterns, strips, setups } };
}

function eachFolder(folder: (name: ContentFolder) => Folder): Folders {
  return {
    notebooks: folder("notebooks"),
    patterns: folder("patterns"),
    strips: folder("strips"),
    setups: folder("setups"),
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

/** A problem for each file with a name that a folder before its own has already. */
function twice(name: ContentFolder, roots: readonly LoadedRoot[]): readonly Issue[] {
  const first = new Map<string, string>();
  return roots.flatMap(({ root, folders }) =>
    folders[name].slugs.flatMap((slug): readonly Issue[] => {
      const path = `${root.prefix}${name}/${slug}.md`;
      const other = first.get(slug);
      if (other === undefined) first.set(slug, path);
      if (other === undefined) return [];
      const { at } = wholeFileIssue(path, { kind: "unreadable" });
      return [{ about: "book", kind: "twice", what: WHAT[name], slug, other, at }];
    }),
  );
}

const WHAT = {
  notebooks: "notebook",
  patterns: "pattern",
  strips: "strip",
  setups: "setup",
} as const satisfies Record<ContentFolder, string>;

function isEmpty({ folders, misplaced }: LoadedRoot): boolean {
  const isBare = ({ slugs, issues }: Folder) => slugs.length + issues.length === 0;
  return misplaced.issues.length === 0 && Object.values(folders).every(isBare);
}

function originsIn({ pack, folders }: LoadedRoot & { readonly pack: Pack }) {
  return CONTENT_FOLDERS.flatMap((name) =>
    folders[name].files.map(({ path }) => [inBook(name, path), pack.title] as const),
  );
}

function inBook(name: ContentFolder, path: string): string {
  return `${name}/${basename(path)}`;
}

function textsOf(
  files: readonly TextFile[],
  key: (file: TextFile) => string,
): ReadonlyMap<string, string> {
  return new Map(files.map((file) => [key(file), file.text]));
}
