/** The door of `npm run build`, `npm run check` and `npm start`: bundles the engine and hands it the words of the command. */
import { loadEngine, PROJECT } from "./bundle-engine.mjs";

process.setSourceMapsEnabled(true);

/** Where the words were typed: npm moves to the project's folder first and tells where it came from. */
const typedIn =
  `${process.cwd()}/` === PROJECT ? (process.env.INIT_CWD ?? process.cwd()) : process.cwd();
process.chdir(PROJECT);

try {
  const engine = await loadEngine();
  const words = process.argv.slice(2);
  process.exitCode = await engine.runCommand({ words, typedIn, project: PROJECT, engine });
} catch (error) {
  console.error(isToldInWords(error) ? error.message : error);
  process.exitCode = 1;
}

/** The bundler's errors on bad source, and the system's: a trace of ours has nothing to add to them. */
function isToldInWords({ errors, code }) {
  return Array.isArray(errors) || /^E[A-Z0-9]+$/.test(code ?? "");
}
