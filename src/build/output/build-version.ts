/** One name for all that goes into a book: while nothing of it changes, two builds are the same and so is their name. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { keyOf } from "../artifacts/cache/cache.ts";
import type { Engine } from "../bundle/loaded-engine.ts";
import type { Content } from "../content/load-content.ts";
import { filesIn } from "./files-in.ts";

/** Where the project keeps what pages are made with, besides the content. Scripts of pages use sources that the engine does not. */
const FOLDERS = ["layouts", "site", "src"];
const FILES = [".eleventy.js", "package-lock.json"];

export interface BuildSources {
  readonly content: Content;
  readonly project: string;
  readonly engine: Engine;
}

/** Twenty hexadecimal digits. */
export function buildVersion({ content, ...program }: BuildSources): string {
  const { version } = program.engine;
  return keyOf([version, ...[...content.texts].flat(), siteKey(program)]).slice(0, 20);
}

/** Changes with everything in the project that pages are made with; its npm package has brought it along. */
export function siteKey({ project, engine }: Omit<BuildSources, "content">): string {
  if (engine.siteKey !== undefined) return engine.siteKey;
  const paths = FOLDERS.flatMap((folder) =>
    filesIn(join(project, folder)).map((path) => `${folder}/${path}`),
  );
  const files = [...FILES, ...paths].flatMap((path) => [
    path,
    readFileSync(join(project, path), "latin1"),
  ]);
  return keyOf(files);
}
