/** Builds the book once and tells what it took: `node build-once.mjs CONTENT OUTPUT CACHE`. */
import { loadEngine, PROJECT } from "../../src/build/bundle/bundle-engine.mjs";
import { tellCost } from "./tell-cost.mjs";

const [content, output, cache] = process.argv.slice(2);
process.chdir(PROJECT);
const engine = await loadEngine();
process.exitCode = await engine.buildBook({ content, output, cache, project: PROJECT, engine });
tellCost();
