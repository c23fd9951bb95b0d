/** Runs a command and gives the exit code. */
import { existsSync } from "node:fs";
import { isAbsolute, join, relative, resolve, sep } from "node:path";
import type { Engine } from "../bundle/loaded-engine.ts";
import { BOOK } from "../content/find-misplaced.ts";
import { generalIn, type NamedFolder } from "../content/open-packs.ts";
import { buildBook } from "./build.ts";
import { checkBook } from "./check.ts";
import { layBook } from "./lay-book.ts";
import type { Command } from "./parse-command.mjs";
import { serveBook } from "./serve.ts";

/** A call: the command, the folder it was typed in, and the project's own folder. */
export interface Call {
  readonly command: Command;
  readonly typedIn: string;
  readonly project: string;
  /**
   * The folder whose `.cache` it may use, and from which the usual folders count; the project where left out. The npm
   * package's own folder is nobody's to write into: there it is the one that it was called in.
   */
  readonly home?: string;
  /** The engine that this is a part of, as it was loaded. */
  readonly engine: Engine;
}

/** Whoever is not in a book's folder may be anywhere, above thousands of files that are to be left alone. */
const NO_BOOK_HERE =
  "There is no book.yaml in this folder: go to a book's folder, or name it by --content=FOLDER. `spanbook new my-book` begins one.";

/** Named folders count from where the call was typed. */
export async function runCommand(call: Call): Promise<number> {
  const { command, typedIn, project, home = project, engine } = call;
  if (command.name === "new") return layBook(command.folder, { typedIn, project });
  const isOfPackage = home !== project;
  if (isOfPackage && command.content === undefined && !existsSync(join(home, BOOK))) {
    console.error(NO_BOOK_HERE);
    return 1;
  }
  const folder = (named: string | undefined, usual: string) =>
    named === undefined ? resolve(home, usual) : resolve(typedIn, named);
  const content = folder(command.content, isOfPackage ? "." : "content");
  const packs = (command.with ?? []).map((named) => namedFolder(named, typedIn));
  switch (command.name) {
    case "build":
      return buildBook({
        content,
        packs,
        output: folder(command.output, "_site"),
        project,
        home,
        engine,
      });
    case "check":
      return checkBook({ ...command, content, packs, general: generalIn(project), typedIn });
    case "start":
      return serveBook({ ...command, content, packs, project, home });
  }
}

/** Told as it lies from where the call was typed, with a dot in front: a path without one counts from the content folder. */
function namedFolder(named: string, typedIn: string): NamedFolder {
  const folder = resolve(typedIn, named);
  const path = relative(typedIn, folder).split(sep).join("/");
  const shown = isAbsolute(path) || path.startsWith("..") ? path : `./${path}`;
  return { folder, shown: path === "" ? "." : shown };
}
