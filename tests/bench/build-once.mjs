/** Builds the book once and tells what it took: `node build-once.mjs CONTENT OUTPUT CACHE [DEVICE]`, with a switch for a device. */
import { loadEngine, PROJECT } from "../../src/build/bundle/bundle-engine.mjs";
import { without } from "./devices.mjs";
import { tellCost } from "./tell-cost.mjs";

const [content, output, cache, device] = process.argv.slice(2);
process.chdir(PROJECT);
const engine = await loadEngine(device ? without(device) : undefined);
process.exitCode = await engine.buildBook({ content, output, cache, project: PROJECT, engine });
tellCost();
