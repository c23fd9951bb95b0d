/** One half of a build's work with and without a device, turn about, notebook by notebook: `node half-pairs.mjs CONTENT DEVICE`. */
import { PROJECT } from "../../src/build/bundle/bundle-engine.mjs";
import { DEVICES, switchFor } from "./devices.mjs";
import { loadHalves } from "./load-halves.mjs";
import { measured, tellPairs } from "./tell-cost.mjs";

const [folder, device] = process.argv.slice(2);
process.chdir(PROJECT);
const { openHalf, contentByNotebook } = await loadHalves([switchFor(device)]);
const half = openHalf(DEVICES[device].measuredIn);
const costs = { with: [], without: [] };
const contents = await contentByNotebook(folder);
// The first notebook warms up.
for (const [round, content] of [contents[0], ...contents].entries()) {
  const turns = round % 2 === 0 ? ["with", "without"] : ["without", "with"];
  for (const turn of turns) {
    globalThis.without = turn === "without" ? device : "";
    const cost = await measured(() => half(content));
    if (round > 0) costs[turn].push(cost);
  }
}
tellPairs(costs);
