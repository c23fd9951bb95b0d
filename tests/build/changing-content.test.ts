/** Content that changes while it is read: what is there is read whole, what is gone or no file any more is told, and nothing else happens. */
import fs from "node:fs";
import { syncBuiltinESMExports } from "node:module";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { loadContent } from "../../src/build/content/load-content.ts";
import { reportIssues } from "../../src/issue/report/report.ts";
import { TINY } from "../setup/tiny-content.ts";
import { writeContent } from "./write-content.ts";

type Call = "readdir" | "stat" | "readFile";

/** Reads a folder while something is done to it: right after the call whose path ends so, before anything else is done. */
async function readWhile(folder: string, [call, end]: readonly [Call, string], act: () => void) {
  const { promises } = fs;
  const own: (...given: never[]) => Promise<unknown> = promises[call];
  let times = 0;
  const patched = async (...given: never[]) => {
    const result = await own(...given);
    if (`${given[0]}`.endsWith(end) && times++ === 0) act();
    return result;
  };
  Object.assign(promises, { [call]: patched });
  syncBuiltinESMExports();
  try {
    return await loadContent(folder);
  } finally {
    Object.assign(promises, { [call]: own });
    syncBuiltinESMExports();
    expect(times).toBeGreaterThan(0);
  }
}

const FILE = "patterns/halves.md";
const WHOLE = TINY[FILE] ?? "";

const gone = (path: string) => fs.rmSync(path, { recursive: true });
const folderNow = (path: string) => {
  gone(path);
  fs.mkdirSync(path);
};
const says = (text: string) => (path: string) => fs.writeFileSync(path, text);

describe("a file that changes between the listing of its folder and its reading", () => {
  it.each<[string, readonly [Call, string], (path: string) => void, string]>([
    ["vanishes", ["readdir", "patterns"], gone, `${FILE}\n  This file is missing.`],
    ["vanishes later", ["stat", FILE], gone, `${FILE}\n  This file is missing.`],
    ["is a folder now", ["readdir", "patterns"], folderNow, `${FILE}\n  The file cannot be read.`],
    ["is a folder later", ["stat", FILE], folderNow, `${FILE}\n  The file cannot be read.`],
    ["is emptied", ["stat", FILE], says(""), `${FILE}:1:1\n`],
    ["has half of its lines", ["stat", FILE], says("---\ntitle: H\n"), `${FILE}:1:1\n  ---\n`],
    [
      "has grown beyond all measure",
      ["stat", FILE],
      says(WHOLE + "x".repeat(300_000)),
      `${FILE}\n  The file is larger than 256 KiB`,
    ],
  ])("%s: that is told of it alone", async (_, at, act, told) => {
    const folder = writeContent(TINY);
    const reading = await readWhile(folder, at, () => act(join(folder, FILE)));
    const report = reading.ok ? "" : reportIssues(reading.issues, reading.texts);
    expect(report).toContain(told);
    expect(report).toMatch(/1 problem in 1 file\.$/);
    fs.rmSync(join(folder, FILE), { recursive: true, force: true });
    fs.writeFileSync(join(folder, FILE), WHOLE);
    expect((await loadContent(folder)).ok).toBe(true);
  });

  it.each([
    ["is written anew by a rename", `${FILE}.draft`],
    ["is written anew in its place", FILE],
  ])("%s: it is the old or the new one", async (_, draft) => {
    const folder = writeContent(TINY);
    const reading = await readWhile(folder, ["readdir", "patterns"], () => {
      fs.writeFileSync(join(folder, draft), WHOLE.replace("Halves", "New halves"));
      fs.renameSync(join(folder, draft), join(folder, FILE));
    });
    expect(reading.ok && reading.value.recipes.map(({ title }) => title)).toEqual([
      "New halves",
      "Wide",
    ]);
  });
});

it("a folder that vanishes after it was listed is told by each of its files", async () => {
  const folder = writeContent(TINY);
  const reading = await readWhile(folder, ["readdir", "patterns"], () =>
    gone(join(folder, "patterns")),
  );
  const report = reading.ok ? "" : reportIssues(reading.issues, reading.texts);
  expect(report).toContain("patterns/halves.md\n  This file is missing.");
  expect(report).toContain("patterns/wide.md\n  This file is missing.");
});
