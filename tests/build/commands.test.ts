/** The commands as they are called: rightly, wrongly, and on wrong content. */
import { spawn } from "node:child_process";
import { existsSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { parseCommand, sayBeginning } from "../../src/build/cli/parse-command.mjs";
import { askProgram } from "../setup/ask-program.ts";
import { PROJECT, runCommand } from "../setup/run-command.ts";
import { TINY } from "../setup/tiny-content.ts";
import { scratchFolder, writeContent } from "./write-content.ts";

const NEEDS_FOLDER =
  "`new` takes the name of a new folder and nothing else, such as `new my-book`.";

describe("the words of a command", () => {
  it.each([
    [["new", "my-book"], { name: "new", folder: "my-book" }],
    [["--help"], { name: "help" }],
    [["help"], { name: "help" }],
    [["--version"], { name: "version" }],
    [["build"], { name: "build" }],
    [["build", "--content=a", "--output=b"], { name: "build", content: "a", output: "b" }],
    [["build", "--content", "a"], { name: "build", content: "a" }],
    [["build", "--with=a", "--with", "b"], { name: "build", with: ["a", "b"] }],
    [["start", "--with=a"], { name: "start", with: ["a"] }],
    [["check", "--content=a"], { name: "check", content: "a" }],
    [["check", "--format=lines", "--watch"], { name: "check", format: "lines", watch: true }],
    [["start"], { name: "start" }],
    [["start", "--port=9000"], { name: "start", port: 9000 }],
    [["start", "--host=0.0.0.0"], { name: "start", host: "0.0.0.0" }],
    [["start", "--host=::1"], { name: "start", host: "::1" }],
    [["start", "--port", "1", "--content=a"], { name: "start", port: 1, content: "a" }],
  ])("%j are understood", (words, command) => {
    expect(parseCommand(words)).toEqual(command);
  });

  it.each([
    [[], "There is no command ``: use new, start, check or build."],
    [["bulid"], "There is no command `bulid`: use new, start, check or build."],
    [["new"], NEEDS_FOLDER],
    [["new", "a", "b"], NEEDS_FOLDER],
    [["new", "--content=a"], NEEDS_FOLDER],
    [
      ["new", "a\u0007"],
      "`new` takes a folder without characters that nobody can see, not `a\\u{7}`.",
    ],
    [
      ["build", "--outptu=b"],
      "`build` does not know `--outptu`: it takes --content=FOLDER, --with=FOLDER and --output=FOLDER.",
    ],
    [
      ["check", "--output=b"],
      "`check` does not know `--output`: it takes --content=FOLDER, --with=FOLDER, --format=lines and --watch.",
    ],
    [
      ["check", "there"],
      "`check` does not know `there`: it takes --content=FOLDER, --with=FOLDER, --format=lines and --watch.",
    ],
    [
      ["check", "-c"],
      "`check` does not know `-c`: it takes --content=FOLDER, --with=FOLDER, --format=lines and --watch.",
    ],
    [["build", "--content"], "`--content` needs a folder: --content=FOLDER."],
    [
      ["build", "--port=9000"],
      "`build` does not know `--port`: it takes --content=FOLDER, --with=FOLDER and --output=FOLDER.",
    ],
    [
      ["start", "--output=b"],
      "`start` does not know `--output`: it takes --content=FOLDER, --with=FOLDER, --port=NUMBER and --host=ADDRESS.",
    ],
    [["check", "--format"], "`--format` takes `lines` alone."],
    [["check", "--format=json"], "`--format` takes `lines` alone."],
    [["check", "--watch=a"], "`--watch` takes no value."],
    [["start", "--port"], "`--port` needs a number: --port=NUMBER."],
    [["start", "--port=garden"], "`--port` takes a whole number from 1 to 65535, not `garden`."],
    [["start", "--port=0"], "`--port` takes a whole number from 1 to 65535, not `0`."],
    [["start", "--port=65536"], "`--port` takes a whole number from 1 to 65535, not `65536`."],
    [
      ["start", "--host=garden"],
      "`--host` takes an IP address of this computer, or 0.0.0.0 for all of them, not `garden`.",
    ],
    [["start", "--port=80.5"], "`--port` takes a whole number from 1 to 65535, not `80.5`."],
    [["toString"], "There is no command `toString`: use new, start, check or build."],
    [
      ["build", "--output=bo\nok\u001b[2J"],
      "`--output` takes a folder without characters that nobody can see, not `bo\\u{a}ok\\u{1b}[2J`.",
    ],
    [["check", "--with=a", "--with="], "`--with` needs a folder: --with=FOLDER."],
    [["build", "--content="], "`--content` needs a folder: --content=FOLDER."],
  ])("%j are refused in one line", (words, wrong) => {
    expect(parseCommand(words)).toEqual({ wrong });
  });

  it("end a run with 1 and nothing but that line", () => {
    expect(runCommand(["build", "--outptu=b"])).toEqual({
      code: 1,
      stdout: "",
      stderr:
        "`build` does not know `--outptu`: it takes --content=FOLDER, --with=FOLDER and --output=FOLDER.\n",
    });
  });
});

describe("a command that begins", () => {
  it.each([
    [{ name: "build" }, "Building the book from content into _site …"],
    [{ name: "build", content: "a", output: "b" }, "Building the book from a into b …"],
    [{ name: "check", content: "a" }, "Checking a …"],
    [{ name: "check", content: "a", with: ["b", "c"] }, "Checking a with b and c …"],
    [{ name: "build", with: ["b"] }, "Building the book from content with b into _site …"],
    [{ name: "start" }, "Opening the book from content …"],
    [{ name: "new", folder: "my-book" }, "Beginning a book in my-book …"],
  ] as const)("%j says so", (command, line) => {
    expect(sayBeginning(command)).toBe(line);
  });

  it("says so before anything is bundled", async () => {
    const child = spawn(process.execPath, [`${PROJECT}src/build/cli/launch.mjs`, "check"]);
    const first = await new Promise((resolve) => child.stdout.once("data", resolve));
    expect(String(first)).toBe("Checking content …\n");
    await new Promise((resolve) => child.once("close", resolve));
  });
});

describe("a command to which nobody listens any more", () => {
  it("is brought to its end", async () => {
    const output = join(scratchFolder(), "book");
    const words = ["build", `--content=${writeContent(TINY)}`, `--output=${output}`];
    const child = spawn(process.execPath, [`${PROJECT}src/build/cli/launch.mjs`, ...words]);
    child.stdout.once("data", () => child.stdout.destroy());
    let said = "";
    child.stderr.on("data", (chunk) => {
      said += chunk;
    });
    const code = await new Promise((resolve) => child.once("close", resolve));
    expect({ code, said }).toEqual({ code: 0, said: "" });
    expect(existsSync(join(output, "index.html"))).toBe(true);
  });
});

describe("a check", () => {
  it("says what all the content holds", async () => {
    const { code, stdout } = await askProgram(["check"]);
    expect(code).toBe(0);
    expect(stdout).toMatch(
      /^Checking content …\nAll is well: \d+ patterns, \d+ notebooks, \d+ strips and \d+ set-ups\.\n$/,
    );
  });

  it("tells every problem at once and ends with 1", () => {
    const content = writeContent({
      ...TINY,
      "patterns/halves.md": "---\ntitle: Halves\npurpose: pages\npage: 2\n---\n",
      "notebooks/small.md": "---\ntitle: Small\npaper: A7\npitch: 0\ndots: [12, 18]\n---\n",
    });
    const { code, stdout, stderr } = runCommand(["check", `--content=${content}`]);
    expect({ code, stdout }).toEqual({ code: 1, stdout: `Checking ${content} …\n` });
    expect(stderr).toContain("notebooks/small.md:4:8");
    expect(stderr).toContain("patterns/halves.md:3:10");
    expect(stderr).not.toMatch(/^\s+at /m);
  });

  it("says in the report's words that there is no such folder", async () => {
    const { code, stderr } = await askProgram(["check", "--content=nowhere"]);
    expect(code).toBe(1);
    expect(stderr).toContain("nowhere");
    expect(stderr).not.toMatch(/^\s+at /m);
  });
});

describe("content that makes no book", () => {
  const { "notebooks/plain.md": plain = "", "patterns/halves.md": halves = "" } = TINY;

  it.each<[string, Readonly<Record<string, string>>, string]>([
    ["no notebooks", { "book.yaml": "title: T\n", "patterns/a.md": halves }, "notebooks"],
    ["no patterns", { "book.yaml": "title: T\n", "notebooks/a.md": plain }, "patterns"],
    ["nothing but a book", { "book.yaml": "title: T\n" }, "notebooks patterns"],
    ["only a letter", { letter: "Dear all" }, "book.yaml notebooks patterns"],
    [
      "only broken files",
      { "book.yaml": "- a\n", "notebooks/a.md": "a", "patterns/a.md": "---\n" },
      "book.yaml:1:1 notebooks/a.md:1:1 patterns/a.md:1:1",
    ],
  ])("for it has %s, is told place by place, by check and by build", async (_, files, places) => {
    const content = writeContent(files);
    const output = join(scratchFolder(), "book");
    for (const words of [["check"], ["build", `--output=${output}`]]) {
      const { code, stderr } = await askProgram([...words, `--content=${content}`]);
      expect(code).toBe(1);
      expect(stderr.match(/^\S+$/gm)?.join(" ")).toBe(places);
      expect(stderr).not.toMatch(/^\s+at /m);
    }
    expect(existsSync(output)).toBe(false);
  });
});
