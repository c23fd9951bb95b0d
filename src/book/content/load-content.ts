/** Reads a whole content folder: every file checked, every name in it found, all problems at once. */
import { realpath } from "node:fs/promises";
import type { Notebook } from "../../notebook/notebook.ts";
import { readNotebook } from "../../notebook/read-notebook.ts";
import type { Problem } from "../../problem/problem.ts";
import type { Reading, TextFile } from "../../problem/reading.ts";
import type { BookFile } from "../../recipe/book-file.ts";
import { readBook } from "../../recipe/read-book.ts";
import { readRecipe } from "../../recipe/read-recipe.ts";
import { readStripRecipe } from "../../recipe/read-strip-recipe.ts";
import type { Recipe } from "../../recipe/recipe.ts";
import type { StripRecipe } from "../../recipe/strip-recipe.ts";
import { chosenOf, unknownIn, unlistedOf } from "./load-chosen.ts";
import { loadFile, type Root, wholeFileProblem } from "./load-file.ts";
import { type Folder, loadFolder } from "./load-folder.ts";
import { marginClashes } from "./load-margins.ts";

export interface Content {
  readonly book: BookFile;
  /** The book's, in its order. */
  readonly notebooks: readonly Notebook[];
  /** The book's: in its order where it lists them, else by slug. */
  readonly recipes: readonly Recipe[];
  /** Patterns that have no page in the book, but strips carry them. By slug. */
  readonly unlisted: readonly Recipe[];
  /** By slug. */
  readonly strips: readonly StripRecipe[];
  /** Every file that was read, by its path. */
  readonly texts: ReadonlyMap<string, string>;
}

export type ContentReading =
  | { readonly ok: true; readonly value: Content }
  | {
      readonly ok: false;
      readonly problems: readonly Problem[];
      readonly texts: ReadonlyMap<string, string>;
    };

/** The content of a folder, or every problem in it. Files that the book leaves out are checked, too. */
export async function loadContent(folder: string): Promise<ContentReading> {
  const root = await rootOf(folder);
  if (!root) {
    const problems = [wholeFileProblem(folder, { kind: "missing", what: "folder" })];
    return { ok: false, problems, texts: new Map() };
  }
  const [bookFile, notebooks, patterns, strips] = await Promise.all([
    loadFile(root, BOOK),
    loadFolder(root, "notebooks", true),
    loadFolder(root, "patterns", true),
    loadFolder(root, "strips", false),
  ]);
  return checked({ bookFile, notebooks, patterns, strips });
}

const BOOK = "book.yaml";

/** What lies on disk, before anything is understood. */
interface Files {
  readonly bookFile: Reading<TextFile>;
  readonly notebooks: Folder;
  readonly patterns: Folder;
  readonly strips: Folder;
}

function checked({ bookFile, notebooks, patterns, strips }: Files): ContentReading {
  const book = bookFile.ok ? readBook(bookFile.value) : { ...bookFile, chosen: ALL };
  const notebook = gathered(notebooks, notebooks.files.map(readNotebook));
  const recipe = gathered(patterns, patterns.files.map(readRecipe));
  const stripReadings = strips.files.map(readStripRecipe);
  const strip = gathered(strips, stripReadings);
  const named = stripReadings.flatMap((reading) => reading.named);
  const booksOfBook = chosenOf(book.chosen.notebooks, notebook.values);
  const recipesOfBook = chosenOf(book.chosen.patterns, recipe.values);
  const unlisted = unlistedOf(named, recipesOfBook, recipe.values);
  const problems = [
    ...(book.ok ? [] : book.problems),
    ...notebook.problems,
    ...recipe.problems,
    ...strip.problems,
    ...unknownIn(book.chosen.notebooks, "notebook", notebooks.slugs),
    ...unknownIn(book.chosen.patterns, "pattern", patterns.slugs),
    ...unknownIn(named, "pattern", patterns.slugs),
    ...[...recipesOfBook, ...unlisted].flatMap((one) => marginClashes(one, booksOfBook)),
  ];
  const files = [notebooks, patterns, strips].flatMap((one) => one.files);
  const all = bookFile.ok ? [bookFile.value, ...files] : files;
  const texts = new Map(all.map(({ path, text }) => [path, text]));
  if (!book.ok || problems.length > 0) return { ok: false, problems, texts };
  const value: Content = {
    book: book.value,
    notebooks: booksOfBook,
    recipes: recipesOfBook,
    unlisted,
    strips: strip.values,
    texts,
  };
  return { ok: true, value };
}

const ALL = { notebooks: "all", patterns: "all" } as const;

function gathered<T>(
  folder: Folder,
  readings: readonly Reading<T>[],
): { readonly values: readonly T[]; readonly problems: readonly Problem[] } {
  return {
    values: readings.flatMap((reading) => (reading.ok ? [reading.value] : [])),
    problems: [
      ...folder.problems,
      ...readings.flatMap((reading) => (reading.ok ? [] : reading.problems)),
    ],
  };
}

async function rootOf(folder: string): Promise<Root | undefined> {
  try {
    return { folder, real: await realpath(folder) };
  } catch {
    return undefined;
  }
}
