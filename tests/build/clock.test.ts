/** A clock that jumps: what is made again goes by what files hold, and by nothing that a clock says of them. */
import { readFileSync, statSync, utimesSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { setTimeout } from "node:timers/promises";
import { expect, it } from "vitest";
import { openCache } from "../../src/build/artifacts/cache/cache.ts";
import { loadContent } from "../../src/build/content/load-content.ts";
import { openRecord } from "../../src/build/output/build-record.ts";
import { filesIn } from "../../src/build/output/files-in.ts";
import { PROJECT } from "../setup/run-command.ts";
import { TINY } from "../setup/tiny-content.ts";
import { scratchFolder, tinyBook, writeContent } from "./write-content.ts";

const LONG_AGO = new Date("1970-01-02");
const FAR_OFF = new Date("2199-01-01");
/** Clocks of file systems go in steps of some milliseconds. */
const STEP_MS = 50;

/** The record of a book, by which a build is told that nothing has changed. */
async function recordOf(content: string, output: string, records: string) {
  const reading = await loadContent(content);
  if (!reading.ok) throw new Error("the content has a problem");
  const engine = { version: "1", file: "" };
  return openRecord({ output, project: PROJECT, engine, content: reading.value, records });
}

/** Other bytes, as many as before, in a file that looks as old as it did. */
function changeUnseen(path: string, from: string, to: string): void {
  const { atime, mtime } = statSync(path);
  const text = readFileSync(path, "utf8");
  expect(text).toContain(from);
  expect(to).toHaveLength(from.length);
  writeFileSync(path, text.replace(from, to));
  utimesSync(path, atime, mtime);
}

it.each<[string, (content: string, output: string) => void, boolean]>([
  ["content comes from times to come", (content) => touchAll(content, FAR_OFF), true],
  [
    "content is changed and looks as it did",
    (content) => changeUnseen(join(content, "patterns/halves.md"), "Halves", "Halved"),
    false,
  ],
  [
    "a page of the book is changed and looks as it did",
    (_, output) => changeUnseen(join(output, "index.html"), "<h1>Tiny", "<h1>Tine"),
    false,
  ],
])("where %s, that nothing has changed is said or not", async (_, act, isSaid) => {
  const [content, output, records] = [writeContent(TINY), tinyBook(), scratchFolder()];
  (await recordOf(content, output, records)).take();
  await setTimeout(STEP_MS);
  act(content, output);
  expect((await recordOf(content, output, records)).isCurrent()).toBe(isSaid);
});

function touchAll(folder: string, at: Date): void {
  for (const path of filesIn(folder)) utimesSync(join(folder, path), at, at);
}

it.each([
  ["long ago", LONG_AGO],
  ["in times to come", FAR_OFF],
])("an artifact that was made %s is found by what it was made from", (_, at) => {
  const folder = scratchFolder();
  openCache<string>(folder).take(["week"], () => "drawn");
  touchAll(folder, at);
  const limits = { memoryBytes: 100, diskBytes: 1 };
  const cache = openCache<string>(folder, limits);
  expect(cache.take(["week"], () => "made again")).toBe("drawn");
  cache.settle();
  expect(openCache<string>(folder).take(["week"], () => "made again")).toBe("drawn");
});
