/** Small books, built for tests that change what a server has. */
import { cpSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { inject } from "vitest";
import { askProgram } from "../setup/ask-program.ts";
import { writeFiles } from "../setup/tiny-content.ts";

export interface TinyBooks {
  /** The folder in which all of them lie. */
  readonly folder: string;
  /** The small book that all tests share, as `first`. */
  readonly first: string;
  /** Fails with what the build complains of. */
  build(name: string, files: Readonly<Record<string, string>>): Promise<string>;
  close(): void;
}

/** A folder with the small book in it; others are built beside it. */
export function openTinyBooks(): TinyBooks {
  const folder = mkdtempSync(join(tmpdir(), "spanbook-tiny-"));
  const first = join(folder, "first");
  cpSync(inject("tiny"), first, { recursive: true });
  return {
    folder,
    first,
    build: async (name, files) => {
      const content = join(folder, `${name}-content`);
      writeFiles(content, files);
      const output = join(folder, name);
      const words = ["build", `--content=${content}`, `--output=${output}`];
      const { code, stderr } = await askProgram(words);
      if (code !== 0) throw new Error(stderr);
      return output;
    },
    close: () => rmSync(folder, { recursive: true, force: true }),
  };
}
