/** One half of a build's work by itself, for all of a content: `node half-once.mjs CONTENT HALF`. */
import { rmSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import * as esbuild from "esbuild";
import { PROJECT } from "../../src/build/bundle/bundle-engine.mjs";
import { measured } from "./tell-cost.mjs";

const [folder, name] = process.argv.slice(2);
process.chdir(PROJECT);
// Below the project, where packages are found.
const bundled = join(PROJECT, ".cache", `half-${process.pid}.mjs`);
await esbuild.build({
  entryPoints: ["tests/bench/halves.ts"],
  outfile: bundled,
  bundle: true,
  packages: "external",
  platform: "node",
  format: "esm",
  target: "node20",
});
const { openHalf, allContent } = await import(pathToFileURL(bundled).href);
rmSync(bundled);
const content = await allContent(folder);
const half = openHalf(name);
const cost = await measured(() => half(content));
console.log(JSON.stringify({ ...cost, memory: process.resourceUsage().maxRSS / 1024 }));
