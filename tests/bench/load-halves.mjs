/** The two halves of a build's work, bundled, with a switch for a device or without one. */
import { rmSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import * as esbuild from "esbuild";
import { PROJECT } from "../../src/build/bundle/bundle-engine.mjs";

/** What `halves.ts` exports; `plugins` are the bundler's. */
export async function loadHalves(plugins = []) {
  // Below the project, where packages are found.
  const bundled = join(PROJECT, ".cache", `bench-${process.pid}.mjs`);
  await esbuild.build({
    absWorkingDir: PROJECT,
    entryPoints: ["tests/bench/halves.ts"],
    outfile: bundled,
    bundle: true,
    packages: "external",
    platform: "node",
    format: "esm",
    target: "node20",
    plugins,
  });
  const halves = await import(pathToFileURL(bundled).href);
  rmSync(bundled);
  return halves;
}
