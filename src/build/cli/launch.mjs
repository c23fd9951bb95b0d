/** The door of `npm run build`, `npm run check` and `npm start`: says what begins, bundles the engine and hands it the command. */
import { parseCommand, sayBeginning } from "./parse-command.mjs";

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
} else {
  // Said at once: on a cold disk the rest takes seconds to be loaded.
  console.log(sayBeginning(command));
  process.exitCode = await run(command);
}

async function run(command) {
  try {
    const { loadEngine, PROJECT } = await import("../bundle/bundle-engine.mjs");
    const typedIn = folderTypedIn(PROJECT);
    process.chdir(PROJECT);
    const engine = await loadEngine();
    return await engine.runCommand({ command, typedIn, project: PROJECT, engine });
  } catch (error) {
    console.error(isToldInWords(error) ? error.message : error);
    return 1;
  }
}

/** npm moves to the project's folder first and tells where it came from. */
function folderTypedIn(project) {
  const here = process.cwd();
  return `${here}/` === project ? (process.env.INIT_CWD ?? here) : here;
}

/** The bundler's errors on bad source, and the system's: a trace of ours has nothing to add to them. */
function isToldInWords({ errors, code }) {
  return Array.isArray(errors) || /^E[A-Z0-9]+$/.test(code ?? "");
}
