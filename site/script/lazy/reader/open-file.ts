/** What a file that someone opens in the page holds: a notebook, a strip or a set-up, read as the build reads them. */
import type { Issue } from "../../../../src/issue/facts/issue.ts";
import type { Reading, TextFile } from "../../../../src/issue/facts/reading.ts";
import type { Notebook } from "../../../../src/notebook/notebook.ts";
import { takenTitles, unknownIn } from "../../../../src/recipe/chosen.ts";
import type { SetupReading, SetupRecipe } from "../../../../src/recipe/setup-recipe.ts";
import type { StripReading, StripRecipe } from "../../../../src/recipe/strip-recipe.ts";
import { utf8Text } from "../../../../src/source/front-matter/utf8-text.ts";
import { slugFor } from "../../../../src/view/fields/slug-for.ts";

export type Opened =
  | { readonly kind: "notebook"; readonly notebook: Notebook }
  | { readonly kind: "strip"; readonly strip: StripRecipe }
  /** Whether there are such layouts is for its page to say. */
  | { readonly kind: "setup"; readonly setup: SetupRecipe }
  /** The build's report of what is wrong with it. */
  | { readonly kind: "report"; readonly report: string };

/** A file as a browser hands it over. */
export interface PickedFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** The build's own readers and the words of its report. */
export interface FileReaders {
  readNotebook(file: TextFile): Reading<Notebook>;
  readStripRecipe(file: TextFile): StripReading;
  readSetup(file: TextFile): SetupReading;
  reportIssues(issues: readonly Issue[], texts: ReadonlyMap<string, string>): string;
}

/** The build refuses larger files, too. */
export const MOST_KIB = 256;

/** The thing that it is, or the report. `known` are the slugs of the book's patterns. */
export function openedFile(
  file: PickedFile,
  reader: FileReaders,
  known: ReadonlySet<string>,
): Opened {
  const slug = slugFor(file.name.replace(/\.[^.]*$/, ""), { fallback: "file", taken: [] });
  const text = textOf(file);
  const path = (folder: string) => `${folder}/${slug}.md`;
  if (typeof text !== "string") return reported(reader, [text], new Map());
  if (isStrip(text)) {
    const source = { path: path("strips"), text };
    const reading = withKnown(reader.readStripRecipe(source), known);
    return reading.ok
      ? { kind: "strip", strip: reading.value }
      : reported(reader, reading.issues, textsOf(source));
  }
  if (isSetup(text)) {
    const source = { path: path("setups"), text };
    const reading = reader.readSetup(source);
    return reading.ok
      ? { kind: "setup", setup: reading.value }
      : reported(reader, reading.issues, textsOf(source));
  }
  const source = { path: path("notebooks"), text };
  const reading = reader.readNotebook(source);
  return reading.ok
    ? { kind: "notebook", notebook: reading.value }
    : reported(reader, reading.issues, textsOf(source));
}

/** Only a strip says what it carries. */
function isStrip(text: string): boolean {
  return /^(across|down)[ \t]*:/m.test(text) && !/^paper[ \t]*:/m.test(text);
}

/** Only a set-up has pages; a pattern has one. */
function isSetup(text: string): boolean {
  return /^pages[ \t]*:/m.test(text) && !/^paper[ \t]*:/m.test(text);
}

function withKnown(reading: StripReading, known: ReadonlySet<string>): StripReading {
  const { named, divisions } = reading;
  const patterns = [...known];
  const strangers = [...unknownIn(named, "pattern", patterns), ...takenTitles(divisions, patterns)];
  const issues = [...(reading.ok ? [] : reading.issues), ...strangers];
  return issues.length > 0 ? { ok: false, issues, named, divisions } : reading;
}

/** The text, or why there is none. */
function textOf({ name, bytes }: PickedFile): string | Issue {
  const at = { file: name, line: 1, column: 1, width: 0 };
  if (bytes.length > MOST_KIB * 1024)
    return { about: "file", kind: "too-large", limitKib: MOST_KIB, at };
  const read = utf8Text(bytes);
  if (read.ok) return read.text;
  const { line, column } = read;
  return { about: "file", kind: "not-utf8", at: { file: name, line, column, width: 1 } };
}

function textsOf({ path, text }: TextFile): ReadonlyMap<string, string> {
  return new Map([[path, text]]);
}

function reported(
  reader: FileReaders,
  issues: readonly Issue[],
  texts: ReadonlyMap<string, string>,
): Opened {
  return { kind: "report", report: reader.reportIssues(issues, texts) };
}
