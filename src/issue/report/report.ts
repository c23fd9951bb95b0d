/** Many problems as one report: sorted by place, each with its line, its sentence and its hint. */
import type { Issue } from "../facts/issue.ts";
import type { Place } from "../facts/place.ts";
import { harmless } from "../words/harmless-text.ts";
import { sayCount } from "../words/say-count.ts";
import { sayIssue } from "../words/say-issue.ts";
import { excerpt } from "./excerpt.ts";

/** A file with more problems than this has one cause. */
const MOST_PER_FILE = 50;

/** The report, without a line end at its end. `texts` are the files by path; a file without one gets no excerpt. */
export function reportIssues(issues: readonly Issue[], texts: ReadonlyMap<string, string>): string {
  const lines = linesByPath(texts);
  const sorted = [...issues].sort(byPlace);
  const files = new Set(sorted.map(({ at }) => at.file));
  const blocks = [...files].flatMap((file) => {
    const found = sorted.filter(({ at }) => at.file === file);
    const shown = found.slice(0, MOST_PER_FILE);
    const rest = found.length - shown.length;
    const said = shown.map((issue) => block(issue, lines.get(file)));
    return rest > 0 ? [...said, `${harmless(file)}\n  … and ${rest} more in this file.`] : said;
  });
  return [...blocks, sayTotal(issues)].join("\n\n");
}

/** What is no problem and worth a word, each as in a report; "" where there is none. */
export function reportNotes(notes: readonly Issue[], texts: ReadonlyMap<string, string>): string {
  const lines = linesByPath(texts);
  const sorted = [...notes].sort(byPlace);
  return sorted.map((note) => block(note, lines.get(note.at.file))).join("\n\n");
}

/**
 * A line for each, sorted as in a report: `file:line:column: message`, as editors read them (GNU Coding Standards, 4.4,
 * "Formatting Error Messages"). `pathOf` says where a file of the content lies.
 */
export function issueLines(
  issues: readonly Issue[],
  pathOf: (file: string) => string,
): readonly string[] {
  return [...issues].sort(byPlace).map((issue) => {
    const { sentence, hint } = sayIssue(issue);
    const { file, line, column } = issue.at;
    const message = [sentence, ...(hint ? [hint] : [])].join(" ").replace(/\s*\n\s*/g, " ");
    return `${harmless(pathOf(file))}:${line}:${column}: ${message}`;
  });
}

/** How many problems there are in how many files. */
export function sayTotal(issues: readonly Issue[]): string {
  const files = new Set(issues.map(({ at }) => at.file));
  return `${sayCount(issues.length, "problem")} in ${sayCount(files.size, "file")}.`;
}

function linesByPath(texts: ReadonlyMap<string, string>): ReadonlyMap<string, readonly string[]> {
  return new Map([...texts].map(([path, text]) => [path, linesOf(text)]));
}

/** By file, line and column; by the characters' numbers alone, so that no locale has a say. */
function byPlace({ at: a }: Issue, { at: b }: Issue): number {
  if (a.file !== b.file) return a.file < b.file ? -1 : 1;
  return a.line - b.line || a.column - b.column;
}

function block(issue: Issue, lines: readonly string[] | undefined): string {
  const { sentence, hint } = sayIssue(issue);
  const rows = [...excerptOf(issue.at, lines), sentence, ...(hint ? [hint] : [])];
  return [whereWords(issue.at), ...rows.map((row) => `  ${row}`)].join("\n");
}

/** A problem of the file as a whole has no width: it names no line. */
function whereWords({ file, line, column, width }: Place): string {
  return width === 0 ? harmless(file) : `${harmless(file)}:${line}:${column}`;
}

function excerptOf(place: Place, lines: readonly string[] | undefined): readonly string[] {
  const line = place.width === 0 ? undefined : lines?.[place.line - 1];
  return line === undefined || line.trim() === "" ? [] : excerpt(line, place);
}

function linesOf(text: string): readonly string[] {
  return text.replace(/^\uFEFF/, "").split(/\r\n?|\n/);
}
