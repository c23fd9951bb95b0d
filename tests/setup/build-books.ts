/** Builds the demo book once for all tests that look at one. */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { TestProject } from "vitest/node";
import { runCommand } from "./run-command.ts";

declare module "vitest" {
  export interface ProvidedContext {
    /** The folder of the demo book as it was built. */
    book: string;
  }
}

export default function buildBooks(project: TestProject): () => void {
  const folder = mkdtempSync(join(tmpdir(), "spanbook-book-"));
  const book = join(folder, "book");
  const { code, stderr } = runCommand(["build", `--output=${book}`]);
  if (code !== 0) throw new Error(`The demo book cannot be built:\n${stderr}`);
  project.provide("book", book);
  return () => rmSync(folder, { recursive: true, force: true });
}
