/** Builds the demo book and a small one, once for all tests that look at them. */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { TestProject } from "vitest/node";
import { IS_SWEEP } from "../sweep/sweep-size.ts";
import { copyDemo } from "./demo-content.ts";
import { runCommand } from "./run-command.ts";
import { TINY, writeFiles } from "./tiny-content.ts";

declare module "vitest" {
  export interface ProvidedContext {
    /** The folder of the demo book as it was built. */
    book: string;
    /** The content folder that it was built from. */
    content: string;
    /** A few of its patterns and strips on the notebooks that it leaves out. */
    papers: string;
    /** The folder of the small book; who changes something takes a copy. */
    tiny: string;
  }
}

/** The gate's book has all patterns on four notebooks: usual, counted from the first dot, small and large; `npm run sweep` builds the demo as it is. */
const BOOK: Readonly<Record<string, string>> = IS_SWEEP
  ? {}
  : { notebooks: "[a5, a5-dots, a6, a4]" };

/** What the gate's book has no page of. */
const PAPERS = {
  title: "Other papers",
  notebooks: "[fine, lined, jis-b5, square, pad, b5-right, letter]",
  patterns:
    "[allotment-map, bed-plan, month-grid, ninths-page, ninths-spread, season-spread, two-row-week, week-by-the-hour, year-in-twelve]",
  strips: "[months-and-year, shed-door, trackers, weeks]",
};

export default function buildBooks(project: TestProject): () => void {
  const folder = mkdtempSync(join(tmpdir(), "spanbook-book-"));
  const build = (name: "book" | "papers" | "tiny", words: readonly string[] = []) => {
    const output = join(folder, name);
    const { code, stderr } = runCommand(["build", ...words, `--output=${output}`]);
    if (code !== 0) throw new Error(`The ${name} cannot be built:\n${stderr}`);
    project.provide(name, output);
  };
  const content = join(folder, "content");
  copyDemo(content, BOOK);
  project.provide("content", content);
  build("book", [`--content=${content}`]);
  const tiny = join(folder, "little");
  writeFiles(tiny, TINY);
  build("tiny", [`--content=${tiny}`]);
  const others = join(folder, "others");
  copyDemo(others, PAPERS);
  rmSync(join(others, "setups"), { recursive: true });
  build("papers", [`--content=${others}`]);
  return () => rmSync(folder, { recursive: true, force: true });
}
