/** Bundles of the program's own sources, kept for the next run: an edit of content bundles nothing again. */
import { createHash, randomUUID } from "node:crypto";
import { existsSync } from "node:fs";
import { mkdir, readdir, readFile, rename, rm, stat, utimes } from "node:fs/promises";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

/** The project's own folder, with a slash at the end. */
export const PROJECT = fileURLToPath(new URL("../../../", import.meta.url));

/** The npm package has no sources to bundle: what `make-package.mjs` made of them lies in this folder of it. */
export const PACKED = existsSync(`${PROJECT}src/build/engine.ts`) ? undefined : `${PROJECT}dist/`;

const BUNDLES = `${PROJECT}.cache/bundles/`;
const KEPT_OF_A_KIND = 6;

/**
 * The folder of a bundle of this kind, which `make(folder)` fills where it is not kept yet. It is kept by every byte in
 * `sources` (folders of the project) and by the versions of all packages. What `make` throws is passed on. The npm
 * package brings its bundles along.
 */
export async function keptBundle({ kind, sources, make }) {
  if (PACKED) return join(PACKED, kind);
  const folder = join(BUNDLES, `${kind}-${await keyOf(sources)}`);
  if (existsSync(folder)) {
    const now = new Date();
    // Another run may have just cleared it away; whoever reads from it then is told by the system.
    await utimes(folder, now, now).catch(() => {});
    return folder;
  }
  await mkdir(BUNDLES, { recursive: true });
  // Filled beside and renamed, so that a second run at the same time never reads half of it.
  const draft = `${folder}.${randomUUID()}.draft`;
  await mkdir(draft);
  try {
    await make(draft);
    await rename(draft, folder).catch((error) => {
      if (!existsSync(folder)) throw error;
    });
  } finally {
    await rm(draft, { recursive: true, force: true });
  }
  await removeOld(kind, folder);
  return folder;
}

async function keyOf(sources) {
  const hash = createHash("sha256");
  for (const path of (await Promise.all(sources.map(filesIn))).flat().sort()) {
    hash.update(`${path}\0`).update(await readFile(join(PROJECT, path)));
  }
  return hash
    .update(await readFile(`${PROJECT}package-lock.json`))
    .digest("hex")
    .slice(0, 20);
}

async function filesIn(folder) {
  const entries = await readdir(join(PROJECT, folder), { recursive: true, withFileTypes: true });
  const files = entries.filter((entry) => entry.isFile());
  return files.map((file) => join(file.parentPath, file.name).slice(PROJECT.length));
}

/** All but those that were used last, and the one that was just made: by a clock that was set back it is the oldest. */
async function removeOld(kind, made) {
  const all = (await readdir(BUNDLES)).filter((name) => name.startsWith(`${kind}-`));
  const names = all.filter((name) => BUNDLES + name !== made);
  const dated = await Promise.all(
    names.map(async (name) => {
      const about = await stat(BUNDLES + name).catch(() => undefined);
      return { name, usedAt: about?.mtimeMs ?? 0 };
    }),
  );
  dated.sort((one, other) => other.usedAt - one.usedAt);
  const old = dated.slice(KEPT_OF_A_KIND - 1);
  await Promise.all(old.map(({ name }) => rm(BUNDLES + name, { recursive: true, force: true })));
}
