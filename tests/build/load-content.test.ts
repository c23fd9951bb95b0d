/** A whole content folder, as it lies on disk, with everything that can be wrong between its files. */
import { execFileSync } from "node:child_process";
import { mkdir, mkdtemp, rm, symlink, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterEach, describe, expect, it } from "vitest";
import { type Content, loadContent } from "../../src/build/content/load-content.ts";
import { reportIssues } from "../../src/issue/report/report.ts";

const folders: string[] = [];

afterEach(async () => {
  for (const folder of folders.splice(0)) await rm(folder, { recursive: true });
});

type Files = Readonly<Record<string, string | Uint8Array>>;

const notebook = (more = "") => `---\ntitle: A5\npaper: A5\npitch: 5\ndots: [26, 38]\n${more}---\n`;
const pattern = (page = "{rows: 3}") => `---\ntitle: Seeds\npurpose: list\npage: ${page}\n---\n`;
const strip = (across: string) => `---\ntitle: Everyday\nacross: ${across}\n---\n`;

const GOOD: Files = {
  "book.yaml": "title: The Book\n",
  "notebooks/a5.md": notebook(),
  "patterns/seed-list.md": pattern(),
};

/** A new folder with these files in it. */
async function folderWith(files: Files): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), "spanbook-"));
  folders.push(folder);
  for (const [path, text] of Object.entries(files)) {
    await mkdir(dirname(join(folder, path)), { recursive: true });
    await writeFile(join(folder, path), text);
  }
  return folder;
}

async function contentOf(files: Files): Promise<Content> {
  const reading = await loadContent(await folderWith(files));
  if (!reading.ok) throw new Error(reportIssues(reading.issues, reading.texts));
  return reading.value;
}

async function reportOn(folder: string): Promise<string> {
  const reading = await loadContent(folder);
  return reading.ok ? "" : reportIssues(reading.issues, reading.texts);
}

const slugs = (values: readonly { readonly slug: string }[]) => values.map(({ slug }) => slug);

describe("a content folder", () => {
  it("is read in the order of its names, whatever the case of others", async () => {
    const content = await contentOf({
      ...GOOD,
      "notebooks/b5.md": notebook(),
      "notebooks/a10.md": notebook(),
      "patterns/a-list.md": pattern(),
      "patterns/a1.md": pattern(),
      "strips/everyday.md": strip("[seed-list, a1]"),
      "patterns/.hidden.md": "not read",
      "patterns/picture.svg": "<svg/>",
    });
    expect(slugs(content.notebooks)).toEqual(["a10", "a5", "b5"]);
    expect(slugs(content.recipes)).toEqual(["a-list", "a1", "seed-list"]);
    expect(slugs(content.strips)).toEqual(["everyday"]);
    expect([...content.texts.keys()].sort()).toEqual([
      "book.yaml",
      "notebooks/a10.md",
      "notebooks/a5.md",
      "notebooks/b5.md",
      "patterns/a-list.md",
      "patterns/a1.md",
      "patterns/seed-list.md",
      "strips/everyday.md",
    ]);
  });

  it("has the clock that its calendar states, for the moon", async () => {
    const content = await contentOf({
      ...GOOD,
      "book.yaml": 'title: The Book\ncalendar: {utcOffset: "+01:00"}\n',
      "patterns/moon.md": pattern('{label: "{moon}"}\ndates: day'),
    });
    expect(content.utcOffset).toBe(60);
  });

  it("has the notebooks and patterns that the book lists, in the book's order", async () => {
    const content = await contentOf({
      ...GOOD,
      "notebooks/b5.md": notebook(),
      "notebooks/a6.md": notebook(),
      "patterns/bed-plan.md": pattern(),
      "book.yaml": "title: The Book\nnotebooks: [b5, a5]\npatterns: [seed-list]\n",
    });
    expect(slugs(content.notebooks)).toEqual(["b5", "a5"]);
    expect(slugs(content.recipes)).toEqual(["seed-list"]);
    expect(slugs(content.unlisted)).toEqual([]);
  });

  it("has those patterns aside that it does not list and a strip carries", async () => {
    const content = await contentOf({
      ...GOOD,
      "patterns/bed-plan.md": pattern(),
      "patterns/slug-hunt.md": pattern(),
      "patterns/tool-count.md": pattern(),
      "strips/everyday.md": strip("[slug-hunt, seed-list, bed-plan]"),
      "book.yaml": "title: The Book\npatterns: [seed-list]\n",
    });
    expect(slugs(content.recipes)).toEqual(["seed-list"]);
    expect(slugs(content.unlisted)).toEqual(["bed-plan", "slug-hunt"]);
  });

  it("may have a pad bound at the top beside notebooks whose margins do not clash", async () => {
    const content = await contentOf({
      ...GOOD,
      "notebooks/pad.md": notebook("binding: top\n"),
      "patterns/seed-list.md": pattern("{margin: {top: 1, inner: 1}}"),
    });
    expect(slugs(content.notebooks)).toEqual(["a5", "pad"]);
  });

  it("may be reached by a link, and may link inside itself", async () => {
    const folder = await folderWith(GOOD);
    await symlink(join(folder, "patterns/seed-list.md"), join(folder, "patterns/linked.md"));
    const link = `${folder}-link`;
    await symlink(folder, link);
    folders.push(link);
    const reading = await loadContent(link);
    expect(reading.ok && slugs(reading.value.recipes)).toEqual(["linked", "seed-list"]);
  });
});

