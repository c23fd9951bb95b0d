/** Runs one of the three commands and gives the exit code. */
import { resolve } from "node:path";
import type { Engine } from "../bundle/loaded-engine.ts";
import { checkContent } from "../content/check-content.ts";
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
  switch (command.name) {
    case "build":
      return buildBook({ content, output: folder(command.output, "_site"), project, engine });
    case "check":
      return checkContent(content);
    case "start":
      return serveBook({ ...command, content, project });
  }
}
