/** One half of a build's work with and without a device, turn about, notebook by notebook: `node half-pairs.mjs CONTENT DEVICE`. */
import { rmSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import * as esbuild from "esbuild";
import { PROJECT } from "../../src/build/bundle/bundle-engine.mjs";
import { DEVICES, switchFor } from "./devices.mjs";
import { measured, tellPairs } from "./tell-cost.mjs";

const [folder, device] = process.argv.slice(2);
process.chdir(PROJECT);
// Below the project, where packages are found.
const bundled = join(PROJECT, ".cache", `bench-${process.pid}.mjs`);
await esbuild.build({
  entryPoints: ["tests/bench/halves.ts"],
  outfile: bundled,
  bundle: true,
  packages: "external",
  platform: "node",
  format: "esm",
  target: "node20",
  plugins: [switchFor(device)],
});
const { openHalf, contentByNotebook } = await import(pathToFileURL(bundled).href);
rmSync(bundled);
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
