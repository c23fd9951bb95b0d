/** A text file as people wrote it, and what reading it gives: a checked value or all its problems. */
import type { Issue } from "./issue.ts";

/** The path is relative to the content folder, with forward slashes: `patterns/seed-list.md`. */
export interface TextFile {
  readonly path: string;
  readonly text: string;
}

/** `problems` is never empty. */
export type Reading<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly issues: readonly Issue[] };

/** Takes down one problem; reading goes on so that all are told at once. */
export type Note = (issue: Issue) => void;

/** The value where nothing was noted, else the problems. */
export function readingOf<T>(value: T, issues: readonly Issue[]): Reading<T> {
  return issues.length === 0 ? { ok: true, value } : { ok: false, issues };
}
