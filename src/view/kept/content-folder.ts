/** All that is kept as one content folder: what it carries of the book comes along, so that it builds as it is. */
import { strToU8, zipSync } from "fflate";
import { WEEKDAY_WORDS } from "../../calendar/calendar.ts";
import { writeUtcOffset } from "../../calendar/utc-offset.ts";
import type { TextFile } from "../../issue/facts/reading.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import { writeNotebook } from "../../notebook/write-notebook.ts";
import type { When } from "../../plan/when.ts";
import { readSetup } from "../../recipe/read/read-setup.ts";
import { readStripRecipe } from "../../recipe/read/read-strip-recipe.ts";
import { type KeptFile, keptPath, kindOf } from "./kept-file.ts";
import { type ContentFile, readContentFiles } from "./read-content-files.ts";

export interface FolderQuestion {
  readonly files: readonly KeptFile[];
  /** The keeper's, and a pattern of the book: for a folder that would be without. */
  readonly notebook: Notebook;
  readonly pattern: string;
  /** The patterns of the book as written, by slug. */
  readonly texts: Readonly<Record<string, string>>;
  readonly when?: When;
  readonly utcOffset?: number;
}

export interface ContentFolder {
  readonly files: readonly TextFile[];
  /** Kept files that would not build: a strip whose pattern was removed. */
  readonly leftOut: readonly KeptFile[];
  /** Slugs of the book's patterns that come along. */
  readonly ofBook: readonly string[];
}

/** The folder's files, `book.yaml` first. */
export function contentFolder(question: FolderQuestion): ContentFolder {
  const { files, texts, pattern } = question;
  const own = withNotebook(files, question.notebook);
  const isKept = (slug: string) => own.some(({ path }) => path === keptPath("patterns", slug));
  const needed = [...new Set(files.flatMap(namedBy))];
  const hasPattern = needed.length > 0 || files.some(({ path }) => kindOf(path) === "patterns");
  const ofBook = (hasPattern ? needed : [pattern]).filter(
    (slug) => !isKept(slug) && texts[slug] !== undefined,
  );
  const borrowed = ofBook.map((slug) => ({
    path: keptPath("patterns", slug),
    text: texts[slug] ?? "",
  }));
  const all = [...own, ...borrowed];
  const good = allGoodOf(all, question);
  return {
    files: [
      { path: "book.yaml", text: bookText(question) },
      ...good.map(({ path, text }) => ({ path, text })),
    ],
    leftOut: all.filter(({ path }) => !good.some((one) => one.path === path)),
    ofBook,
  };
}

function withNotebook(files: readonly KeptFile[], notebook: Notebook): readonly KeptFile[] {
  if (files.some(({ path }) => kindOf(path) === "notebooks")) return files;
  const path = keptPath("notebooks", notebook.slug);
  return [{ path, text: writeNotebook(notebook) }, ...files];
}

function namedBy(file: KeptFile): readonly string[] {
  const kind = kindOf(file.path);
  if (kind === "strips") return readStripRecipe(file).named.map(({ slug }) => slug);
  return kind === "setups" ? readSetup(file).named.map(({ slug }) => slug) : [];
}

/** Without a file that is left out another may not build any more, and so on. */
function allGoodOf(files: readonly KeptFile[], question: FolderQuestion): readonly ContentFile[] {
  const good = goodOf(files, question);
  return good.length === files.length ? good : allGoodOf(good, question);
}

/** Those that the build takes, with nothing but the folder around them. */
function goodOf(
  files: readonly KeptFile[],
  { when, utcOffset }: FolderQuestion,
): readonly ContentFile[] {
  const calendar = { ...(when && { when }), ...(utcOffset !== undefined && { utcOffset }) };
  const book = { recipes: [], notebooks: [], ...calendar };
  return readContentFiles(files, { book, kept: [] }).files;
}

function bookText({ when, utcOffset }: FolderQuestion): string {
  const week = WEEKDAY_WORDS[(when?.rule.firstWeekday ?? 1) - 1];
  const calendar = [
    ...(when
      ? [`week: ${week}`, `weekOne: ${when.rule.weekOne}`, `language: ${when.names.language}`]
      : []),
    ...(utcOffset === undefined ? [] : [`utcOffset: "${writeUtcOffset(utcOffset)}"`]),
  ];
  const lines = calendar.length > 0 ? `calendar: {${calendar.join(", ")}}\n` : "";
  return `title: My layouts\n${lines}`;
}

/** The oldest day that a zip can say (APPNOTE.TXT 4.4.6): when the files were made is nobody's business. */
const NO_DAY = "1980-01-01T12:00:00";

/** The zip's bytes; the folder's files lie at its top. */
export function writeZip(files: readonly TextFile[]): Uint8Array {
  const entries = files.map(({ path, text }) => [path, strToU8(text)] as const);
  return zipSync(Object.fromEntries(entries), { level: 9, mtime: NO_DAY });
}
