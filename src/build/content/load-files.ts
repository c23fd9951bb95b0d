/** What lies on disk in a content folder and in those that it builds on, as the files of one book, before anything is understood. */
import type { Issue } from "../../issue/facts/issue.ts";
import type { Reading, TextFile } from "../../issue/facts/reading.ts";
import type { BookReading } from "../../recipe/book-file.ts";
import { NAMES_NOTHING, readBook } from "../../recipe/read/read-book.ts";
import {
  BOOK,
  type ContentFolder,
  findMisplaced,
  type Misplaced,
  WORDS,
} from "./find-misplaced.ts";
import { loadFile, type Root } from "./load-file.ts";
import { loadFolder } from "./load-folder.ts";
import {
  byPathInBook,
  type Folders,
  isBare,
  type LoadedRoot,
  mergeFolders,
  mergeMisplaced,
  namesTwice,
} from "./merge-folders.ts";
import { badPack, type OtherFolders, openPacks, type Pack, type Packs } from "./open-packs.ts";

export interface BookFiles {
  readonly book: BookReading;
  /** Of all folders together, in the order of the files' names. */
  readonly folders: Folders;
  readonly misplaced: Misplaced;
  /** Each folder's `words.yaml`. */
  readonly words: readonly TextFile[];
  readonly packs: readonly Pack[];
  /** What is wrong with the folders to build on, and between them. */
  readonly issues: readonly Issue[];
  /** What they say in vain. */
  readonly notes: readonly Issue[];
  /** The text of each file by its path, as it is told. */
  readonly texts: ReadonlyMap<string, string>;
  /** The same by its path in the book; without what folders to build on say of themselves. */
  readonly bookTexts: ReadonlyMap<string, string>;
  /** By a file's path in the book, the title of the folder that it comes from; none for the content's own. */
  readonly origins: ReadonlyMap<string, string>;
}

/** All that is there. */
export async function loadFiles(root: Root, others: OtherFolders): Promise<BookFiles> {
  const bookFile = await loadFile(root, BOOK);
  const book = bookFile.ok ? readBook(bookFile.value) : { ...bookFile, ...NAMES_NOTHING };
  const opened = await openPacks(root, book.packs, others);
  const packs = await Promise.all(opened.packs.map((pack) => loadRoot(pack.root, [], [])));
  const isThere = (name: ContentFolder) => packs.some((one) => one.folders[name].slugs.length > 0);
  const names = book.packs.map(({ slug }) => slug);
  const needed = (["notebooks", "patterns"] as const).filter((name) => !isThere(name));
  const own = await loadRoot(root, names, needed);
  return { book, ...oneBook({ bookFile, opened, packs, own }) };
}

/** All that was read; the packs in the order in which they were opened. */
interface Loaded {
  readonly bookFile: Reading<TextFile>;
  readonly opened: Packs;
  readonly packs: readonly LoadedRoot[];
  readonly own: LoadedRoot;
}

function oneBook({ bookFile, opened, packs, own }: Loaded): Omit<BookFiles, "book"> {
  // The content's own come last: a name is the other folder's until it is used a second time.
  const all = [...packs, own];
  const folders = mergeFolders(all);
  const inBook: readonly (readonly [string, TextFile])[] = [
    ...(bookFile.ok ? [[BOOK, bookFile.value] as const] : []),
    ...byPathInBook(folders),
  ];
  const readWords = all.flatMap(({ words }) => words ?? []);
  const words = readWords.flatMap((one) => (one.ok ? [one.value] : []));
  const files = [...inBook.map(([, file]) => file), ...opened.files, ...words];
  const bare = opened.packs.filter((_, index) => packs[index] && isBare(packs[index]));
  return {
    folders,
    misplaced: mergeMisplaced(all),
    words,
    packs: opened.packs,
    issues: [
      ...opened.issues,
      ...readWords.flatMap((one) => (one.ok ? [] : one.issues)),
      ...bare.map((pack) => badPack({ ...pack, why: "empty" })),
      ...namesTwice(all),
    ],
    notes: opened.notes,
    texts: new Map(files.map(({ path, text }) => [path, text])),
    bookTexts: new Map([
      ...inBook.map(([path, { text }]) => [path, text] as const),
      ...words.map(({ path, text }) => [path, text] as const),
    ]),
    origins: new Map(
      packs.flatMap((pack, index) =>
        [...byPathInBook(pack.folders).keys()].map(
          (path) => [path, opened.packs[index]?.title ?? ""] as const,
        ),
      ),
    ),
  };
}

async function loadRoot(
  root: Root,
  packs: readonly string[],
  needed: readonly ContentFolder[],
): Promise<LoadedRoot> {
  const load = (name: ContentFolder) => loadFolder(root, name, needed.includes(name));
  const [misplaced, words, notebooks, patterns, strips, setups] = await Promise.all([
    findMisplaced(root, packs),
    loadWords(root),
    load("notebooks"),
    load("patterns"),
    load("strips"),
    load("setups"),
  ]);
  return { root, misplaced, words, folders: { notebooks, patterns, strips, setups } };
}

/** Undefined where there is none: nobody needs it. */
async function loadWords(root: Root): Promise<Reading<TextFile> | undefined> {
  const file = await loadFile(root, WORDS);
  const isMissing = (issue: Issue) => issue.about === "file" && issue.kind === "missing";
  return file.ok || !file.issues.some(isMissing) ? file : undefined;
}
