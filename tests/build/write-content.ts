/** Small content folders for tests, written to disk. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { onTestFinished } from "vitest";

/** Two notebooks, one of which is too small for one of the two patterns. */
export const TINY: Readonly<Record<string, string>> = {
  "book.yaml": "title: Tiny\nnotebooks: [plain, small]\n",
  "notebooks/plain.md":
    "---\ntitle: Plain\npaper: A5\npitch: 5\ndots: [26, 38]\n---\nA plain one.\n",
  "notebooks/small.md":
    "---\ntitle: Small\npaper: A7\npitch: 5\ndots: [12, 18]\nbinding: top\n---\nA small one.\n",
  "patterns/halves.md":
    "---\ntitle: Halves\npurpose: page\npage: {columns: {count: 2, gap: 1}}\n---\nTwo.\n",
  "patterns/wide.md":
    "---\ntitle: Wide\npurpose: tracker\npage: {columns: {count: 20}}\n---\nTwenty.\n",
};

/** A new folder that is removed when the test is over. */
export function scratchFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), "spanbook-scratch-"));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

/** A folder with these files. */
export function writeContent(files: Readonly<Record<string, string>>): string {
  const folder = join(scratchFolder(), "content");
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
  return folder;
}
