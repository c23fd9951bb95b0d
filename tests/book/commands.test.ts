/** The three commands as they are called: rightly, wrongly, and on wrong content. */
import { describe, expect, it } from "vitest";
import { parseCommand } from "../../src/book/parse-command.ts";
import { runCommand } from "../setup/run-command.ts";
import { TINY, writeContent } from "./write-content.ts";

describe("the words of a command", () => {
  it.each([
    [["build"], { name: "build" }],
    [["build", "--content=a", "--output=b"], { name: "build", content: "a", output: "b" }],
    [["build", "--content", "a"], { name: "build", content: "a" }],
    [["check", "--content=a"], { name: "check", content: "a" }],
    [["start"], { name: "start" }],
  ])("%j are understood", (words, command) => {
    expect(parseCommand(words)).toEqual(command);
  });

  it.each([
    [[], "There is no command ``: use build, check or start."],
    [["bulid"], "There is no command `bulid`: use build, check or start."],
    [
      ["build", "--outptu=b"],
      "`build` does not know `--outptu`: it takes --content=FOLDER and --output=FOLDER.",
    ],
    [["check", "--output=b"], "`check` does not know `--output`: it takes --content=FOLDER."],
    [["check", "there"], "`check` does not know `there`: it takes --content=FOLDER."],
    [["check", "-c"], "`check` does not know `-c`: it takes --content=FOLDER."],
    [["build", "--content"], "`--content` needs a folder: --content=FOLDER."],
    [["build", "--content="], "`--content` needs a folder: --content=FOLDER."],
  ])("%j are refused in one line", (words, wrong) => {
    expect(parseCommand(words)).toEqual({ wrong });
  });

  it("end a run with 1 and nothing but that line", () => {
    expect(runCommand(["build", "--outptu=b"])).toEqual({
      code: 1,
      stdout: "",
      stderr: "`build` does not know `--outptu`: it takes --content=FOLDER and --output=FOLDER.\n",
    });
  });
});

describe("a check", () => {
  it("says what all the content holds", () => {
    const { code, stdout } = runCommand(["check"]);
    expect(code).toBe(0);
    expect(stdout).toMatch(/^All is well: \d+ patterns, \d+ notebooks and \d+ strips\.\n$/);
  });

  it("tells every problem at once and ends with 1", () => {
    const content = writeContent({
      ...TINY,
      "patterns/halves.md": "---\ntitle: Halves\npurpose: pages\npage: 2\n---\n",
      "notebooks/small.md": "---\ntitle: Small\npaper: A7\npitch: 0\ndots: [12, 18]\n---\n",
    });
    const { code, stdout, stderr } = runCommand(["check", `--content=${content}`]);
    expect({ code, stdout }).toEqual({ code: 1, stdout: "" });
    expect(stderr).toContain("notebooks/small.md:4:8");
    expect(stderr).toContain("patterns/halves.md:3:10");
    expect(stderr).not.toMatch(/^\s+at /m);
  });

  it("says in the report's words that there is no such folder", () => {
    const { code, stderr } = runCommand(["check", "--content=nowhere"]);
    expect(code).toBe(1);
    expect(stderr).toContain("nowhere");
    expect(stderr).not.toMatch(/^\s+at /m);
  });
});
