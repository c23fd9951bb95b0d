/** `npm run build` on small content: the same bytes everywhere, and nothing lost when something is wrong. */
import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  readlinkSync,
  realpathSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { dirname, join } from "node:path";
import { describe, expect, inject, it } from "vitest";
import { ownFolders, realFolder, whyNotReplace } from "../../src/build/output/why-not-replace.ts";
import { askProgram } from "../setup/ask-program.ts";
import { PROJECT, runCommand } from "../setup/run-command.ts";
import { TINY } from "../setup/tiny-content.ts";
import { bytesIn } from "./files-in.ts";
import { scratchFolder, tinyBook, writeContent } from "./write-content.ts";

const WRONG = {
  ...TINY,
  "patterns/wide.md": "---\ntitle: Wide\npurpos: tracker\npage: {columns: 20}\n---\n",
};

describe("a build", () => {
  it("gives the same bytes again, from folders named from where it was called, in another time zone and language", () => {
    const content = writeContent(TINY);
    const env = { TZ: "Pacific/Kiritimati", LANG: "tr_TR.UTF-8", LC_ALL: "tr_TR.UTF-8" };
    const words = ["build", "--content=content", "--output=out/book"];
    const { code, stderr } = runCommand(words, { cwd: dirname(content), env });
    expect({ code, stderr }).toEqual({ code: 0, stderr: "" });
    const once = bytesIn(inject("tiny"));
    const again = bytesIn(join(dirname(content), "out/book"));
    expect([...again.keys()]).toEqual([...once.keys()]);
    expect([...once].filter(([path, bytes]) => again.get(path) !== bytes)).toEqual([]);
    expect(once.size).toBeGreaterThan(40);
  });

  it("replaces the last book as a whole, through a link that stays a link", async () => {
    const output = tinyBook();
    const link = join(scratchFolder(), "link");
    symlinkSync(output, link);
    const smaller = writeContent({ ...TINY, "book.yaml": "title: Other\nnotebooks: [small]\n" });
    const words = ["build", `--content=${smaller}`, `--output=${link}`];
    expect(await askProgram(words)).toMatchObject({ code: 0, stderr: "" });
    expect(readlinkSync(link)).toBe(output);
    expect(readFileSync(join(output, "index.html"), "utf8")).toContain("<h1>Other</h1>");
    expect(readdirSync(join(output, "notebooks")).sort()).toEqual(["index.html", "small"]);
    expect(readdirSync(dirname(output))).toEqual(["book"]);
  });

  it("does nothing where nothing has changed, and all of it where a file was touched", async () => {
    const content = writeContent(TINY);
    const output = tinyBook();
    const words = ["build", `--content=${content}`, `--output=${output}`];
    expect(await askProgram(words)).toMatchObject({ code: 0, stderr: "" });
    const home = join(output, "index.html");
    const first = statSync(home).mtimeMs;
    expect((await askProgram(words)).stdout).toBe(
      `Building the book from ${content} into ${output} …\n${output}: nothing has changed since it was built.\n`,
    );
    expect(statSync(home).mtimeMs).toBe(first);
    const page = readFileSync(home, "utf8");
    writeFileSync(home, "spoiled");
    expect(await askProgram(words)).toMatchObject({ code: 0, stderr: "" });
    expect(readFileSync(home, "utf8")).toBe(page);
    rmSync(join(output, "guide"), { recursive: true });
    expect(await askProgram(words)).toMatchObject({ code: 0, stderr: "" });
    expect(bytesIn(output)).toEqual(bytesIn(inject("tiny")));
    expect(readdirSync(dirname(output))).toEqual(["book"]);
  });

  it("says why a pattern does not fit, and what would", () => {
    const page = join(inject("tiny"), "patterns/wide/small/index.html");
    const html = readFileSync(page, "utf8");
    expect(html).toContain("Why it does not fit");
    expect(html).toContain("The columns need 20 steps and have 12: 8 too few.");
    expect(html).toContain("Have 12 columns instead of 20.");
  });
});

describe("a build of wrong content", () => {
  it("tells the report, ends with 1, and leaves the last book as it was", () => {
    const output = tinyBook();
    const before = bytesIn(output);
    const wrong = writeContent(WRONG);
    const outcome = runCommand(["build", `--content=${wrong}`, `--output=${output}`]);
    expect(outcome.code).toBe(1);
    expect(outcome.stdout).toBe(`Building the book from ${wrong} into ${output} …\n`);
    expect(outcome.stderr).toBe(
      [
        "patterns/wide.md:3:1",
        "  purpos: tracker",
        "  ^^^^^^",
        "  `purpos` is not a key of a pattern.",
        "  Did you mean `purpose`? A pattern has title, purpose, tags, dates, outside, date, page, spread, otherwise.",
        "",
        "1 problem in 1 file.",
        "",
      ].join("\n"),
    );
    expect(bytesIn(output)).toEqual(before);
    expect(readdirSync(dirname(output))).toEqual(["book"]);
  });

  it("makes no output where there was none", async () => {
    const output = join(scratchFolder(), "book");
    await askProgram(["build", `--content=${writeContent(WRONG)}`, `--output=${output}`]);
    expect(existsSync(output)).toBe(false);
  });
});

