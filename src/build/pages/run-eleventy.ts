/** Starts Eleventy with this project's setup. */
import { relative } from "node:path";
import type { CacheTally } from "../artifacts/cache/cache.ts";
import type { Caches } from "../artifacts/caches.ts";
import type { Workers } from "../artifacts/prebuild/start-workers.ts";
import type { Engine } from "../bundle/loaded-engine.ts";
import type { Content } from "../content/load-content.ts";
import type { NamedFolder } from "../content/open-packs.ts";
import { openPageParts, type PageParts } from "./page-parts.ts";
import type { ServedPages } from "./served-pages.ts";

/** The engine that runs, the content as it was just read, its finished artifacts, and the threads that make the others. */
export interface First {
  readonly engine: Engine;
  readonly content: Content;
  readonly caches: Caches;
  readonly workers: Workers;
}

/** How often a book is made: once, or again after each edit. */
type Mode = "build" | "serve";

/** What `.eleventy.js` is told, as global data, beside the mode. */
export interface Settings {
  /** The content folder. */
  readonly content: string;
  /** Folders to build on that `book.yaml` does not name. */
  readonly packs?: readonly NamedFolder[];
  /** Where finished artifacts lie. */
  readonly cache?: string;
  /** What the first build need not load again, and the workers that are at it already. */
  readonly first?: First;
  /** The IP address that it is served at. */
  readonly host?: string;
  /** Which pages are written: a part of a large book, or while serving those that somebody has opened. */
  readonly pages: PageParts | ServedPages;
  /** Is told after each build how many artifacts were found and how many were made. */
  readonly onSettled?: (tally: CacheTally) => void;
}

export interface EleventyRun {
  readonly project: string;
  readonly output: string;
  readonly settings: Settings;
  readonly mode: Mode;
}

/** An Eleventy that is ready to write or to watch. Imported here, so that a check does not wait for it. */
export async function openEleventy({ project, output, settings, mode }: EleventyRun) {
  const { Eleventy } = await import("@11ty/eleventy");
  const eleventy = new Eleventy("site", relative(project, output), {
    configPath: ".eleventy.js",
    quietMode: true,
    runMode: mode,
    config: (config) => config.addGlobalData("settings", { ...settings, mode }),
  });
  if (mode === "build") eleventy.disableLogger();
  await eleventy.init();
  return eleventy;
}

interface BuildRun extends Omit<EleventyRun, "mode" | "settings"> {
  readonly settings: Omit<Settings, "pages">;
}

/** Writes the whole book, so many pages of patterns at once. */
export async function writeBook(run: BuildRun, pagesAtOnce?: number): Promise<void> {
  const pages = openPageParts(pagesAtOnce);
  const eleventy = await openEleventy({
    ...run,
    settings: { ...run.settings, pages },
    mode: "build",
  });
  await eleventy.write();
  while (pages.hasMore()) {
    // As it does itself before it writes again what is edited.
    await eleventy.restart();
    await eleventy.init();
    await eleventy.write();
  }
}
