/** Small books, built for tests that change what a server has. */
import { cpSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { inject } from "vitest";
import { runCommand } from "../setup/run-command.ts";
import { writeFiles } from "../setup/tiny-content.ts";

export interface TinyBooks {
  /** The folder in which all of them lie. */
  readonly folder: string;
  /** The small book that all tests share, as `first`. */
  readonly first: string;
  /** Throws what the build complains of. */
  build(name: string, files: Readonly<Record<string, string>>): string;
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
    build: (name, files) => {
      const content = join(folder, `${name}-content`);
      writeFiles(content, files);
      const output = join(folder, name);
      const { code, stderr } = runCommand(["build", `--content=${content}`, `--output=${output}`]);
      if (code !== 0) throw new Error(stderr);
      return output;
    },
    close: () => rmSync(folder, { recursive: true, force: true }),
  };
}
