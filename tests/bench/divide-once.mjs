/** Bundles the measurements of the engine and prints its lines: `node divide-once.mjs`. */
import { mkdirSync } from "node:fs";
import { pathToFileURL } from "node:url";
import * as esbuild from "esbuild";

const PROJECT = new URL("../../", import.meta.url).pathname;
const outfile = `${PROJECT}.cache/divide-bench.mjs`;
mkdirSync(`${PROJECT}.cache`, { recursive: true });
await esbuild.build({
  entryPoints: [`${PROJECT}tests/bench/divide-bench.ts`],
  outfile,
  bundle: true,
  packages: "external",
  platform: "node",
  format: "esm",
  target: "node20",
  logLevel: "warning",
});
const { divideBench } = await import(pathToFileURL(outfile).href);
for (const line of await divideBench()) console.log(line);
