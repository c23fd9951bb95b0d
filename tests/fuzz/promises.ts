/** What must hold of whatever is said about a file: a sentence that can be said, and a place inside the file. */
import { isDeepStrictEqual } from "node:util";
import type { Issue } from "../../src/issue/facts/issue.ts";
import type { Place } from "../../src/issue/facts/place.ts";
import { reportIssues } from "../../src/issue/report/report.ts";
import { sayIssue } from "../../src/issue/words/say-issue.ts";

/** What one case has met. */
export interface Seen {
  /** A fact that was told, such as `shape/unknown-key`. */
  readonly code: (code: string) => void;
  /** How far it came, such as `planned`. */
  readonly depth: (depth: string) => void;
  /** Does a stretch of work that a page does without a pause, and measures it where the sweep is whole. */
  readonly run: <Result>(act: () => Result) => Result;
  /** The same for what goes on from where it was, so that it cannot be done again. */
  readonly step: <Result>(act: () => Result) => Result;
}

/** Throws where a promise is broken; `words` say which. */
export function promise(isKept: boolean, words: string, about?: unknown): asserts isKept {
  if (isKept) return;
  const more = about === undefined ? "" : `: ${JSON.stringify(about)?.slice(0, 400)}`;
  throw new Error(`${words}${more}`);
}

/** Both are the same in all they hold. */
export function promiseSame(one: unknown, other: unknown, words: string): void {
  promise(isDeepStrictEqual(one, other), words, [one, other]);
}

/** What no sentence has of its own: values of ours that are none. */
const NO_VALUE = /\b(?:undefined|NaN|Infinity)\b|\[object/;
/** What somebody wrote, as it is quoted. */
const QUOTED = /“[^”]*”|`[^`]*`/g;

/** Signs that do something to the text around. */
const UNSAYABLE = /(?!\n)\p{Cc}|\p{Cs}|[\u2028\u2029\u202a-\u202e]/u;

export function promiseSaid(...texts: readonly (string | undefined)[]): void {
  for (const text of texts) {
    if (text === undefined) continue;
    promise(/^\S[\s\S]*[.:?!…]$/u.test(text), "no sentence", text);
    const isOurs = !NO_VALUE.test(text.replace(QUOTED, ""));
    promise(isOurs && !UNSAYABLE.test(text), "cannot be said", text);
  }
}

/** Every issue is of the file, in it, and can be said; the report of all is made. */
export function promiseTold(
  issues: readonly Issue[],
  { path, text }: { readonly path: string; readonly text: string },
  seen: Seen,
): void {
  promise(issues.length > 0, "refused without an issue");
  const lines = text.replace(/^\uFEFF/, "").split(/\r\n?|\n/);
  for (const issue of issues) {
    seen.code(`${issue.about}/${issue.kind}`);
    promiseInside(issue.at, path, lines);
    const first = "first" in issue ? issue.first : undefined;
    if (typeof first === "object") promiseInside(first, path, lines);
    const { sentence, hint } = sayIssue(issue);
    promiseSaid(sentence, hint);
  }
  const report = reportIssues(issues, new Map([[path, text]]));
  promise(!UNSAYABLE.test(report), "a report that cannot be shown", report);
}

function promiseInside(at: Place, path: string, lines: readonly string[]): void {
  const line = lines[at.line - 1];
  promise(at.file === path, "another file", at);
  promise(line !== undefined && Number.isInteger(at.line), "a line outside the file", at);
  const isIn = Number.isInteger(at.column) && at.column >= 1 && at.column <= line.length + 1;
  promise(isIn && Number.isInteger(at.width) && at.width >= 0, "a place outside its line", at);
}
