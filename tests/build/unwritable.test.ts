/** Outputs that cannot be written: one line says why, no trace, and the last good book stays. */
import { spawn } from "node:child_process";
import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { dirname, join, relative } from "node:path";
import { describe, expect, it } from "vitest";
import { errorsIn, sayFailure } from "../../src/build/cli/say-failure.ts";
import { sayUnservable, sayUnwritable } from "../../src/build/cli/say-unwritable.ts";
import { freshFolder } from "../../src/build/output/fresh-folder.ts";
import { askProgram } from "../setup/ask-program.ts";
import { PROJECT } from "../setup/run-command.ts";
import { TINY } from "../setup/tiny-content.ts";
import { scratchFolder, tinyBook, writeContent } from "./write-content.ts";

/** What a build says that cannot write into this folder. */
async function refusalOf(output: string): Promise<string> {
  const words = ["build", `--content=${writeContent(TINY)}`, `--output=${output}`];
  const { code, stderr } = await askProgram(words);
  expect(code).toBe(1);
  return stderr;
}

describe("a build into a place where no folder can be", () => {
  it.each([
    ["below a file", "letter.txt/book"],
    ["deep below a file", "letter.txt/books/tiny"],
  ])("says that a file lies %s", async (_, place) => {
    const folder = scratchFolder();
    writeFileSync(join(folder, "letter.txt"), "Dear all");
    const output = join(folder, place);
    expect(await refusalOf(output)).toBe(
      `The output ${output} cannot be written: a part of its path is a file, not a folder. Choose another with --output=FOLDER.\n`,
    );
    expect(readdirSync(folder)).toEqual(["letter.txt"]);
  });

  it.each([
    ["a name that no disk takes", 256],
    ["a name that is too long for the folder in which the book grows", 250],
  ])("tells of %s", async (_, letters) => {
    // Linux, macOS and Windows take 255 letters (POSIX, NAME_MAX).
    const folder = scratchFolder();
    const output = join(folder, "b".repeat(letters));
    expect(await refusalOf(output)).toBe(
      `The output ${output} cannot be written: its name is too long. Choose another with --output=FOLDER.\n`,
    );
    expect(readdirSync(folder)).toEqual([]);
  });

  it("tells of a link that leads nowhere before anything is built", async () => {
    const output = join(scratchFolder(), "book");
    symlinkSync(join(dirname(output), "gone"), output);
    expect(await refusalOf(output)).toBe(
      `The output ${output} is a link that leads nowhere: make the folder that it leads to, or choose another.\n`,
    );
    expect(readdirSync(dirname(output))).toEqual(["book"]);
  });
});

/** An error as the system makes it. */
function systemError(code: string, about: { readonly path?: string; readonly dest?: string } = {}) {
  return Object.assign(new Error(`${code}: no`), { code, syscall: "open", ...about });
}

