/** A small book with dated patterns, for tests of a notebook that none of its notebooks is. */
import { cpSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Page } from "playwright-core";
import { afterAll, beforeAll } from "vitest";
import { askProgram } from "../setup/ask-program.ts";
import { TINY, writeFiles } from "../setup/tiny-content.ts";

/** 24 steps across and 35 down, counted from the edge. */
export const OWN = "paper=A5&pitch=5&dots=24,35";
export const OTHER = "paper=A6&pitch=5&dots=20,28";

const MONTH =
  '{rows: {tracks: [{label: "{month} {year}", steps: 2}, {columns: {count: weekdays, each: {label: "{weekday}"}}, steps: 1}, {repeat: weeks, columns: {count: days, each: {label: "{day}"}}}]}}';

const FILES: Readonly<Record<string, string>> = {
  ...TINY,
  "patterns/month-grid.md": `---\ntitle: Month grid\npurpose: month\ndates: month\npage: ${MONTH}\n---\nDays.\n`,
  "patterns/thirds.md":
    "---\ntitle: Thirds\npurpose: page\npage: {columns: {count: 3}}\n---\nThree.\n",
  "patterns/broad.md":
    "---\ntitle: Broad\npurpose: tracker\npage: {columns: {count: 25}}\n---\nTwenty-five.\n",
};

export interface OwnBook {
  /** The folder that it was built into. */
  readonly folder: string;
  /** The address of a page on disk. */
  address(path: string): string;
}

/** Built before the tests of a file, and gone after them. */
export function openOwnBook(): OwnBook {
  const folder = mkdtempSync(join(tmpdir(), "spanbook-own-"));
  const [content, output] = [join(folder, "content"), join(folder, "book")];
  beforeAll(async () => {
    writeFiles(content, FILES);
    const words = ["build", `--content=${content}`, `--output=${output}`];
    const { code, stderr } = await askProgram(words);
    if (code !== 0) throw new Error(stderr);
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  return {
    folder: output,
    address: (path) => {
      const [file = "", ...hash] = path.split("#");
      return [pathToFileURL(join(output, file)).href, ...hash].join("#");
    },
  };
}

/** The same book without some of its files. */
export function withoutFiles(folder: string, paths: readonly string[]): string {
  const copy = `${folder}-less`;
  cpSync(folder, copy, { recursive: true });
  for (const path of paths) rmSync(join(copy, path));
  return copy;
}

/** Says the notebook as a keeper does: on the fit page, where a number is typed. */
export async function keepNotebook(page: Page, fit: string): Promise<void> {
  await page.goto(`${fit}#v=1&paper=A5&pitch=5&dots=24,34`);
  await page.getByLabel("Dots down").fill("35");
  await page.getByText("A5, 24 × 35", { exact: true }).first().waitFor();
}

/** What stands in the page for other programs. */
export async function planOn(page: Page) {
  return JSON.parse((await page.locator("#plan-data").textContent()) ?? "null");
}
