/** Builds that are killed, at random moments and at the worst: the old book or the new one is there, whole, and never none. */
import { spawn } from "node:child_process";
import { existsSync, readdirSync, renameSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import * as esbuild from "esbuild";
import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import { filesIn } from "../../src/build/output/files-in.ts";
import { recoverOutput } from "../../src/build/output/fresh-folder.ts";
import { bytesIn } from "../build/files-in.ts";
import { scratchFolder, tinyBook, writeContent } from "../build/write-content.ts";
import { askProgram } from "../setup/ask-program.ts";
import { PROJECT } from "../setup/run-command.ts";
import { TINY } from "../setup/tiny-content.ts";
import { SWEEP_SEED, sweepRuns } from "./sweep-size.ts";

const KILLS = sweepRuns(250);
/** A whole sweep also says how often there was none for a while. */
const SAMPLE = 10;
/** In so long a process swaps in dozens of books. */
const LONGEST_MS = 400;

/** All moments of a swap at which a process can be killed by its own call, and what lies at the output before anything is recovered. */
const MOMENTS = [
  ["renameSync", 2, "old"],
  ["renameSync", 3, "none"],
  ["renameSync", 4, "new"],
  ["renameSync", 5, "new"],
  ["rmSync", 1, "new"],
  ["rmSync", 20, "new"],
  ["rmSync", 40, "new"],
  ["rmSync", 41, "new"],
] as const;

/** A limit for one kill on a busy machine; it only ends what hangs. */
const SLOW_KILL_MS = 20_000;

let script: string;

beforeAll(async () => {
  const { outputFiles } = await esbuild.build({
    absWorkingDir: PROJECT,
    entryPoints: ["tests/sweep/swap-forever.ts"],
    bundle: true,
    platform: "node",
    format: "esm",
    write: false,
  });
  script = outputFiles[0]?.text ?? "";
});

/** A process that swaps one book after another in, as soon as the first one is there. */
async function swapping(output: string, ...aim: readonly (string | number)[]) {
  const file = join(dirname(output), "swap.mjs");
  writeFileSync(file, script);
  const child = spawn(process.execPath, [file, output, ...aim.map(String)]);
  const ended = new Promise((resolve) => child.once("close", (_, signal) => resolve(signal)));
  await new Promise((resolve) => child.stdout.once("data", resolve));
  return { child, ended };
}

/** Which book lies there: its number where all of its files are of one; none, or a mixture. */
function bookIn(output: string): string {
  if (!existsSync(output)) return "none";
  const pages = [...bytesIn(output)].filter(([path]) => path !== ".spanbook");
  const books = new Set(pages.map(([, book]) => book));
  return books.size === 1 && pages.length === 40 ? [...books].join() : "a mixture";
}

/** A folder without anything may stay, or with a marker on its way: between a folder and its marker there is a moment, too. */
function filesBeside(output: string): readonly string[] {
  return filesIn(dirname(output)).filter((path) => !/^book\/|^swap\.mjs$|draft$/.test(path));
}

describe("a process that is killed while it swaps a book in", () => {
  it.each(MOMENTS)("after %s no. %i has left the old or the new one to the next", async (...at) => {
    const [call, count, left] = at;
    const output = join(scratchFolder(), "book");
    const { ended } = await swapping(output, call, count);
    expect(await ended).toBe("SIGKILL");
    const lies = { old: "1", none: "none", new: "2" };
    expect(bookIn(output)).toBe(lies[left]);
    await recoverOutput(output);
    expect(bookIn(output)).toBe(left === "new" ? "2" : "1");
    expect(filesBeside(output)).toEqual([]);
  });

  it(
    "at any moment has left one whole book to the next",
    async () => {
      const output = join(scratchFolder(), "book");
      const moments = fc.sample(fc.integer({ min: 0, max: LONGEST_MS }), {
        seed: SWEEP_SEED,
        numRuns: KILLS,
      });
      let none = 0;
      for (const moment of moments) {
        const { child, ended } = await swapping(output);
        await new Promise((resolve) => setTimeout(resolve, moment));
        child.kill("SIGKILL");
        await ended;
        if (!existsSync(output)) none += 1;
        await recoverOutput(output);
        expect(bookIn(output), `killed after ${moment} ms`).toMatch(/^\d+$/);
        expect(filesBeside(output)).toEqual([]);
      }
      if (KILLS > SAMPLE)
        process.stderr.write(`${none} of ${KILLS} left none until the next command.\n`);
    },
    SLOW_KILL_MS * KILLS,
  );
});

describe("a build of wrong content", () => {
  it("first puts back the book that a killed one has left beside its place", async () => {
    const output = tinyBook();
    const content = writeContent({ ...TINY, "book.yaml": "titel: T\n" });
    const before = bytesIn(output);
    renameSync(output, `${output}.old-99999999`);
    const words = ["build", `--content=${content}`, `--output=${output}`];
    expect((await askProgram(words)).code).toBe(1);
    expect(bytesIn(output)).toEqual(before);
    expect(readdirSync(dirname(output))).toEqual(["book"]);
  });
});
