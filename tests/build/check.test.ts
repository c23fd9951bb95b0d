/** What a check says to editors, and a check that goes on after each edit. */
import { spawn } from "node:child_process";
import { once } from "node:events";
import { readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it, onTestFinished } from "vitest";
import { askProgram } from "../setup/ask-program.ts";
import { LAUNCH, PROJECT } from "../setup/run-command.ts";
import { TINY, writeFiles } from "../setup/tiny-content.ts";
import { until } from "./serving.ts";
import { scratchFolder } from "./write-content.ts";

/** The task of the guide's chapter, as an editor reads it. */
const GUIDE = readFileSync(`${PROJECT}site/guide/book.md`, "utf8");
const [TASK] = JSON.parse(/^```json\n([\s\S]*?)^```/m.exec(GUIDE)?.[1] ?? "{}").tasks;
const { pattern, background } = TASK.problemMatcher;

/** What an editor's list of problems has of some lines. */
function problemsIn(lines: string) {
  return lines.split("\n").flatMap((line) => {
    const found = new RegExp(pattern.regexp).exec(line);
    return found
      ? [
          {
            place: `${found[pattern.file]}:${found[pattern.line]}:${found[pattern.column]}`,
            message: found[pattern.message],
          },
        ]
      : [];
  });
}

const SLIPPED = "---\ntitle: Halves\npurpose: pages\npage: 2\n---\n";

/** A folder with the small book in `content`, and more files. */
function folderWith(files: Readonly<Record<string, string>> = {}): string {
  const folder = scratchFolder();
  writeFiles(join(folder, "content"), TINY);
  writeFiles(folder, files);
  return folder;
}

describe("a check in lines", () => {
  it("gives each problem its line, where the file lies from where it was typed", async () => {
    const cwd = folderWith({
      "content/patterns/halves.md": SLIPPED,
      "content/book.yaml":
        "title: Tiny\nwith: [more, spanbook/general]\nnotebooks: [plain, smal]\n",
      "content/more/patterns/third.md": SLIPPED.replace("page: 2", "page: {rows: 0}"),
      "shared/strips/one.md": "---\ntitle: One\nacros: [wide]\n---\n",
    });
    const words = ["check", "--content=content", "--with=shared", "--with=nowhere"];
    const { code, stdout, stderr } = await askProgram([...words, "--format=lines"], { cwd });
    expect(code).toBe(1);
    const problems = problemsIn(stdout);
    expect(problems.map(({ place }) => place)).toEqual([
      "nowhere:1:1",
      "shared/strips/one.md:3:1",
      "content/book.yaml:3:20",
      "content/more/patterns/third.md:3:10",
      "content/more/patterns/third.md:4:14",
      "content/patterns/halves.md:3:10",
      "content/patterns/halves.md:4:7",
      // The pattern has the name of a plain division that comes with the program.
      `${PROJECT}content/general/strips/halves-and-thirds.md:4:13`,
      `${PROJECT}content/general/strips/halves-and-thirds.md:11:13`,
    ]);
    expect(problems[2]?.message).toBe(
      "There is no notebook `smal`. Did you mean `small`? There are `plain`, `small`.",
    );
    expect(stdout.trimEnd().split("\n")).toHaveLength(problems.length);
    expect(stderr).toBe("Checking content with shared and nowhere …\n9 problems in 6 files.\n");
  });

  it("names files in full that lie elsewhere, and says nothing of a book that is well", async () => {
    const folder = folderWith({ "elsewhere/letter": "Dear all" });
    const content = join(folder, "content");
    const check = () =>
      askProgram(["check", "--content=../content", "--format=lines"], {
        cwd: join(folder, "elsewhere"),
      });
    expect(await check()).toEqual({
      code: 0,
      stdout: "",
      stderr:
        "Checking ../content …\nAll is well: 2 patterns, 2 notebooks, 0 strips and 0 set-ups.\n",
    });
    writeFiles(content, { "notebooks/plain.md": "---\ntitle: Plain\n" });
    expect(problemsIn((await check()).stdout).map(({ place }) => place)).toEqual([
      `${content}/notebooks/plain.md:1:1`,
    ]);
  });

  it("counts what is only worth a word as no problem", async () => {
    const cwd = folderWith({
      "content/book.yaml": "title: Tiny\nwith: [more]\n",
      "content/more/book.yaml": "calendar: {region: GB}\n",
      "content/more/patterns/third.md": TINY["patterns/halves.md"] ?? "",
    });
    const { code, stdout } = await askProgram(["check", "--content=content", "--format=lines"], {
      cwd,
    });
    expect(code).toBe(0);
    expect(stdout).toMatch(/^content\/more\/book\.yaml:1:1: `calendar` is not read here.*\n$/);
  });
});

/** A check that goes on, all that it said, and how it ends. */
function watching(cwd: string, words: readonly string[]) {
  const child = spawn(process.execPath, [LAUNCH, "check", ...words, "--watch"], { cwd });
  onTestFinished(() => void child.kill("SIGKILL"));
  const ended = once(child, "exit");
  let said = "";
  for (const stream of [child.stdout, child.stderr]) {
    stream.on("data", (chunk) => {
      said += chunk;
    });
  }
  const says = (text: string) =>
    until(
      () => said.includes(text) || undefined,
      () => said,
    );
  return { child, ended, says, said: () => said };
}

describe("a check that goes on", () => {
  it("tells what an edit changes and nothing else, as the guide's task reads it, until Ctrl-C", async () => {
    const cwd = folderWith();
    const { child, ended, says, said } = watching(cwd, ["--content=content", "--format=lines"]);
    await says("Each edit is checked (Ctrl-C ends it).");
    writeFiles(cwd, { "content/patterns/halves.md": SLIPPED });
    await says("problems in 1 file.");
    writeFiles(cwd, { "content/patterns/halves.md": `${SLIPPED}Another word.\n` });
    writeFiles(cwd, { "content/strips/one.md": "---\ntitle: One\nacross: [wides]\n---\n" });
    await says("problems in 2 files.");
    writeFiles(cwd, { "content/patterns/halves.md": TINY["patterns/halves.md"] ?? "" });
    rmSync(join(cwd, "content/strips"), { recursive: true });
    await until(() => said().split("All is well").length === 3 || undefined, said);
    child.kill("SIGINT");
    expect(await ended).toEqual([0, null]);
    const lines = said().split("\n");
    const begun = lines.filter((line) => new RegExp(background.beginsPattern).test(line));
    const done = lines.filter((line) => new RegExp(background.endsPattern).test(line));
    expect(begun.length).toBe(done.length);
    expect(begun.length).toBeGreaterThanOrEqual(4);
    expect(TASK.command).toBe("npm run --silent check -- --format=lines --watch");
  });

  it("gives the whole report where no lines are asked for, and ends where the folder is gone", async () => {
    const cwd = folderWith();
    const { ended, says } = watching(cwd, ["--content=content"]);
    await says("Each edit is checked (Ctrl-C ends it).");
    writeFiles(cwd, { "content/patterns/halves.md": SLIPPED });
    await says("patterns/halves.md:3:10\n  purpose: pages\n           ^^^^^\n");
    rmSync(join(cwd, "content"), { recursive: true });
    await says("This folder is missing.");
    expect(await ended).toEqual([1, null]);
  });

  it("ends at once where there is nothing to watch", async () => {
    const { ended, said } = watching(scratchFolder(), ["--content=content"]);
    expect(await ended).toEqual([1, null]);
    expect(said()).not.toContain("Each edit");
  });
});
