/** The content of a small book, and how such files are written to disk. */
import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";

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

/** Writes files into a folder, by their paths in it. */
export function writeFiles(folder: string, files: Readonly<Record<string, string>>): void {
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
}
