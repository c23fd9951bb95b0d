/** Starts Eleventy with this project's setup. */
import { relative } from "node:path";
import type { Content } from "./content/load-content.ts";
import type { MemoTally } from "./memo.ts";

/** The engine as `bundle-engine.mjs` loads it. */
export interface Engine {
  /** Changes with every edit of the engine or of a package it uses. */
  readonly version: string;
  /** The address of its bundle, from which another thread takes it. */
  readonly file: string;
}

/** What `.eleventy.js` is told, as global data, beside the mode. */
export interface Settings {
  /** The content folder. */
  readonly content: string;
  /** The folder of finished pieces; `.cache/pieces` where left out. */
  readonly memo?: string;
  /** What the first build need not load again: the engine that runs, and the content as it was just read. */
  readonly first?: { readonly engine: Engine; readonly content: Content };
  /** Is told after each build how many pieces were found and how many were made. */
  readonly onSettled?: (tally: MemoTally) => void;
  /** How many other threads are at work already. */
  readonly busyThreads?: number;
}

/** Once, or again after each edit. */
export type Mode = "build" | "serve";

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