describe("the line for what the disk refuses", () => {
  const output = "/srv/books/tiny";

  it.each([
    ["EACCES", { path: "/srv/books/tiny.new-7" }, "you may not read and write there. Choose"],
    ["EACCES", { path: "/srv/books" }, "you may not read and write there. Choose"],
    ["EROFS", { path: "/srv" }, "it lies on a disk that can only be read. Choose"],
    ["ENOSPC", {}, "the disk is full. Make room, or choose"],
    ["ENOSPC", { path: "/srv/books/tiny.new-7/a.html" }, "the disk is full. Make room, or choose"],
    [
      "EBUSY",
      { path: output },
      "it is in use, or is a disk of its own. Take a folder in it, or choose",
    ],
    [
      "EXDEV",
      { path: "/x", dest: output },
      "it is a disk of its own. Take a folder in it, or choose",
    ],
    [
      "ENOSPC",
      { path: "/opt/fit.js", dest: relative("", "/srv/books/tiny.new-7/assets/fit.js") },
      "the disk is full. Make room, or choose",
    ],
    ["EWEIRD", { path: output }, "the system says EWEIRD. Choose"],
  ])("%s at %j", (code, about, words) => {
    const wrapped = new Error("a page could not be written", { cause: systemError(code, about) });
    expect(sayUnwritable(output, wrapped)).toBe(
      `The output ${output} cannot be written: ${words} another with --output=FOLDER.`,
    );
  });

  it.each([
    ["ENOSPC", {}, "the disk is full"],
    ["EROFS", { path: `${output}/assets` }, "it lies on a disk that can only be read"],
  ])("%s at %j is told of the folder that a book is served from, too", (code, about, reason) => {
    expect(sayUnservable(output, systemError(code, about))).toBe(
      `Pages cannot be written into ${output}: ${reason}. Put that right and start again, or build the book with \`build --output=FOLDER\`.`,
    );
  });

  it.each([
    ["a file of the program", systemError("EACCES", { path: "/opt/spanbook/layouts/base.njk" })],
    ["too many open files", systemError("EMFILE")],
    ["a mistake of ours", new TypeError("undefined is not a function")],
  ])("is not said of %s", (_, error) => {
    expect(sayUnwritable(output, error)).toBeUndefined();
    expect(sayUnservable(output, error)).toBeUndefined();
  });
});

describe("a failure in words", () => {
  it("has a trace where the program is to blame", () => {
    const error = new Error("outer", { cause: new TypeError("inner") });
    const said = sayFailure("It failed.", error);
    expect(said).toContain("It failed.\nouter\ninner\nTypeError: inner\n");
    expect(said).toMatch(/^\s+at /m);
  });

  it("has none where the system refused something", () => {
    const error = new Error("outer", { cause: systemError("EMFILE") });
    expect(sayFailure("It failed.", error)).toBe("It failed.\nouter\nEMFILE: no");
  });

  it("takes Node's own complaints for mistakes of ours", () => {
    const error = Object.assign(new TypeError("bad"), { code: "ERR_INVALID_ARG_TYPE" });
    expect(sayFailure("It failed.", error)).toMatch(/^\s+at /m);
  });

  it("ends where an error is its own cause", () => {
    const error = new Error("round");
    error.cause = error;
    expect(errorsIn(error)).toEqual([error]);
  });
});

describe("a folder that grows", () => {
  it("is given up in silence where it could never be made", () => {
    const folder = scratchFolder();
    writeFileSync(join(folder, "letter.txt"), "Dear all");
    expect(() => freshFolder(join(folder, "letter.txt/book")).discard()).not.toThrow();
  });
});

describe("a file that somebody puts into the last book while the next one is built", () => {
  it("stays, and the build says so", async () => {
    const content = writeContent({ ...TINY, "book.yaml": "title: Tiny again\n" });
    const output = tinyBook();
    const words = [`--content=${content}`, `--output=${output}`];
    const child = spawn(process.execPath, [
      `${PROJECT}src/build/cli/launch.mjs`,
      "build",
      ...words,
    ]);
    let said = "";
    child.stderr.on("data", (chunk) => {
      said += chunk;
    });
    const ended = new Promise((resolve) => child.once("close", resolve));
    const beside = dirname(output);
    while (readdirSync(beside).length < 2) await new Promise((resolve) => setTimeout(resolve, 2));
    mkdirSync(join(output, "photos"));
    writeFileSync(join(output, "photos/shed.jpg"), "");
    expect({ code: await ended, said }).toEqual({
      code: 1,
      said: `The output ${output} holds files that Spanbook did not make: photos/shed.jpg. Move them away first.\n`,
    });
    expect(existsSync(join(output, "photos/shed.jpg"))).toBe(true);
    expect(readFileSync(join(output, "index.html"), "utf8")).toContain("<h1>Tiny</h1>");
    expect(readdirSync(beside)).toEqual(["book"]);
  });
});
