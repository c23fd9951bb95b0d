/** What builds that were cut short leave behind, and what the next one makes of it. */
import { spawn } from "node:child_process";
import { mkdirSync, readdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { describe, expect, it } from "vitest";
import { loadContent } from "../../src/build/content/load-content.ts";
import { openRecord } from "../../src/build/output/build-record.ts";
import { freshFolder, whyNotReplace } from "../../src/build/output/output-folder.ts";
import { PROJECT } from "../setup/run-command.ts";
import { TINY } from "../setup/tiny-content.ts";
import { scratchFolder, writeContent } from "./write-content.ts";

/** No process has this number: Linux ends at 4,194,304. */
const GONE = 99_999_999;

describe("the folder beside the output", () => {
  it("is removed when the build that filled it is no more", async () => {
    const output = join(scratchFolder(), "book");
    mkdirSync(`${output}.new-${GONE}`);
    await openAndDiscard(output);
    expect(readdirSync(dirname(output))).toEqual([]);
  });

  it("goes back where it was when the build died between its two renames", async () => {
    const output = join(scratchFolder(), "book");
    mkdirSync(`${output}.old-${GONE}`);
    writeFileSync(`${output}.old-${GONE}/index.html`, "the last good one");
    await openAndDiscard(output);
    expect(readdirSync(output)).toEqual(["index.html"]);
  });

  it("stays while the build that fills it is running", async () => {
    const output = join(scratchFolder(), "book");
    mkdirSync(`${output}.new-${process.ppid}`);
    await openAndDiscard(output);
    expect(readdirSync(dirname(output))).toEqual([`book.new-${process.ppid}`]);
  });

  it("becomes the output with a list of its files", async () => {
    const output = join(scratchFolder(), "book");
    const fresh = freshFolder(output);
    await fresh.open();
    writeFileSync(join(fresh.path, "index.html"), "new");
    await fresh.publish(["index.html"]);
    expect(readdirSync(output).sort()).toEqual([".spanbook", "index.html"]);
    expect(await whyNotReplace(output, { whole: [], read: [] })).toBeUndefined();
  });
});

describe("a record that cannot be written", () => {
  it("costs the next build, and fails none", async () => {
    const folder = writeContent({ ...TINY, blocked: "a file where a folder is to be" });
    const reading = await loadContent(folder);
    if (!reading.ok) throw new Error("the content has a problem");
    const record = openRecord({
      output: scratchFolder(),
      project: PROJECT,
      engine: { version: "1", file: "" },
      content: reading.value,
      records: join(folder, "blocked"),
    });
    expect(() => record.take()).not.toThrow();
    expect(record.isCurrent()).toBe(false);
  });
});

/** Enough to be printing for a while. */
const MANY = {
  ...TINY,
  ...Object.fromEntries(
    Array.from({ length: 90 }, (_, index) => [
      `patterns/rows-${index}.md`,
      `---\ntitle: Rows ${index}\npurpose: list\npage: {rows: {count: ${1 + (index % 8)}}}\n---\nRows.\n`,
    ]),
  ),
};

describe("a build that is stopped with Ctrl-C", () => {
  it.each([
    ["as soon as its folder is there", TINY, () => true],
    ["while it writes pages and prints", MANY, (files: readonly string[]) => hasPdfs(files, 1)],
    ["while it prints on", MANY, (files: readonly string[]) => hasPdfs(files, 20)],
  ])("%s, leaves nothing behind", async (_, files, isTime) => {
    const output = join(scratchFolder(), "book");
    const child = spawn(process.execPath, [
      `${PROJECT}src/build/cli/launch.mjs`,
      "build",
      `--content=${writeContent(files)}`,
      `--output=${output}`,
    ]);
    let said = "";
    child.stderr.on("data", (chunk) => {
      said += chunk;
    });
    const beside = dirname(output);
    await waitUntil(() => readdirSync(beside).length > 0 && isTime(namesIn(beside)));
    child.kill("SIGINT");
    const code = await new Promise((resolve) => child.once("close", resolve));
    expect({ code, said, left: namesIn(beside) }).toEqual({ code: 130, said: "", left: [] });
  });
});

const hasPdfs = (files: readonly string[], atLeast: number) =>
  files.filter((file) => file.endsWith(".pdf")).length >= atLeast;

function namesIn(folder: string): readonly string[] {
  return readdirSync(folder, { recursive: true, encoding: "utf8" });
}

async function openAndDiscard(output: string): Promise<void> {
  const fresh = freshFolder(output);
  await fresh.open();
  fresh.discard();
}

async function waitUntil(isSo: () => boolean): Promise<void> {
  while (!isSo()) await new Promise((resolve) => setTimeout(resolve, 2));
}
