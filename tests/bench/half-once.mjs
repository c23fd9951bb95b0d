/** One half of a build's work by itself, for all of a content: `node half-once.mjs CONTENT HALF`. */
import { PROJECT } from "../../src/build/bundle/bundle-engine.mjs";
import { loadHalves } from "./load-halves.mjs";
import { measured } from "./tell-cost.mjs";

const [folder, name] = process.argv.slice(2);
process.chdir(PROJECT);
const { openHalf, allContent } = await loadHalves();
const content = await allContent(folder);
const half = openHalf(name);
const cost = await measured(() => half(content));
console.log(JSON.stringify({ ...cost, memory: process.resourceUsage().maxRSS / 1024 }));
