/** The program as it is loaded once for many commands: does what it is sent, one command at a time, and tells what came of it. */
import { loadEngine, PROJECT } from "../../src/build/bundle/bundle-engine.mjs";
import { parseCommand, sayBeginning } from "../../src/build/cli/parse-command.mjs";

const said = { stdout: "", stderr: "" };
for (const stream of ["stdout", "stderr"]) {
  process[stream].write = (text) => {
    said[stream] += text;
    return true;
  };
}

process.chdir(PROJECT);
const engine = await loadEngine();
// A process keeps its templates and layouts compiled, and with them the book that they were first compiled for.
const eleventy = import.meta.resolve("@11ty/eleventy");
const { default: eleventyEvents } = await import(new URL("EventBus.js", eleventy).href);

async function run({ words, typedIn, cache }) {
  const command = parseCommand(words);
  if ("wrong" in command) throw new Error(command.wrong);
  const say = command.format === "lines" ? console.error : console.log;
  say(sayBeginning(command));
  const call = { typedIn, project: PROJECT, engine };
  if (cache === undefined) return engine.runCommand({ ...call, command });
  return engine.buildBook({ ...call, ...command, cache });
}

process.on("message", async (asked) => {
  Object.assign(said, { stdout: "", stderr: "" });
  eleventyEvents.emit("eleventy.compileCacheReset");
  eleventyEvents.emit("eleventy.resourceModified", "layouts");
  const code = await run(asked).catch((error) => {
    console.error(error);
    return 1;
  });
  process.send({ code, ...said });
});
process.on("disconnect", () => process.exit());
