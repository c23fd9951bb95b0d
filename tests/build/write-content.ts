/** Small content folders and books for one test, on disk as long as it runs. */
import { cpSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { inject, onTestFinished } from "vitest";
import { writeFiles } from "../setup/tiny-content.ts";

/** A new folder that is removed when the test is over. */
export function scratchFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), "spanbook-scratch-"));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

/** A folder with these files. */
export function writeContent(files: Readonly<Record<string, string>>): string {
  const folder = join(scratchFolder(), "content");
  writeFiles(folder, files);
  return folder;
}

/** The small book as a build left it, alone in a new folder: whatever happens to it happens to a copy. */
export function tinyBook(): string {
  const output = join(scratchFolder(), "book");
  cpSync(inject("tiny"), output, { recursive: true });
  return output;
}
