/** Turns the engine's TypeScript into one file that Node can import, named after what is in it. */
import { createHash } from "node:crypto";
import { existsSync } from "node:fs";
import { mkdir, readdir, readFile, rename, rm, stat, writeFile } from "node:fs/promises";
import { fileURLToPath, pathToFileURL } from "node:url";
import * as esbuild from "esbuild";

/** The project's own folder, with a slash at the end. */
export const PROJECT = fileURLToPath(new URL("../../../", import.meta.url));

const CACHE = `${PROJECT}.cache/`;
const KEPT_BUNDLES = 6;

/**
 * Bundles the engine and imports it. `version` changes with every edit of the engine or of a package it uses;
 * an unchanged engine is imported once. `file` is where a second thread can import it from. Throws esbuild's own
 * error, with its formatted messages, on bad source. `plugins` are esbuild's: the bench takes parts of the engine away.
 */
export async function loadEngine(plugins = []) {
  const code = await bundle(plugins);
  const packages = await readFile(`${PROJECT}package-lock.json`);
  const version = createHash("sha256").update(code).update(packages).digest("hex").slice(0, 20);
  const file = `${CACHE}engine-${version}.mjs`;
  if (!existsSync(file)) await place(file, code);
  const address = pathToFileURL(file).href;
  return { version, file: address, ...(await import(address)) };
}

async function bundle(plugins) {
  const result = await esbuild.build({
    absWorkingDir: PROJECT,
    entryPoints: ["src/build/engine.ts"],
    outfile: `${CACHE}engine.mjs`,
    bundle: true,
    packages: "external",
    platform: "node",
    format: "esm",
    target: "node20",
    sourcemap: "inline",
    write: false,
    logLevel: "silent",
    plugins,
  });
  return result.outputFiles[0].text;
}

/** Written beside and renamed, so that a second build at the same time never reads half a file. */
async function place(file, code) {
  await mkdir(CACHE, { recursive: true });
  const draft = `${file}.${process.pid}.draft`;
  await writeFile(draft, code);
  await rename(draft, file);
  await removeOldBundles();
}

async function removeOldBundles() {
  const names = (await readdir(CACHE)).filter((name) => name.startsWith("engine-"));
  const dated = await Promise.all(
    names.map(async (name) => {
      const about = await stat(CACHE + name).catch(() => undefined);
      return { name, age: about?.mtimeMs ?? 0 };
    }),
  );
  dated.sort((one, other) => other.age - one.age);
  await Promise.all(dated.slice(KEPT_BUNDLES).map(({ name }) => rm(CACHE + name, { force: true })));
}
