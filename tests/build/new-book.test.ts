/** A new book on the general layouts, begun as guide and README say: its commands word for word, and what becomes of it. */
import { existsSync, readFileSync, symlinkSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { askProgram } from "../setup/ask-program.ts";
import { demoNames } from "../setup/demo-files.ts";
import { PROJECT } from "../setup/run-command.ts";
import { TINY, writeFiles } from "../setup/tiny-content.ts";
import { startOn, until } from "./serving.ts";
import { scratchFolder } from "./write-content.ts";

const GUIDE = readFileSync(`${PROJECT}site/guide/book.md`, "utf8");

/** The files that the guide asks for. */
const NEW_BOOK = {
  "my-book/book.yaml": exampleIn("book", "two minutes"),
  "my-book/notebooks/ours.md": exampleIn("notebook ours", "two minutes"),
};

/** The first example of a kind below a heading of the guide. */
function exampleIn(kind: string, heading: string): string {
  const below = GUIDE.slice(GUIDE.indexOf(heading));
  return new RegExp(`^\`\`\`yaml ${kind}\\n([\\s\\S]*?)^\`\`\``, "m").exec(below)?.[1] ?? "";
}

/** The words of each command of a text that builds on something, without those that npm takes. */
function commandsIn(text: string): readonly (readonly string[])[] {
  return [...text.matchAll(/^npm (?:run )?(\w+) -- (.*--with=.*)$/gm)].map(
    ([, name = "", words = ""]) => [name, ...words.split(" ")],
  );
}

/** A folder as the guide has it, with the new book beside the demo's content. */
function besideTheDemo(): string {
  const folder = scratchFolder();
  writeFiles(folder, NEW_BOOK);
  symlinkSync(`${PROJECT}content`, join(folder, "content"));
  return folder;
}

const COMMANDS = [...commandsIn(GUIDE), ...commandsIn(readFileSync(`${PROJECT}README.md`, "utf8"))];

describe("a new book on the general layouts", () => {
  it("is built as guide and README say, with every general layout and where it is from", async () => {
    const builds = COMMANDS.filter(([name]) => name === "build");
    expect(new Set(builds.map((words) => words.join(" "))).size).toBe(1);
    const [words = []] = builds;
    const cwd = besideTheDemo();
    const { code, stdout, stderr } = await askProgram(words, { cwd });
    expect({ code, stderr }).toEqual({ code: 0, stderr: "" });
    expect(stdout).toMatch(
      /^Building the book from my-book with content\/general into my-site …\n/,
    );
    const page = (path: string) => readFileSync(join(cwd, "my-site", path, "index.html"), "utf8");
    expect(page("patterns/two-row-week/ours")).toContain(
      '<p class="quiet">From: General layouts</p>',
    );
    expect(page("strips/halves-and-thirds/ours")).toContain("From: General layouts");
    expect(page("notebooks/ours")).not.toContain("From:");
    expect(page("patterns/two-row-week/ours")).not.toContain("Marrow Lane");
    const built = demoNames("patterns").filter((name) =>
      existsSync(join(cwd, "my-site/patterns", name.replace(".md", ""))),
    );
    expect(built.length).toBeGreaterThan(25);
    expect(built).not.toContain("seed-list.md");
  });

  it("is opened as the guide says, and follows an edit of what it builds on", async () => {
    const [words = []] = COMMANDS.filter(([name]) => name === "start");
    expect(words).toEqual(["start", "--content=my-book", "--with=content/general"]);
    const cwd = scratchFolder();
    const pattern = TINY["patterns/halves.md"] ?? "";
    writeFiles(cwd, { ...NEW_BOOK, "content/general/patterns/halves.md": pattern });
    const { address, said } = await startOn(words, cwd);
    const shows = (path: string, text: string) =>
      until(async () => {
        const html = await fetch(address + path).then((answer) => answer.text());
        return html.includes(text) ? html : undefined;
      }, said);
    const page = "patterns/halves/ours/index.html";
    await shows(page, "From: general");
    const edit = (text: string) => writeFiles(cwd, { "content/general/patterns/halves.md": text });
    edit(pattern.replace("title: Halves", "title: Two halves"));
    await shows(page, "Two halves");
    edit(pattern.replace("count: 2", "colum: 2"));
    await shows(page, "./content/general/patterns/halves.md:4:");
    edit(pattern);
    writeFiles(cwd, { "content/general/book.yaml": "title: Of the street\nwith: [more]\n" });
    expect(await shows(page, "From: Of the street")).not.toContain("halves.md:4:");
    expect(said()).toContain("./content/general/book.yaml:2:8");
    writeFiles(cwd, { "content/general/patterns/thirds.md": pattern.replace("Halves", "Thirds") });
    await shows("patterns/index.html", 'data-pattern="thirds"');
  });
});

describe("folders to build on that a command names", () => {
  it.each(["build", "check", "start"])("are told by %s where one is not there", async (name) => {
    const words = [name, "--content=my-book", "--with=content/general", "--with=nowhere"];
    const { code, stderr } = await askProgram(words, { cwd: besideTheDemo() });
    expect([code, stderr.split("\n").slice(0, 2)]).toEqual([
      1,
      ["./nowhere", "  There is no folder `./nowhere` to build on."],
    ]);
  });

  it("are no place for a finished book, nor may they lie in one", async () => {
    const cwd = besideTheDemo();
    writeFiles(cwd, {
      "shared/patterns/halves.md": TINY["patterns/halves.md"] ?? "",
      "my-book/book.yaml": "title: Tried\nwith: [inner]\n",
      "my-book/inner/patterns/wide.md": TINY["patterns/wide.md"] ?? "",
    });
    const refused = async (output: string) => {
      const words = ["build", "--content=my-book", "--with=shared", `--output=${output}`];
      const { code, stderr } = await askProgram(words, { cwd });
      expect(code).toBe(1);
      return stderr.trim().replaceAll(cwd, "");
    };
    expect(await refused("shared/site")).toBe(
      "The output /shared/site lies in /shared, where the next build reads: choose a folder of its own.",
    );
    expect(await refused("my-book/inner/site")).toBe(
      "The output /my-book/inner/site lies in /my-book/inner, where the next build reads: choose a folder of its own.",
    );
    expect(await refused("shared")).toMatch(/^The output \/shared holds \/shared:/);
    expect(existsSync(join(cwd, "shared/patterns/halves.md"))).toBe(true);
  });
});
