/** What the part that reads files gives to a page, once it is loaded: the build's own readers and their words, the writer of strips, and what changes the words of a file. */
import type { Issue } from "../../../../src/issue/facts/issue.ts";
import type { Reading, TextFile } from "../../../../src/issue/facts/reading.ts";
import type { Said } from "../../../../src/issue/words/said.ts";
import type { Recipe } from "../../../../src/recipe/recipe.ts";
import type { retyped, writtenLabels } from "../../../../src/recipe/retype.ts";
import type { StripRecipe } from "../../../../src/recipe/strip-recipe.ts";
import type { FileReaders, Opened, PickedFile } from "./open-file.ts";

export interface ReaderPart extends FileReaders {
  /** `known` are the slugs of the book's patterns. */
  openedFile(file: PickedFile, known: ReadonlySet<string>): Opened;
  readRecipe(file: TextFile): Reading<Recipe>;
  sayIssue(issue: Issue): Said;
  writeStripRecipe(recipe: StripRecipe): string;
  readonly writtenLabels: typeof writtenLabels;
  readonly retyped: typeof retyped;
}

declare global {
  interface Window {
    readonly spanbookReader?: ReaderPart;
  }
}

/** The part, loaded if it is not there yet. Rejects where its script cannot be loaded. */
export async function readerPart(
  window: Window,
  load: (name: string) => Promise<void>,
): Promise<ReaderPart> {
  await load("reader.js");
  if (window.spanbookReader) return window.spanbookReader;
  throw new Error("the part that reads is not what was expected");
}
