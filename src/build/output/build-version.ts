/** One name for all that goes into a book: while nothing of it changes, two builds are the same and so is their name. */
import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Content } from "../content/load-content.ts";
import { filesIn } from "./output-folder.ts";

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
  const hash = createHash("sha256").update(version);
  for (const [path, text] of content.texts) hash.update(JSON.stringify([path, text]));
  const paths = FOLDERS.flatMap((folder) =>
    filesIn(join(project, folder)).map((path) => `${folder}/${path}`),
  );
  for (const path of [...paths, ...FILES]) {
    hash.update(JSON.stringify(path)).update(readFileSync(join(project, path)));
  }
  return hash.digest("hex").slice(0, 20);
}
