/** Turns the engine's TypeScript into one file that Node can import. */
import { createHash } from "node:crypto";
import { readFile, writeFile } from "node:fs/promises";
import { basename, join } from "node:path";
import { pathToFileURL } from "node:url";
import { keptBundle, PACKED, PROJECT } from "./kept-bundle.mjs";

export { PROJECT };

const NAME = "engine.mjs";

/** The engine as it is; the bench takes parts of it away by plugins of esbuild's, which stand in its own folder. */
const ENGINE = { kind: "engine", sources: ["src"], plugins: [] };

/**
 * Bundles the engine and imports it. `version` changes with every edit of what the engine does or of a package it uses;
 * an unchanged engine is imported once. `file` is where a second thread can import it from. Throws esbuild's own
 * error, with its formatted messages, on bad source.
 */
export async function loadEngine({ kind, sources, plugins } = ENGINE) {
  const make = async (folder) => {
    const files = await bundled({ plugins });
    await Promise.all(files.map(({ path, text }) => writeFile(join(folder, basename(path)), text)));
  };
  const file = join(await keptBundle({ kind, sources, make }), NAME);
  const address = pathToFileURL(file).href;
  if (PACKED) {
    const keys = JSON.parse(await readFile(join(PACKED, "keys.json"), "utf8"));
    return { ...keys, file: address, ...(await import(address)) };
  }
  const [code, packages] = await Promise.all(
    [file, `${PROJECT}package-lock.json`].map((path) => readFile(path)),
  );
  const version = createHash("sha256").update(code).update(packages).digest("hex").slice(0, 20);
  return { version, file: address, ...(await import(address)) };
}

/** The text of one file for Node out of the engine, or out of another entry, without a map of its sources. */
export async function bundleNode(options) {
  const [file] = await bundled({ ...options, sourcemap: false });
  return file.text;
}

/** The files that the bundler makes. It is loaded only where something is to be bundled. */
async function bundled(options) {
  const esbuild = await import("esbuild");
  const result = await esbuild.build({
    absWorkingDir: PROJECT,
    entryPoints: ["src/build/engine.ts"],
    // As deep as where it will lie: its map names the sources from there.
    outfile: `.cache/bundles/engine/${NAME}`,
    bundle: true,
    packages: "external",
    platform: "node",
    format: "esm",
    target: "node20",
    // Beside it and without the sources: each thread holds the text of what it has loaded.
    sourcemap: "linked",
    sourcesContent: false,
    write: false,
    logLevel: "silent",
    ...options,
  });
  return result.outputFiles;
}