describe("the report on a content folder", () => {
  it("names a folder that is not there", async () => {
    const folder = join(await folderWith({}), "gone");
    expect(await reportOn(folder)).toBe(`${folder}
  This folder is missing.
  Content is a folder with \`notebooks\`, \`patterns\`, \`strips\`, \`setups\` and \`book.yaml\` in it.

1 problem in 1 file.`);
  });

  it("is proposed no name that is taken, and none that is cut", async () => {
    const folder = await folderWith({
      ...GOOD,
      "patterns/Seed List.md": pattern(),
      "patterns/Tool Count.md": pattern(),
      "patterns/tool_count.md": pattern(),
      [`patterns/${"Bed and Path ".repeat(7)}.md`]: pattern(),
      [`patterns/${"Z".repeat(90)}.md`]: pattern(),
    });
    const hints = (await reportOn(folder)).match(
      /^ {2}(?:Call it|It cannot) [^.]*\.(?:md[^.]*\.)?/gm,
    );
    expect(hints).toEqual([
      "  Call it `bed-and-path-bed-and-path-bed-and-path-bed.md`.",
      "  It cannot be called `seed-list.md`, which is taken: choose another name.",
      "  Call it `tool-count.md`.",
      `  Call it \`${"z".repeat(45)}.md\`.`,
      "  It cannot be called `tool-count.md`, which is taken: choose another name.",
    ]);
  });

  it("is told to empty what stands beside the right one, and what is wrong in that", async () => {
    const folder = await folderWith({
      ...GOOD,
      "book.yaml": "title: The Book\nnotebooks: [a5, nowhere]\n",
      "book.yml": "title: The Book\n",
      "notebook/a6.md": notebook(),
      "word.yaml": "groups: [[slug, snail]]\n",
    });
    expect(await reportOn(folder)).toBe(
      `book.yaml:2:17
  notebooks: [a5, nowhere]
                  ^^^^^^^
  There is no notebook \`nowhere\`.
  There are \`a5\`.

book.yml
  \`book.yml\` is not read: no file or folder of the content has this name.
  There is a file \`book.yaml\` already: write into it what only this one has, or move it out of the content folder.

notebook
  \`notebook\` is not read: no file or folder of the content has this name.
  There is a folder \`notebooks\` already: move what is in this one into it, or move it out of the content folder.

word.yaml
  \`word.yaml\` is not read: no file or folder of the content has this name.
  Call it \`words.yaml\`, or move it out of the content folder.

4 problems in 4 files.`,
    );
  });

  it("names everything that an empty one lacks", async () => {
    expect(await reportOn(await folderWith({ "notebooks/readme": "" }))).toBe(`book.yaml
  This file is missing.
  A content folder has a \`book.yaml\` that gives at least a title.

notebooks
  The folder holds no .md file.
  A book needs at least one.

patterns
  This folder is missing.
  Content is a folder with \`notebooks\`, \`patterns\`, \`strips\`, \`setups\` and \`book.yaml\` in it.

3 problems in 3 files.`);
  });

  it.each<[string, Files, string]>([
    [
      "a notebook and a pattern that the book names and nobody wrote",
      { "book.yaml": "title: The Book\nnotebooks: [a5, a4]\npatterns: [seed-lists]\n" },
      `book.yaml:2:17
  notebooks: [a5, a4]
                  ^^
  There is no notebook \`a4\`.
  There are \`a5\`.

book.yaml:3:12
  patterns: [seed-lists]
             ^^^^^^^^^^
  There is no pattern \`seed-lists\`.
  Did you mean \`seed-list\`? There are \`seed-list\`.

2 problems in 1 file.`,
    ],
    [
      "a plain division of a strip that is called as a pattern is",
      {
        "strips/everyday.md": strip(
          '[{title: "Seed: list!", split: 2}, {title: Halves, split: 2}]',
        ),
      },
      `strips/everyday.md:3:18
  across: [{title: "Seed: list!", split: 2}, {title: Halves, split: 2}]
                   ^^^^^^^^^^^^^
  A plain division cannot have this title: \`seed-list\` is a pattern.
  Give it another title, or name the pattern itself: \`{pattern: seed-list}\`.

1 problem in 1 file.`,
    ],
    [
      "a label that asks for the moon in a book without a clock",
      { "patterns/seed-list.md": pattern('{label: "{moon}"}\ndates: day') },
      `patterns/seed-list.md:4:15
  page: {label: "{moon}"}
                ^^^^^^^^
  The date of a full moon depends on the time zone, and this book names none.
  Add \`calendar: {utcOffset: "+00:00"}\` to \`book.yaml\`, with the hours that your clock is ahead of UTC, or leave \`{moon}\` out.

1 problem in 1 file.`,
    ],
    [
      "patterns that a strip cannot carry",
      {
        "book.yaml": "title: The Book\npatterns: [seed-list]\n",
        "patterns/bed-plan.md": pattern(),
        "strips/everyday.md": strip("[seed-list, bed-plan, bed-plans, gone]"),
      },
      `strips/everyday.md:3:31
  across: [seed-list, bed-plan, bed-plans, gone]
                                ^^^^^^^^^
  There is no pattern \`bed-plans\`.
  Did you mean \`bed-plan\`? There are \`bed-plan\`, \`seed-list\`.

strips/everyday.md:3:42
  across: [seed-list, bed-plan, bed-plans, gone]
                                           ^^^^
  There is no pattern \`gone\`.
  There are \`bed-plan\`, \`seed-list\`.

2 problems in 1 file.`,
    ],
    [
      "margins that land on one side, once for each margin and binding",
      {
        "notebooks/b5.md": notebook("binding: none\n"),
        "patterns/seed-list.md": pattern(
          "{margin: {left: 1, inner: 1}, rows: {count: 9, each: {margin: {left: 1, outer: 1}}}}",
        ),
        "patterns/bed-plan.md":
          "---\ntitle: Beds\npurpose: page\nspread: {left: {margin: {right: 1, inner: 1}}, right: {}}\n---\n",
        "book.yaml": "title: The Book\nnotebooks: [a5]\n",
      },
      `patterns/bed-plan.md:4:25
  spread: {left: {margin: {right: 1, inner: 1}}, right: {}}
                          ^^^^^^^^^^^^^^^^^^^^
  \`right\` and \`inner\` land on the same side, the right, of a left page that is bound at the left.
  Keep one of them. \`a5\` is bound at the left.

patterns/seed-list.md:4:16
  page: {margin: {left: 1, inner: 1}, rows: {count: 9, each: {margin: {left: 1, outer: 1}}}}
                 ^^^^^^^^^^^^^^^^^^^
  \`left\` and \`inner\` land on the same side, the left, of a page that is bound at the left.
  Keep one of them. \`a5\` is bound at the left.

2 problems in 2 files.`,
    ],
    [
      "margins that land on one side, of a pattern that only a strip carries",
      {
        "patterns/bed-plan.md": pattern("{margin: {left: 1, inner: 1}}"),
        "patterns/slug-hunt.md": pattern("{margin: {left: 1, inner: 1}}"),
        "strips/everyday.md": strip("[bed-plan]"),
        "book.yaml": "title: The Book\npatterns: [seed-list]\n",
      },
      `patterns/bed-plan.md:4:16
  page: {margin: {left: 1, inner: 1}}
                 ^^^^^^^^^^^^^^^^^^^
  \`left\` and \`inner\` land on the same side, the left, of a page that is bound at the left.
  Keep one of them. \`a5\` is bound at the left.

1 problem in 1 file.`,
    ],
    [
      "margins that land on one side of the only notebooks, pads bound at the top",
      {
        "notebooks/pad.md": notebook("binding: top\n"),
        "notebooks/tall.md": notebook("binding: top\n"),
        "book.yaml": "title: The Book\nnotebooks: [pad, tall]\n",
        "patterns/seed-list.md": pattern("{margin: {top: 1, inner: 1}}"),
      },
      `patterns/seed-list.md:4:16
  page: {margin: {top: 1, inner: 1}}
                 ^^^^^^^^^^^^^^^^^^
  \`top\` and \`inner\` land on the same side, the top, of a page that is bound at the top.
  Keep one of them. \`pad\` and \`tall\` are bound at the top.

1 problem in 1 file.`,
    ],
    [
      "names that a page cannot have",
      {
        "patterns/Seed List.md": pattern(),
        "patterns/Gemüse.MD": "",
        "patterns/late.markdown": "",
      },
      `patterns/Gemüse.MD
  \`Gemüse.MD\` is not a name that a page can have.
  Call it \`gemuse.md\`. Names end in .md and have small letters a–z, digits and hyphens, not a hyphen first.

patterns/Seed List.md
  \`Seed List.md\` is not a name that a page can have.
  It cannot be called \`seed-list.md\`, which is taken: choose another name. Names end in .md and have small letters a–z, digits and hyphens, not a hyphen first.

patterns/late.markdown
  \`late.markdown\` is not a name that a page can have.
  Call it \`late.md\`. Names end in .md and have small letters a–z, digits and hyphens, not a hyphen first.

3 problems in 3 files.`,
    ],
    [
      "names that Windows keeps for devices",
      { "patterns/aux.md": pattern(), "notebooks/LPT1.txt": notebook() },
      `notebooks/LPT1.txt
  \`LPT1.txt\` is a name that Windows keeps for a device: a book with it could not be unpacked there.
  Call it \`lpt1-1.md\`. Names end in .md and have small letters a–z, digits and hyphens, not a hyphen first.

patterns/aux.md
  \`aux.md\` is a name that Windows keeps for a device: a book with it could not be unpacked there.
  Call it \`aux-1.md\`. Names end in .md and have small letters a–z, digits and hyphens, not a hyphen first.

2 problems in 2 files.`,
    ],
    [
      "folders within a folder, with whatever in them was meant to be read",
      {
        "patterns/weeks/one.md": pattern(),
        "patterns/weeks/more/two.yaml": "",
        "notebooks/old/a6.md": notebook(),
        "strips/pictures/strip.png": "",
        "strips/.drafts/everyday.md": strip("[seed-list]"),
      },
      `notebooks/old
  The file in this folder is not read: \`notebooks\` has no folders in it.
  Put it into \`notebooks\` itself, or move the folder out of it.

patterns/weeks
  The 2 files in this folder are not read: \`patterns\` has no folders in it.
  Put them into \`patterns\` itself, or move the folder out of it.

2 problems in 2 files.`,
    ],
    [
      "files with other endings, by how they begin",
      {
        "patterns/bed-week.md.txt": pattern(),
        "patterns/slug-hunt.yml": pattern(),
        "patterns/tool-count": pattern(),
        "patterns/frost.page": `\uFEFF${pattern().replaceAll("\n", "\r\n")}`,
      },
      `patterns/bed-week.md.txt
  \`bed-week.md.txt\` is not a name that a page can have.
  Call it \`bed-week.md\`. Names end in .md and have small letters a–z, digits and hyphens, not a hyphen first.

patterns/frost.page
  \`frost.page\` is not a name that a page can have.
  Call it \`frost-page.md\`. Names end in .md and have small letters a–z, digits and hyphens, not a hyphen first.

patterns/slug-hunt.yml
  \`slug-hunt.yml\` is not a name that a page can have.
  Call it \`slug-hunt.md\`. Names end in .md and have small letters a–z, digits and hyphens, not a hyphen first.

patterns/tool-count
  \`tool-count\` is not a name that a page can have.
  Call it \`tool-count.md\`. Names end in .md and have small letters a–z, digits and hyphens, not a hyphen first.

4 problems in 4 files.`,
    ],
    [
      "folders and a book with slips in their names, beside the right ones",
      {
        "pattern/bed-plan.md": pattern(),
        "Notebooks/deep/a6.md": notebook(),
        "strip/everyday.md": strip("[seed-list]"),
        "calendars/society.ics": "BEGIN:VCALENDAR\nEND:VCALENDAR\n",
        "book.yml": "title: Another\n",
        "bed-week.md": pattern(),
      },
      `Notebooks
  \`Notebooks\` is not read: no file or folder of the content has this name.
  There is a folder \`notebooks\` already: move what is in this one into it, or move it out of the content folder.

bed-week.md
  The file is not read: it lies in none of the folders.
  Put it into \`notebooks\`, \`patterns\`, \`strips\` or \`setups\`.

book.yml
  \`book.yml\` is not read: no file or folder of the content has this name.
  There is a file \`book.yaml\` already: write into it what only this one has, or move it out of the content folder.

calendars
  \`calendars\` is not read: no file or folder of the content has this name.
  Call it \`calendar\`, or move it out of the content folder.

pattern
  \`pattern\` is not read: no file or folder of the content has this name.
  There is a folder \`patterns\` already: move what is in this one into it, or move it out of the content folder.

strip
  \`strip\` is not read: no file or folder of the content has this name.
  Call it \`strips\`, or move it out of the content folder.

6 problems in 6 files.`,
    ],
    [
      "a file where a folder is to be",
      { strips: "everyday" },
      `strips
  This is a file, not a folder.
  Content is a folder with \`notebooks\`, \`patterns\`, \`strips\`, \`setups\` and \`book.yaml\` in it.

1 problem in 1 file.`,
    ],
    [
      "files that are no text, and too large ones",
      {
        "patterns/latin.md": Uint8Array.from([0x2d, 0x2d, 0x2d, 0x0a, 0x61, 0x62, 0xe4, 0x0a]),
        "patterns/large.md": `${pattern()}${"x".repeat(256 * 1024)}`,
      },
      `patterns/large.md
  The file is larger than 256 KiB.
  Make several files of it.

patterns/latin.md:2:3
  The file is not UTF-8 text: in line 2 a character is in another encoding.
  Save it again as plain text in UTF-8.

2 problems in 2 files.`,
    ],
  ])("tells of %s", async (_, files, report) => {
    expect(await reportOn(await folderWith({ ...GOOD, ...files }))).toBe(report);
  });

  it("tells of links that lead out of the folder, to nothing, or to a folder", async () => {
    const folder = await folderWith(GOOD);
    const outside = await folderWith({ "secret.md": pattern(), "strips/everyday.md": "" });
    await symlink(join(outside, "secret.md"), join(folder, "patterns/secret.md"));
    await symlink(join(folder, "nothing.md"), join(folder, "patterns/nothing.md"));
    await symlink(join(outside, "strips"), join(folder, "strips"));
    await mkdir(join(folder, "patterns/folder.md"));
    const told = (await reportOn(folder))
      .split("\n\n")
      .map((block) => block.split("\n").slice(0, 2));
    expect(told).toEqual([
      ["patterns/folder.md", "  The file cannot be read."],
      ["patterns/nothing.md", "  The link leads to nothing."],
      ["patterns/secret.md", "  The link leads out of the content folder."],
      ["strips", "  The link leads out of the content folder."],
      ["4 problems in 4 files."],
    ]);
  });

  it("tells a wrong name once, and not also that the right one is missing", async () => {
    const report = await reportOn(
      await folderWith({
        "Book.yaml": "title: The Book\n",
        "notebook/a5.md": notebook(),
        "Patterns/seed-list.md": pattern(),
        "strips/everyday.md": strip("[seed-list]"),
      }),
    );
    expect(report.match(/^\S+$/gm)).toEqual(["Book.yaml", "Patterns", "notebook"]);
    expect(report).toContain("Call it `patterns`");
  });

  it("says nothing of hidden files, what editors leave behind, and other things beside the content", async () => {
    const text = pattern();
    const folder = await folderWith({
      ...GOOD,
      "patterns/seed-list.md~": text,
      "patterns/#seed-list.md#": text,
      "patterns/.seed-list.md.swp": text,
      "patterns/seed-list.md.bak": text,
      "patterns/seed-list.md.orig": text,
      "patterns/.DS_Store": "",
      "patterns/.old/seed-list.md": text,
      "patterns/seeds.jpg": "",
      "book.yaml~": "title: Old\n",
      ".book.yml": "title: Old\n",
      "readme.md": "# The society's book\n",
      "drafts/bed-week.md": text,
      "pictures/shed.md": text,
      "notes/monday.md": text,
      "scripts/send.md": text,
      "pattern/empty.png": "",
    });
    expect(await reportOn(folder)).toBe("");
  });

  it("does not wait for a pipe", async () => {
    const folder = await folderWith(GOOD);
    execFileSync("mkfifo", [join(folder, "patterns/pipe"), join(folder, "patterns/pipe.md")]);
    const report = await reportOn(folder);
    expect(report.match(/^\S+$/gm)).toEqual(["patterns/pipe.md"]);
  });

  it.each([
    ["a file", "  This is a file, not a folder."],
    ["a link to nothing", "  This folder is missing."],
    ["a link to itself", "  The folder cannot be read."],
  ])("names a content folder that is %s", async (kind, sentence) => {
    const content = join(await folderWith({ letter: "Dear all" }), "content");
    if (kind === "a file") await writeFile(content, "");
    else await symlink(kind === "a link to nothing" ? `${content}-gone` : content, content);
    expect((await reportOn(content)).split("\n").slice(0, 2)).toEqual([content, sentence]);
  });

  it("follows a link to a folder within a folder, and tells of one that leads nowhere", async () => {
    const folder = await folderWith(GOOD);
    const outside = await folderWith({ "bed-plan.md": pattern() });
    await symlink(outside, join(folder, "patterns/weeks"));
    await symlink(join(outside, "gone"), join(folder, "strips"));
    const report = await reportOn(folder);
    expect(report.match(/^\S+$/gm)).toEqual(["patterns/weeks", "strips"]);
  });

  it("tells all at once, and does not call a file unknown that is only wrong", async () => {
    const report = await reportOn(
      await folderWith({
        ...GOOD,
        "book.yaml": "title: The Book\nnotebooks: [a5]\npatterns: [seed-list]\n",
        "notebooks/a5.md": notebook("bindng: left\n"),
        "patterns/seed-list.md": pattern("{rows: 0}"),
        "strips/everyday.md": strip("[seed-list]"),
      }),
    );
    expect(report.match(/^\S+:\d+:\d+$/gm)).toEqual([
      "notebooks/a5.md:6:1",
      "patterns/seed-list.md:4:14",
    ]);
    expect(report.endsWith("2 problems in 2 files.")).toBe(true);
  });

  it("looks up the names in files in which something else is wrong", async () => {
    const report = await reportOn(
      await folderWith({
        ...GOOD,
        "book.yaml":
          "notebooks: [a5, nope]\npatterns: [seed-list, seed-list, seed-lits]\nurl: nowhere\n",
        "strips/everyday.md": "---\ntitle: Everyday\nacross: [sevn]\nlanes: 99\n---\n",
      }),
    );
    expect(report).toBe(`book.yaml:1:1
  notebooks: [a5, nope]
  ^^^
  The book needs the key \`title\`.
  \`title\` takes one line of text, at most 200 characters.

book.yaml:1:17
  notebooks: [a5, nope]
                  ^^^^
  There is no notebook \`nope\`.
  There are \`a5\`.

book.yaml:2:23
  patterns: [seed-list, seed-list, seed-lits]
                        ^^^^^^^^^
  \`seed-list\` is named twice.
  It stands in line 2 already: keep one of the two.

book.yaml:2:34
  patterns: [seed-list, seed-list, seed-lits]
                                   ^^^^^^^^^
  There is no pattern \`seed-lits\`.
  Did you mean \`seed-list\`? There are \`seed-list\`.

book.yaml:3:6
  url: nowhere
       ^^^^^^^
  \`url\` cannot be \`nowhere\`.
  \`url\` takes an address that begins with https:// or http://.

strips/everyday.md:3:10
  across: [sevn]
           ^^^^
  There is no pattern \`sevn\`.
  There are \`seed-list\`.

strips/everyday.md:4:8
  lanes: 99
         ^^
  \`lanes\` cannot be \`99\`.
  \`lanes\` takes a whole number of lanes from 1 to 12.

7 problems in 2 files.`);
  });

  it("says that margins clash in a book in which something else is wrong, for its own notebooks", async () => {
    const files = {
      ...GOOD,
      "notebooks/b5.md": notebook("binding: right\n"),
      "patterns/seed-list.md": pattern("{margin: {right: 1, inner: 1}}"),
    };
    const book = (notebooks: string) => ({ ...files, "book.yaml": `notebooks: ${notebooks}\n` });
    expect(await reportOn(await folderWith(book("[a5]")))).not.toContain("land on");
    expect(await reportOn(await folderWith(book("[b5]")))).toContain("land on the same side");
  });

  it("checks what the book leaves out, too", async () => {
    const report = await reportOn(
      await folderWith({
        ...GOOD,
        "book.yaml": "title: The Book\nnotebooks: [a5]\n",
        "notebooks/b5.md": notebook("binding: under\n"),
      }),
    );
    expect(report).toContain("notebooks/b5.md:6:10");
  });
});

it("reads the whole demo book", async () => {
  const reading = await loadContent(fileURLToPath(new URL("../../content", import.meta.url)));
  expect(reading.ok && reading.value.recipes.length).toBeGreaterThan(15);
});
