/** What builds that were cut short leave behind, and what the next one makes of it. */
import { spawn } from "node:child_process";
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { describe, expect, it } from "vitest";
import { loadContent } from "../../src/build/content/load-content.ts";
import { openRecord } from "../../src/build/output/build-record.ts";
import { freshFolder, recoverOutput } from "../../src/build/output/fresh-folder.ts";
import { markFinished, markGrowing } from "../../src/build/output/marker.ts";
import { whyNotReplace } from "../../src/build/output/why-not-replace.ts";
import { PROJECT } from "../setup/run-command.ts";
import { TINY } from "../setup/tiny-content.ts";
import { bytesIn } from "./files-in.ts";
import { scratchFolder, writeContent } from "./write-content.ts";

/** No process has this number: Linux ends at 4,194,304. */
const GONE = 99_999_999;

const NOWHERE = { whole: [], read: [], own: [] };

/** A finished book of one page at a path. */
function bookAt(path: string, page = "the last good one"): void {
  mkdirSync(path);
  writeFileSync(join(path, "index.html"), page);
  markFinished(path);
}

describe("a folder beside the output", () => {
  it.each<[string, number, readonly string[]]>([
    ["is removed when the build that filled it is no more", GONE, []],
    ["stays while the build that fills it is running", process.ppid, [`book.new-${process.ppid}`]],
  ])("%s", async (_, pid, left) => {
    const output = join(scratchFolder(), "book");
    mkdirSync(`${output}.new-${pid}/patterns`, { recursive: true });
    markGrowing(`${output}.new-${pid}`, pid);
    await recoverOutput(output);
    expect(readdirSync(dirname(output))).toEqual(left);
  });

  it.each(["old", "new"])("goes, as .%s, when it is a book that was replaced", async (kind) => {
    const output = join(scratchFolder(), "book");
    bookAt(output, "new");
    bookAt(`${output}.${kind}-${GONE}`);
    await recoverOutput(output);
    expect(readdirSync(dirname(output))).toEqual(["book"]);
    expect(readFileSync(join(output, "index.html"), "utf8")).toBe("new");
  });

  it.each([
    ["is no more", GONE],
    ["has a number that another process has by now", process.ppid],
  ])("goes back where it was when a build died between its renames that %s", async (_, pid) => {
    const output = join(scratchFolder(), "book");
    bookAt(`${output}.old-${pid}`);
    await recoverOutput(output);
    expect(readdirSync(dirname(output))).toEqual(["book"]);
    expect(await whyNotReplace(output, NOWHERE)).toBeUndefined();
  });

  it("does not go back when its removal had begun", async () => {
    const output = join(scratchFolder(), "book");
    bookAt(`${output}.old-${GONE}`);
    markGrowing(`${output}.old-${GONE}`, GONE);
    await recoverOutput(output);
    expect(readdirSync(dirname(output))).toEqual([]);
  });
});

/** What somebody may have put beside a book, under a name like those of a build's own. */
describe("a neighbour that is named like a build's leavings", () => {
  const letter = (path: string) => {
    mkdirSync(path);
    writeFileSync(join(path, "letter.txt"), "Dear all");
  };

  it.each<[string, (path: string) => void]>([
    ["a person's files", letter],
    ["nothing", (path) => mkdirSync(path)],
    [
      "the marker of another process",
      (path) => {
        letter(path);
        markGrowing(path, 7);
      },
    ],
    [
      "a marker that only looks like one",
      (path) => {
        letter(path);
        writeFileSync(join(path, ".spanbook"), "letter.txt\n8 letter.txt\n");
      },
    ],
  ])("with %s stays as it is, and never becomes the output", async (_, fill) => {
    const desk = scratchFolder();
    for (const kind of ["old", "new"]) fill(join(desk, `_site.${kind}-2025`));
    const before = bytesIn(desk);
    await recoverOutput(join(desk, "_site"));
    expect(readdirSync(desk)).toEqual(["_site.new-2025", "_site.old-2025"]);
    expect(bytesIn(desk)).toEqual(before);
  });

  it("with a book and a letter keeps the letter", async () => {
    const desk = scratchFolder();
    bookAt(join(desk, "_site.old-2025"));
    writeFileSync(join(desk, "_site.old-2025/letter.txt"), "Dear all");
    await recoverOutput(join(desk, "_site"));
    expect([...bytesIn(desk)]).toEqual([["_site.old-2025/letter.txt", "Dear all"]]);
  });
});

describe("a fresh folder", () => {
  it("becomes the output with a list of its files", async () => {
    const output = join(scratchFolder(), "book");
    const fresh = freshFolder(output);
    await fresh.open();
    writeFileSync(join(fresh.path, "index.html"), "new");
    expect(fresh.publish()).toEqual([".spanbook", "index.html"]);
    expect(readdirSync(output).sort()).toEqual([".spanbook", "index.html"]);
    expect(await whyNotReplace(output, NOWHERE)).toBeUndefined();
  });

  it("takes the place of an empty folder, and leaves nothing beside it", async () => {
    const output = join(scratchFolder(), "book");
    mkdirSync(join(output, "empty"), { recursive: true });
    const fresh = freshFolder(output);
    await fresh.open();
    fresh.publish();
    expect(readdirSync(dirname(output))).toEqual(["book"]);
    expect(readdirSync(output)).toEqual([".spanbook"]);
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

async function waitUntil(isSo: () => boolean): Promise<void> {
  while (!isSo()) await new Promise((resolve) => setTimeout(resolve, 2));
}
