/** Opens the folders that a book builds on: those that its `book.yaml` names, and any that the command names. */
import { basename, join } from "node:path";
import type { BookIssue, PackFault } from "../../issue/facts/book-issue.ts";
import type { Issue } from "../../issue/facts/issue.ts";
import type { Place } from "../../issue/facts/place.ts";
import type { TextFile } from "../../issue/facts/reading.ts";
import { GENERAL } from "../../recipe/book-file.ts";
import { type PackBook, readPackBook } from "../../recipe/read/read-pack-book.ts";
import type { NamedSlug } from "../../source/schema/named-slugs.ts";
import { BOOK, CONTENT_FOLDERS } from "./find-misplaced.ts";
import { isInside, loadFile, type Root, realFolderOf } from "./load-file.ts";

/** A folder that a command names: where it lies, and how it is told. */
export interface NamedFolder {
  readonly folder: string;
  readonly shown: string;
}

/** What a book may build on beside the folders that lie in its content. */
export interface OtherFolders {
  /** Those that `book.yaml` does not name. */
  readonly packs?: readonly NamedFolder[];
  /** Where the general layouts lie that come with the program. */
  readonly general?: string;
}

/** Where they lie in the project, and in its npm package. */
export function generalIn(project: string): string {
  return join(project, "content/general");
}

/** A folder that a book builds on: its name and its place are those where it is named. */
export interface Pack {
  readonly name: string;
  readonly at: Place;
  readonly root: Root;
  /** What it calls itself, else its folder's name. */
  readonly title: string;
}

export interface Packs {
  /** In the order in which they are named; those that can be read. */
  readonly packs: readonly Pack[];
  readonly issues: readonly Issue[];
  /** What they say in vain: no problem, but worth a word. */
  readonly notes: readonly Issue[];
  readonly files: readonly TextFile[];
}

/** All of them; none is opened twice, and none that one of them names itself. */
export async function openPacks(
  content: Root,
  within: readonly NamedSlug[],
  { packs: others = [], general }: OtherFolders,
): Promise<Packs> {
  const found = await Promise.all([
    ...within.map((one) =>
      one.slug === GENERAL && general !== undefined
        ? openNamed({ name: GENERAL, at: one.at, folder: general })
        : openWithin(content, one),
    ),
    ...others.map(openOther),
  ]);
  const opened = found.flatMap((one) => ("why" in one ? [] : [one]));
  const issues = found.flatMap((one) => {
    if ("why" in one) return [badPack(one)];
    const other = sameBefore(one, content, opened);
    return other === undefined ? [] : [badPack({ ...one, why: "same", other })];
  });
  const packs = opened.filter((one) => sameBefore(one, content, opened) === undefined);
  const read = await Promise.all(packs.map(readPack));
  return {
    packs: read.map(({ pack }) => pack),
    issues: [...issues, ...read.flatMap((one) => one.issues)],
    notes: (await Promise.all(read.map((one) => notesOn(one, packs)))).flat(),
    files: read.flatMap(({ file }) => file ?? []),
  };
}

type Opened = Omit<Pack, "title">;
type Opening = Opened | (Omit<Opened, "root"> & { readonly why: PackFault });

async function openWithin(content: Root, { slug: name, at }: NamedSlug): Promise<Opening> {
  if (CONTENT_FOLDERS.some((own) => own === name)) return { name, at, why: "own" };
  const opened = await openNamed({ name, at, folder: join(content.folder, name) });
  if ("why" in opened || isInside(content, opened.root.real)) return opened;
  return { name, at, why: "leaves-folder" };
}

function openOther({ folder, shown: name }: NamedFolder): Promise<Opening> {
  return openNamed({ name, at: { file: name, line: 1, column: 1, width: 0 }, folder });
}

interface Named extends Omit<Opened, "root"> {
  readonly folder: string;
}

async function openNamed({ name, at, folder }: Named): Promise<Opening> {
  const found = await realFolderOf(folder);
  if ("why" in found) return { name, at, ...found };
  const prefix = name.endsWith("/") ? name : `${name}/`;
  return { name, at, root: { folder, real: found.real, prefix } };
}

/** The name of the folder before this one that is the same; "" for the content folder itself. */
function sameBefore(one: Opened, content: Root, opened: readonly Opened[]): string | undefined {
  if (one.root.real === content.real) return "";
  const first = opened.find(({ root }) => root.real === one.root.real);
  return first === one ? undefined : first?.name;
}

interface ReadPack {
  readonly pack: Pack;
  readonly book: PackBook;
  readonly issues: readonly Issue[];
  readonly file?: TextFile;
}

const NO_BOOK: PackBook = { ignored: [], packs: [] };

/** Its `book.yaml` may be missing. */
async function readPack(opened: Opened): Promise<ReadPack> {
  const untitled = { pack: { ...opened, title: basename(opened.root.real) }, book: NO_BOOK };
  const file = await loadFile(opened.root, BOOK);
  if (!file.ok) {
    const issues = file.issues.filter((one) => one.about !== "file" || one.kind !== "missing");
    return { ...untitled, issues };
  }
  const reading = readPackBook(file.value);
  if (!reading.ok) return { ...untitled, issues: reading.issues, file: file.value };
  const { title = untitled.pack.title } = reading.value;
  return { pack: { ...opened, title }, book: reading.value, issues: [], file: file.value };
}

/** What it builds on itself matters only where the book does not name that, too. */
async function notesOn(
  { pack, book }: ReadPack,
  packs: readonly Opened[],
): Promise<readonly Issue[]> {
  const ignored = book.ignored.map((one) => note({ ...one, folders: [] }));
  const reals = await Promise.all(
    book.packs.map(({ slug }) => realFolderOf(join(pack.root.folder, slug))),
  );
  const missed = book.packs.filter(({ slug }, index) => {
    if (slug === GENERAL) return !packs.some(({ name }) => name === GENERAL);
    const found = reals[index];
    return !(found && "real" in found && packs.some(({ root }) => root.real === found.real));
  });
  const [first] = missed;
  if (!first) return ignored;
  const folders = missed.map(({ slug }) =>
    slug === GENERAL ? slug : `${pack.root.prefix}${slug}`,
  );
  return [...ignored, note({ key: "with", at: first.at, folders })];
}

function note(fact: Omit<Of<"ignored-in-pack">, "about" | "kind">): Issue {
  return { about: "book", kind: "ignored-in-pack", ...fact };
}

/** The problem of a folder to build on. */
export function badPack({ name, at, why, other }: Omit<Of<"bad-pack">, "about" | "kind">): Issue {
  return { about: "book", kind: "bad-pack", name, at, why, ...(other ? { other } : {}) };
}

type Of<K extends BookIssue["kind"]> = Extract<BookIssue, { kind: K }>;
