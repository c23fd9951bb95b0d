#!/usr/bin/env node
/** The door of all commands, in the project and in its npm package: says what begins, loads the engine and hands it the command. */
import { readFileSync } from "node:fs";
import { PACKED, PROJECT } from "../bundle/kept-bundle.mjs";
import { HELP, parseCommand, sayBeginning } from "./parse-command.mjs";

process.setSourceMapsEnabled(true);

// Whoever listened may have gone, as behind `| head`: what was begun is brought to its end all the same.
for (const stream of [process.stdout, process.stderr]) {
  stream.on("error", (error) => {
    if (error.code !== "EPIPE") throw error;
  });
}

const command = parseCommand(process.argv.slice(2));
if ("wrong" in command) {
  console.error(command.wrong);
  process.exitCode = 1;
} else if (command.name === "help") {
  console.log(HELP);
} else if (command.name === "version") {
  console.log(JSON.parse(readFileSync(`${PROJECT}package.json`, "utf8")).version);
} else {
  // Said at once: on a cold disk the rest takes seconds to be loaded.
  const say = command.format === "lines" ? console.error : console.log;
  say(sayBeginning(command, PACKED && "this folder"));
  process.exitCode = await run(command);
}

async function run(command) {
  try {
    const { loadEngine } = await import("../bundle/bundle-engine.mjs");
    const typedIn = folderTypedIn();
    // The package lies among other people's: what it keeps, it keeps where it was called.
    const home = PACKED ? process.cwd() : PROJECT;
    process.chdir(PROJECT);
    const engine = await loadEngine();
    return await engine.runCommand({ command, typedIn, project: PROJECT, home, engine });
  } catch (error) {
    console.error(isToldInWords(error) ? error.message : error);
    return 1;
  }
}

/** npm moves to the project's folder first and tells where it came from. */
function folderTypedIn() {
  const here = process.cwd();
  return `${here}/` === PROJECT ? (process.env.INIT_CWD ?? here) : here;
}

/** The bundler's errors on bad source, and the system's: a trace of ours has nothing to add to them. */
function isToldInWords({ errors, code }) {
  return Array.isArray(errors) || /^E[A-Z0-9]+$/.test(code ?? "");
}
