/** Runs one of the three commands and gives the exit code. */
import { isAbsolute, relative, resolve, sep } from "node:path";
import type { Engine } from "../bundle/loaded-engine.ts";
import { checkContent } from "../content/check-content.ts";
import type { NamedFolder } from "../content/open-packs.ts";
import { buildBook } from "./build.ts";
import type { Command } from "./parse-command.mjs";
import { serveBook } from "./serve.ts";

/** A call: the command, the folder it was typed in, and the project's own folder. */
export interface Call {
  readonly command: Command;
  readonly typedIn: string;
  readonly project: string;
  /** The engine that this is a part of, as it was loaded. */
  readonly engine: Engine;
}

/** Named folders count from where the call was typed, the usual ones from the project. */
export async function runCommand({ command, typedIn, project, engine }: Call): Promise<number> {
  const folder = (named: string | undefined, usual: string) =>
    named === undefined ? resolve(project, usual) : resolve(typedIn, named);
  const content = folder(command.content, "content");
  const packs = (command.with ?? []).map((named) => namedFolder(named, typedIn));
  switch (command.name) {
    case "build":
      return buildBook({
        content,
        packs,
        output: folder(command.output, "_site"),
        project,
        engine,
      });
    case "check":
      return checkContent(content, { packs });
    case "start":
      return serveBook({ ...command, content, packs, project });
  }
}

/** Told as it lies from where the call was typed, with a dot in front: a path without one counts from the content folder. */
function namedFolder(named: string, typedIn: string): NamedFolder {
  const folder = resolve(typedIn, named);
  const path = relative(typedIn, folder).split(sep).join("/");
  const shown = isAbsolute(path) || path.startsWith("..") ? path : `./${path}`;
  return { folder, shown: path === "" ? "." : shown };
}
