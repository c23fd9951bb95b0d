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
  console.error(Array.isArray(error.errors) ? error.message : error);
  process.exitCode = 1;
}