describe("a build into a folder that is not its own", () => {
  it("leaves a folder alone that no build made", async () => {
    const output = scratchFolder();
    writeFileSync(join(output, "letter.txt"), "Dear all");
    const { code, stderr } = await askProgram([
      "build",
      `--content=${writeContent(TINY)}`,
      `--output=${output}`,
    ]);
    expect(code).toBe(1);
    expect(stderr).toBe(
      `The output ${output} is not empty and was not made by Spanbook: choose another, or empty it first.\n`,
    );
    expect(readdirSync(output)).toEqual(["letter.txt"]);
  });

  it("leaves a book alone in which someone put a file", async () => {
    const content = writeContent(TINY);
    const output = tinyBook();
    mkdirSync(join(output, "photos"));
    writeFileSync(join(output, "photos/shed.jpg"), "");
    const { code, stderr } = await askProgram([
      "build",
      `--content=${content}`,
      `--output=${output}`,
    ]);
    expect(code).toBe(1);
    expect(stderr).toBe(
      `The output ${output} holds files that Spanbook did not make: photos/shed.jpg. Move them away first.\n`,
    );
    expect(existsSync(join(output, "photos/shed.jpg"))).toBe(true);
  });

  it("never takes a folder that holds the content", async () => {
    const content = writeContent(TINY);
    const output = dirname(content);
    const { code, stderr } = await askProgram([
      "build",
      `--content=${content}`,
      `--output=${output}`,
    ]);
    expect(code).toBe(1);
    expect(stderr).toBe(`The output ${output} holds ${content}: choose a folder of its own.\n`);
  });

  it.each([
    ["one that lists its files", "A book made by Spanbook.\nindex.html\n"],
    ["one of another folder", undefined],
  ])("leaves a folder alone that somebody gave a marker: %s", async (_, forged) => {
    const content = writeContent(TINY);
    const marker = forged ?? readFileSync(join(inject("tiny"), ".spanbook"), "utf8");
    const output = scratchFolder();
    writeFileSync(join(output, "index.html"), "Dear all");
    writeFileSync(join(output, ".spanbook"), marker);
    const { code, stderr } = await askProgram([
      "build",
      `--content=${content}`,
      `--output=${output}`,
    ]);
    expect(code).toBe(1);
    expect(stderr).toBe(
      forged
        ? `The output ${output} is not empty and was not made by Spanbook: choose another, or empty it first.\n`
        : `The output ${output} holds files that Spanbook did not make: index.html. Move them away first.\n`,
    );
    expect(readFileSync(join(output, "index.html"), "utf8")).toBe("Dear all");
  });

  it.each(["site", "layouts", "src", "tests", "content", "node_modules", ".git", ".cache"])(
    "never lies in the program's own %s, by whatever way",
    async (name) => {
      const real = realpathSync(join(PROJECT, name));
      const link = join(scratchFolder(), "link");
      symlinkSync(real, link);
      const guarded = { whole: [], read: [], own: await ownFolders(PROJECT) };
      for (const way of [join(PROJECT, name), link]) {
        const output = await realFolder(join(way, "below", "book"));
        expect(await whyNotReplace(output, guarded)).toBe(
          `The output ${real}/below/book lies in ${real}, which is the program's own: choose a folder outside of it.`,
        );
      }
    },
  );

  it("is told so when it lies in the program's pages", async () => {
    const output = join(PROJECT, "site/book");
    const { code, stderr } = await askProgram([
      "build",
      `--content=${writeContent(TINY)}`,
      `--output=${output}`,
    ]);
    expect(code).toBe(1);
    expect(stderr).toContain(`lies in ${join(PROJECT, "site")}, which is the program's own`);
    expect(existsSync(output)).toBe(false);
  });

  it("never is the program's own folder", async () => {
    const { code, stderr } = await askProgram([
      "build",
      `--content=${writeContent(TINY)}`,
      `--output=${PROJECT}`,
    ]);
    expect(code).toBe(1);
    expect(stderr).toContain("choose a folder of its own");
  });

  it.each(["notebooks", "patterns", "strips", "setups"])(
    "never lies in the content's %s",
    async (name) => {
      const content = writeContent(TINY);
      const output = join(content, name, "book");
      const { code, stderr } = await askProgram([
        "build",
        `--content=${content}`,
        `--output=${output}`,
      ]);
      expect(code).toBe(1);
      expect(stderr).toBe(
        `The output ${output} lies in ${join(content, name)}, where the next build reads: choose a folder of its own.\n`,
      );
      expect(existsSync(output)).toBe(false);
    },
  );
});
