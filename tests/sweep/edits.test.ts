/** Edits in quick succession while the book is served, in each way in which editors write: what is served in the end is what a server that begins with it serves. */
import { existsSync, readFileSync, renameSync, rmSync, truncateSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { setTimeout } from "node:timers/promises";
import fc from "fast-check";
import { expect, it } from "vitest";
import { startOn, until } from "../build/serving.ts";
import { writeContent } from "../build/write-content.ts";
import { TINY } from "../setup/tiny-content.ts";
import { SWEEP_SEED, sweepRuns } from "./sweep-size.ts";

const EDITS = sweepRuns(50);

/** How editors put a text into a file. */
const WAYS: Readonly<Record<string, (path: string, text: string) => Promise<void> | void>> = {
  inPlace: (path, text) => writeFileSync(path, text),
  emptiedFirst: async (path, text) => {
    truncateSync(path);
    await setTimeout(30);
    writeFileSync(path, text);
  },
  renamed: (path, text) => {
    writeFileSync(`${path}~`, text);
    renameSync(`${path}~`, path);
  },
  backedUp: (path, text) => {
    renameSync(path, `${path}~`);
    writeFileSync(path, text);
    rmSync(`${path}~`);
  },
  inHalves: async (path, text) => {
    writeFileSync(path, text.slice(0, text.length >> 1));
    await setTimeout(10);
    writeFileSync(path, text);
  },
};

const PATHS = Object.keys(TINY);
const edit = fc.record({
  path: fc.constantFrom(...PATHS),
  way: fc.constantFrom(...Object.keys(WAYS)),
  isWrong: fc.integer({ min: 0, max: 5 }).map((number) => number === 0),
  pause: fc.constantFrom(0, 5, 40, 150, 600),
});

/** The text of a file after its edit of this number; a wrong one has a key that nobody knows. */
function textOf(path: string, number: number, isWrong: boolean): string {
  const text = (TINY[path] ?? "").replace(/^title: .*$/m, `title: Edit ${number}`);
  return isWrong ? text.replace("title:", "titel:") : text;
}

it(`${EDITS} edits`, { timeout: 600_000 }, async () => {
  const content = writeContent(TINY);
  const { address, said, pid } = await startOn(["start", `--content=${content}`]);
  const memory: number[] = [];
  const edits = fc.sample(edit, { seed: SWEEP_SEED, numRuns: EDITS });
  for (const [number, { path, way, isWrong, pause }] of edits.entries()) {
    await WAYS[way]?.(join(content, path), textOf(path, number, isWrong));
    await setTimeout(pause);
    if (number % 25 === 24) memory.push(residentKib(pid));
  }
  for (const [path, text] of Object.entries(finalFiles())) writeFileSync(join(content, path), text);
  const anew = await startOn(["start", `--content=${writeContent(finalFiles())}`]);
  const pages = await pagesOf(anew.address);
  expect(pages.length).toBeGreaterThan(20);
  for (const path of pages) {
    const served = (from: string) => fetch(from + path).then((answer) => answer.text());
    const wanted = await served(anew.address);
    const isSame = async () => (await served(address)) === wanted || undefined;
    await until(isSame, said).catch(async () => {
      expect(await served(address), path).toBe(wanted);
    });
  }
  expect(said()).not.toMatch(/^\s+at /m);
  const [half, whole] = memory;
  if (half === undefined || whole === undefined) return;
  process.stderr.write(`${memory.join(", ")} KiB after 25 edits each\n`);
  expect(whole).toBeLessThan(half * 1.5);
});

/** What the server holds in memory, garbage and all; 1 where the system has no such file. */
function residentKib(pid: number): number {
  const path = `/proc/${pid}/status`;
  return existsSync(path) ? Number(/VmRSS:\s+(\d+)/.exec(readFileSync(path, "utf8"))?.[1]) : 1;
}

function finalFiles(): Readonly<Record<string, string>> {
  return Object.fromEntries(PATHS.map((path) => [path, textOf(path, EDITS, false)]));
}

/** Every page and file of a book that links lead to, from its first page on. */
async function pagesOf(address: string): Promise<readonly string[]> {
  const found = new Set(["index.html"]);
  for (const path of found) {
    if (!path.endsWith(".html")) continue;
    const html = await fetch(address + path).then((answer) => answer.text());
    for (const [, link = ""] of html.matchAll(/(?:href|src)="([^"#:]+)/g)) {
      const { pathname } = new URL(link, address + path);
      if (/\.(html|svg|json)$/.test(pathname)) found.add(pathname.slice(1));
    }
  }
  return [...found].filter((path) => !path.startsWith("guide/"));
}
