/** Small books, built for tests that change what a server has. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { TINY } from "../build/write-content.ts";
import { runCommand } from "../setup/run-command.ts";

export interface TinyBooks {
  /** The folder in which all of them lie. */
  readonly folder: string;
  readonly first: string;
  /** The same with another title for one pattern. */
  readonly second: string;
  build(name: string, files: Readonly<Record<string, string>>): string;
  close(): void;
}

/** Builds both; throws what a build complains of. */
export function openTinyBooks(): TinyBooks {
  const folder = mkdtempSync(join(tmpdir(), "spanbook-tiny-"));
  const build = (name: string, files: Readonly<Record<string, string>>) => {
    const content = join(folder, `${name}-content`);
    for (const [path, text] of Object.entries(files)) {
      mkdirSync(dirname(join(content, path)), { recursive: true });
      writeFileSync(join(content, path), text);
    }
    const output = join(folder, name);
    const { code, stderr } = runCommand(["build", `--content=${content}`, `--output=${output}`]);
    if (code !== 0) throw new Error(stderr);
    return output;
  };
  const changed = TINY["patterns/halves.md"]?.replace("title: Halves", "title: Two halves") ?? "";
  return {
    folder,
    first: build("first", TINY),
    second: build("second", { ...TINY, "patterns/halves.md": changed }),
    build,
    close: () => rmSync(folder, { recursive: true, force: true }),
  };
}
