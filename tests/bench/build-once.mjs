/**
 * Builds the book once and tells what it took: `node build-once.mjs CONTENT OUTPUT CACHE [DEVICE]`, with a switch for a
 * device, and with so many pages of patterns at once as `PAGES_AT_ONCE` in the environment says.
 */
import { loadEngine, PROJECT } from "../../src/build/bundle/bundle-engine.mjs";
import { without } from "./devices.mjs";
import { tellCost } from "./tell-cost.mjs";

const [content, output, cache, device] = process.argv.slice(2);
process.chdir(PROJECT);
const engine = await loadEngine(device ? without(device) : undefined);
const { PAGES_AT_ONCE } = process.env;
const few = PAGES_AT_ONCE && { pagesAtOnce: Number(PAGES_AT_ONCE) };
const place = { content, output, cache, project: PROJECT };
process.exitCode = await engine.buildBook({ ...place, engine, ...few });
tellCost();
