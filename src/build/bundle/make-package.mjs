/** Makes what the npm package has in place of sources, as npm asks for before it packs: bundles, their types and their keys. */
import { execFileSync } from "node:child_process";
import { copyFile, mkdir, mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { basename, dirname, join, posix } from "node:path";
import { bundleAssets } from "./bundle-assets.mjs";
import { bundleNode, loadEngine, PROJECT } from "./bundle-engine.mjs";

const DIST = `${PROJECT}dist/`;
/** What other programs import. */
const EXPORTS = "build/exports";
/** A file that a file of types names. */
const TARGET = /(?<=(?:from |import\()")(\.[^"]+)\.ts(?=")/g;

await rm(DIST, { recursive: true, force: true });
await Promise.all([bundleAssets(`${DIST}assets`), makeEngine(), makeExports()]);

async function makeEngine() {
  const engine = await loadEngine();
  const { version } = engine;
  const siteKey = engine.siteKeyOf({ project: PROJECT, engine });
  await place(`${DIST}keys.json`, `${JSON.stringify({ version, siteKey })}\n`);
  await place(`${DIST}engine/engine.mjs`, await bundleNode());
  const { normal, bold } = engine.fontFiles();
  const fonts = [...normal, ...bold];
  const licence = join(dirname(dirname(fonts[0])), "LICENSE");
  await mkdir(`${DIST}engine/fonts`);
  for (const file of [...fonts, licence]) {
    await copyFile(file, `${DIST}engine/fonts/${basename(file)}`);
  }
}

async function makeExports() {
  const entryPoints = [`src/${EXPORTS}.ts`];
  await place(`${DIST}exports/exports.mjs`, await bundleNode({ entryPoints }));
  const folder = await mkdtemp(join(tmpdir(), "spanbook-types-"));
  try {
    await declare(folder);
    await copyTypes(folder, `${EXPORTS}.d.ts`, new Set());
  } finally {
    await rm(folder, { recursive: true });
  }
}

/** Writes the types of all that the entry imports into a folder. */
async function declare(folder) {
  const tsc = `${PROJECT}node_modules/typescript/bin/tsc`;
  const config = join(folder, "tsconfig.json");
  const written = {
    extends: `${PROJECT}tsconfig.json`,
    compilerOptions: {
      noEmit: false,
      declaration: true,
      emitDeclarationOnly: true,
      rootDir: `${PROJECT}src`,
      outDir: folder,
      types: [],
    },
    include: [],
    files: [`${PROJECT}src/${EXPORTS}.ts`],
  };
  await place(config, JSON.stringify(written));
  execFileSync(process.execPath, [tsc, "-p", config], { stdio: "inherit" });
}

/** Copies a file and those that it names: a body's imports say nothing of its types. A package has no `.ts` to name. */
async function copyTypes(folder, path, copied) {
  if (copied.has(path)) return;
  copied.add(path);
  const text = await readFile(join(folder, path), "utf8");
  await place(`${DIST}exports/${path}`, text.replace(TARGET, "$1.js"));
  for (const [, target] of text.matchAll(TARGET)) {
    await copyTypes(folder, posix.join(posix.dirname(path), `${target}.d.ts`), copied);
  }
}

async function place(path, text) {
  await mkdir(dirname(path), { recursive: true });
  await writeFile(path, text);
}
