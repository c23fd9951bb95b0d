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
    /** A few patterns and strips of the demo on all of its notebooks, in a book that a browser opens sooner. */
    few: string;
    /** The folder of the small book; who changes something takes a copy. */
    tiny: string;
  }
}

/** The gate's book has all patterns on two notebooks; `npm run sweep` builds the demo as it is. */
const BOOK: Readonly<Record<string, string>> = IS_SWEEP ? {} : { notebooks: "[a5, a6]" };

const FEW = {
  title: "A few layouts",
  notebooks: "[a5, a5-dots, a6, pad, b5-right, letter, a4, fine, lined, jis-b5, square]",
  patterns: `[${[
    "allotment-map",
    "bed-plan",
    "month-grid",
    "month-opening",
    "month-spread",
    "ninths-page",
    "ninths-spread",
    "rain-gauge",
    "season-spread",
    "seed-list",
    "shed-wall",
    "two-row-week",
    "week-by-the-hour",
    "week-in-columns",
    "week-on-one-page",
    "year-in-twelve",
  ].join(", ")}]`,
  strips: "[everyday, lists-and-notes, months-and-year, shed-door, trackers, weeks]",
};

export default function buildBooks(project: TestProject): () => void {
  const folder = mkdtempSync(join(tmpdir(), "spanbook-book-"));
  const build = (name: "book" | "few" | "tiny", words: readonly string[] = []) => {
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
  copyDemo(others, FEW);
  rmSync(join(others, "setups"), { recursive: true });
  build("few", [`--content=${others}`]);
  return () => rmSync(folder, { recursive: true, force: true });
}
