/** One name for all that goes into a book: while nothing of it changes, two builds are the same and so is their name. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { keyOf } from "../artifacts/cache/cache.ts";
import type { Content } from "../content/load-content.ts";
import { filesIn } from "./files-in.ts";

/** The folders and files beside the engine that a build reads; the engine's own version stands for `src`. */
const FOLDERS = ["layouts", "site", "src/build"];
const FILES = [".eleventy.js", "package-lock.json"];

export interface BuildSources {
  readonly content: Content;
  readonly project: string;
  /** The engine's version. */
  readonly version: string;
}

/** Twenty hexadecimal digits. */
export function buildVersion({ content, project, version }: BuildSources): string {
  const paths = FOLDERS.flatMap((folder) =>
    filesIn(join(project, folder)).map((path) => `${folder}/${path}`),
  );
  const files = [...paths, ...FILES].flatMap((path) => [
    path,
    readFileSync(join(project, path), "latin1"),
  ]);
  return keyOf([version, ...[...content.texts].flat(), ...files]).slice(0, 20);
}
