/** Disks that are full or can only be read: real ones where this machine lets us mount any, else what Node would be told by such a disk. */
import { spawnSync } from "node:child_process";
import { onTestFinished } from "vitest";
import { scratchFolder } from "./write-content.ts";

export interface SmallDisk {
  readonly folder: string;
  /** The environment in which a command meets the disk. */
  readonly env: Readonly<Record<string, string>>;
  /** Nothing can be written there any more. */
  readonly makeReadOnly: () => Readonly<Record<string, string>>;
}

/** A disk of so many KiB. */
export function smallDisk(kib: number): SmallDisk {
  const folder = scratchFolder();
  const mount = (...words: readonly string[]) =>
    spawnSync("mount", [...words, folder], { stdio: "ignore" }).status === 0;
  if (!mount("-t", "tmpfs", "-o", `size=${kib}k`, "tmpfs")) return toldDisk(folder, kib);
  onTestFinished(() => {
    spawnSync("umount", [folder]);
  });
  return {
    folder,
    env: {},
    makeReadOnly: () => {
      if (!mount("-o", "remount,ro")) throw new Error("the disk could not be made read-only");
      return {};
    },
  };
}

function toldDisk(folder: string, kib: number): SmallDisk {
  return {
    folder,
    env: refusing(folder, kib * 1024),
    makeReadOnly: () => refusing(folder, -1),
  };
}

/** Node's own calls, refused below a folder: beyond so many bytes with ENOSPC, of -1 bytes each with EROFS. */
function refusing(folder: string, bytes: number): Readonly<Record<string, string>> {
  const script = `
    import fs from "node:fs";
    import { syncBuiltinESMExports } from "node:module";
    let left = ${bytes};
    const code = left < 0 ? "EROFS" : "ENOSPC";
    const refuse = (path, size) => {
      if (!String(path).startsWith(${JSON.stringify(folder)})) return;
      left -= size;
      if (left < 0) throw Object.assign(new Error(code + ": no, " + path), { code, path: String(path) });
    };
    const guard = (where, name, sizeOf) => {
      const act = where[name];
      where[name] = (...given) => {
        if (where === fs.promises) return Promise.resolve().then(() => { refuse(given[0], sizeOf(given)); return act(...given); });
        refuse(given[0], sizeOf(given));
        return act(...given);
      };
    };
    for (const name of ["writeFile", "mkdir", "rename", "rm", "copyFile"])
      for (const [where, end] of [[fs, "Sync"], [fs.promises, ""]])
        guard(where, name + end, (given) => name === "writeFile" ? given[1].length : ${bytes} < 0 ? 1 : 0);
    syncBuiltinESMExports();
  `;
  return { NODE_OPTIONS: `--import=data:text/javascript,${encodeURIComponent(script)}` };
}
