/** Folders that a book builds on: what they bring, what is told where one cannot be read, and that nothing outside is reached. */
import { symlinkSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { readContent } from "../../src/build/content/check-content.ts";
import { loadContent } from "../../src/build/content/load-content.ts";
import { reportIssues, reportNotes } from "../../src/issue/report/report.ts";
import { writeFiles } from "../setup/tiny-content.ts";
import { scratchFolder } from "./write-content.ts";

type Files = Readonly<Record<string, string>>;

const NOTEBOOK = "---\ntitle: A5\npaper: A5\npitch: 5\ndots: [26, 38]\n---\n";
const PATTERN = "---\ntitle: Seeds\npurpose: list\npage: {rows: 3}\n---\n";
const STRIP = "---\ntitle: Everyday\nacross: [seed-list]\n---\n";
const SETUP = "---\ntitle: March\ndates: 2027-03\npages: [seed-list]\n---\n";

const book = (more = "with: [base]\n") => `title: The Book\n${more}`;

/** A book that has a notebook of its own and builds on a folder with a pattern. */
const GOOD: Files = {
  "content/book.yaml": book(),
  "content/notebooks/a5.md": NOTEBOOK,
  "content/base/patterns/seed-list.md": PATTERN,
};

/** A scratch folder with these files in it, and links from a path to what it leads to. */
function scratchWith(files: Files, links: Files = {}): string {
  const folder = scratchFolder();
  writeFiles(folder, files);
  for (const [path, target] of Object.entries(links)) symlinkSync(target, join(folder, path));
  return folder;
}

/** The folders that a command names, as they are told from where it was typed. */
const named = (folder: string, names: readonly string[]) =>
  names.map((name) => ({ folder: join(folder, name), shown: `./${name}` }));

async function contentIn(folder: string, names: readonly string[] = []) {
  const reading = await loadContent(join(folder, "content"), { packs: named(folder, names) });
  if (!reading.ok) throw new Error(reportIssues(reading.issues, reading.texts));
  return reading.value;
}

async function reportOn(folder: string, names: readonly string[] = []): Promise<string> {
  const reading = await loadContent(join(folder, "content"), { packs: named(folder, names) });
  return reading.ok ? "" : reportIssues(reading.issues, reading.texts);
}

const slugs = (values: readonly { readonly slug: string }[]) => values.map(({ slug }) => slug);

describe("a book", () => {
  it("has what lies in all of its folders, by name, and knows what comes from where", async () => {
    const folder = scratchWith({
      ...GOOD,
      "content/patterns/bed-plan.md": PATTERN,
      "content/patterns/tool-count.md": PATTERN,
      "content/base/book.yaml": "title: The base\n",
      "content/base/strips/everyday.md": STRIP,
      "shared/notebooks/a6.md": NOTEBOOK,
      "shared/setups/march.md": SETUP,
      "shared/patterns/slug-hunt.md": PATTERN,
    });
    const content = await contentIn(folder, ["shared"]);
    expect(slugs(content.notebooks)).toEqual(["a5", "a6"]);
    expect(slugs(content.recipes)).toEqual(["bed-plan", "seed-list", "slug-hunt", "tool-count"]);
    expect(slugs(content.strips)).toEqual(["everyday"]);
    expect(slugs(content.setups)).toEqual(["march"]);
    expect(Object.fromEntries(content.origins)).toEqual({
      "patterns/seed-list.md": "The base",
      "strips/everyday.md": "The base",
      "notebooks/a6.md": "shared",
      "setups/march.md": "shared",
      "patterns/slug-hunt.md": "shared",
    });
    expect(content.texts.get("patterns/seed-list.md")).toBe(PATTERN);
    expect(content.book.title).toBe("The Book");
  });

  it("has the words that all of its folders call alike, and is told what is wrong with them", async () => {
    const files: Files = {
      ...GOOD,
      "content/words.yaml": "groups: [[slug, snail]]\n",
      "content/base/words.yaml": "groups:\n  - [to-do, task]\n  - [bean, pulse]\n",
      "shared/words.yaml": "groups: [[snail, escargot]]\n",
    };
    const { words, texts } = await contentIn(scratchWith(files), ["shared"]);
    expect(words).toEqual([
      ["to-do", "task"],
      ["bean", "pulse"],
      ["snail", "escargot"],
      ["slug", "snail"],
    ]);
    expect(texts.get("base/words.yaml")).toContain("pulse");
    expect((await contentIn(scratchWith(GOOD))).words).toEqual([]);
    const wrong = { ...files, "content/base/words.yaml": "groups: [bean, pulse]\n" };
    expect(await reportOn(scratchWith(wrong), ["shared"])).toContain("base/words.yaml:1:10");
  });

  it("chooses from all of them, in its own order", async () => {
    const lists =
      "notebooks: [a6, a5]\npatterns: [slug-hunt, bed-plan]\nstrips: [weeks, everyday]\nsetups: [march]\nwith: [base]\n";
    const folder = scratchWith({
      ...GOOD,
      "content/book.yaml": book(lists),
      "content/patterns/bed-plan.md": PATTERN,
      "shared/notebooks/a6.md": NOTEBOOK,
      "shared/patterns/slug-hunt.md": PATTERN,
      "shared/setups/march.md": SETUP,
      "shared/setups/april.md": SETUP,
      "shared/strips/weeks.md": STRIP,
      "content/base/strips/all.md": STRIP,
      "content/base/strips/everyday.md": STRIP,
    });
    const content = await contentIn(folder, ["shared"]);
    expect(slugs(content.notebooks)).toEqual(["a6", "a5"]);
    expect(slugs(content.recipes)).toEqual(["slug-hunt", "bed-plan"]);
    expect(slugs(content.unlisted)).toEqual(["seed-list"]);
    expect(slugs(content.strips)).toEqual(["weeks", "everyday"]);
    expect(slugs(content.setups)).toEqual(["march"]);
  });

  it("is told a name in its lists that none of them has", async () => {
    const lists = "strips: [everyday, evryday]\nwith: [base]\n";
    const files = { "content/book.yaml": book(lists), "content/base/strips/everyday.md": STRIP };
    expect(await reportOn(scratchWith({ ...GOOD, ...files }))).toBe(`book.yaml:2:20
  strips: [everyday, evryday]
                     ^^^^^^^
  There is no strip \`evryday\`.
  Did you mean \`everyday\`? There are \`everyday\`.

1 problem in 1 file.`);
  });

  it("may have nothing of its own but a title", async () => {
    const folder = scratchWith({
      "content/book.yaml": book(""),
      "shared/notebooks/a5.md": NOTEBOOK,
      "shared/patterns/seed-list.md": PATTERN,
    });
    expect(slugs((await contentIn(folder, ["shared"])).recipes)).toEqual(["seed-list"]);
  });

  it("builds on a hundred folders", async () => {
    const names = Array.from({ length: 100 }, (_, index) => `base-${index}`);
    const files = names.map((name) => [`content/${name}/patterns/of-${name}.md`, PATTERN]);
    const folder = scratchWith({
      ...Object.fromEntries(files),
      "content/notebooks/a5.md": NOTEBOOK,
      "content/book.yaml": book(`with: [${names.join(", ")}]\n`),
    });
    expect((await contentIn(folder)).recipes).toHaveLength(100);
  });

  it("follows links that stay inside, and any that a command names", async () => {
    const links = { "content/base": "elsewhere", shared: "far" };
    const folder = scratchWith(
      {
        "content/book.yaml": book(),
        "content/notebooks/a5.md": NOTEBOOK,
        "content/elsewhere/patterns/seed-list.md": PATTERN,
        "far/patterns/bed-plan.md": PATTERN,
      },
      links,
    );
    expect(slugs((await contentIn(folder, ["shared"])).recipes)).toEqual(["bed-plan", "seed-list"]);
  });
});

describe("the general layouts that come with the program", () => {
  const files = {
    "content/book.yaml": book("with: [spanbook/general]\n"),
    "content/notebooks/a5.md": NOTEBOOK,
    "shipped/book.yaml": "title: General layouts\n",
    "shipped/patterns/seed-list.md": PATTERN,
  };
  const read = (folder: string) =>
    readContent(join(folder, "content"), { general: join(folder, "shipped") });

  it("are named in `with`, wherever they lie", async () => {
    const found = await read(scratchWith(files));
    if ("report" in found) throw new Error(found.report);
    expect(Object.fromEntries(found.content.origins)).toEqual({
      "patterns/seed-list.md": "General layouts",
    });
  });

  it("are told by that name where something in them is wrong, or has a name twice", async () => {
    const found = await read(
      scratchWith({
        ...files,
        "content/patterns/bed-plan.md": PATTERN,
        "shipped/patterns/bed-plan.md": PATTERN.replace("rows", "row"),
      }),
    );
    const { report = "" } = "report" in found ? found : {};
    expect(report.match(/^\S.*$/gm)).toEqual([
      "patterns/bed-plan.md",
      "spanbook/general/patterns/bed-plan.md:4:8",
      "2 problems in 2 files.",
    ]);
    expect(report).toContain("already: `spanbook/general/patterns/bed-plan.md`");
  });

  it.each([
    ["with: [spanbook/general, base]\n", ""],
    [
      "with: [base]\n",
      "Where the book needs `spanbook/general`, name it for it, in its own `with`",
    ],
  ])("are the book's to name, not those of a folder that it builds on: %j", async (lists, note) => {
    const found = await read(
      scratchWith({
        ...files,
        "content/book.yaml": book(lists),
        "content/base/book.yaml": "with: [spanbook/general]\n",
        "content/base/patterns/bed-plan.md": PATTERN,
      }),
    );
    if ("report" in found) throw new Error(found.report);
    expect(found.notes).toContain(note);
    expect(found.notes === "").toBe(note === "");
  });
});

describe("the report on a book of several folders", () => {
  it.each<[string, Files, readonly string[], string]>([
    [
      "a folder that is not there",
      { "content/book.yaml": book("with: [base, bass]\n") },
      ["shared"],
      `./shared
  There is no folder \`./shared\` to build on.
  \`with\` names folders inside the content folder; \`--with=FOLDER\` names any other, from where you are.

book.yaml:2:14
  with: [base, bass]
               ^^^^
  There is no folder \`bass\` to build on.
  \`with\` names folders inside the content folder; \`--with=FOLDER\` names any other, from where you are.

2 problems in 2 files.`,
    ],
    [
      "a file in a folder's place",
      { "content/book.yaml": book("with: [base, letter]\n"), "content/letter": "Dear all" },
      ["content/letter"],
      `./content/letter
  \`./content/letter\` is a file, not a folder.
  A folder to build on has \`notebooks\`, \`patterns\`, \`strips\` or \`setups\` in it.

book.yaml:2:14
  with: [base, letter]
               ^^^^^^
  \`letter\` is a file, not a folder.
  A folder to build on has \`notebooks\`, \`patterns\`, \`strips\` or \`setups\` in it.

2 problems in 2 files.`,
    ],
    [
      "a folder with nothing to build on",
      { "content/book.yaml": book("with: [base, drafts]\n"), "content/drafts/letter": "Dear all" },
      [],
      `book.yaml:2:14
  with: [base, drafts]
               ^^^^^^
  There is nothing to build on in \`drafts\`.
  A folder to build on has \`notebooks\`, \`patterns\`, \`strips\` or \`setups\` in it.

1 problem in 1 file.`,
    ],
    [
      "ways out of the content folder, and names that are none",
      {
        "content/book.yaml": book("with: [../other, /etc, .]\n"),
        "other/patterns/secret.md": "wrong",
      },
      [],
      `book.yaml:2:8
  with: [../other, /etc, .]
         ^^^^^^^^
  An entry of \`with\` cannot be \`../other\`.
  Did you mean \`other\`? An entry of \`with\` takes the name of a folder inside the content folder, such as general, or spanbook/general.

book.yaml:2:18
  with: [../other, /etc, .]
                   ^^^^
  An entry of \`with\` cannot be \`/etc\`.
  Did you mean \`etc\`? An entry of \`with\` takes the name of a folder inside the content folder, such as general, or spanbook/general.

book.yaml:2:24
  with: [../other, /etc, .]
                         ^
  An entry of \`with\` cannot be \`.\`.
  An entry of \`with\` takes the name of a folder inside the content folder, such as general, or spanbook/general.

patterns
  This folder is missing.
  Content is a folder with \`notebooks\`, \`patterns\`, \`strips\`, \`setups\` and \`book.yaml\` in it.

4 problems in 2 files.`,
    ],
    [
      "no list",
      { "content/book.yaml": book("with: base\n") },
      [],
      `book.yaml:2:7
  with: base
        ^^^^
  \`with\` cannot be \`base\`.
  Did you mean \`[base]\`? \`with\` takes a list of at most 100 names of folders inside the content folder, such as [general].

1 problem in 1 file.`,
    ],
    [
      "the content's own folders",
      { "content/book.yaml": book("with: [base, notebooks]\n") },
      [],
      `book.yaml:2:14
  with: [base, notebooks]
               ^^^^^^^^^
  \`notebooks\` is one of the content's own folders, which are always read.
  Take it out of \`with\`. A folder to build on has \`notebooks\`, \`patterns\`, \`strips\` or \`setups\` in it.

1 problem in 1 file.`,
    ],
    [
      "one folder that is named several times",
      { "content/book.yaml": book("with: [base, base]\n") },
      ["content/base", "content"],
      `./content
  \`./content\` is the same folder as the content folder itself.
  Name it once.

./content/base
  \`./content/base\` is the same folder as \`base\`.
  Name it once.

book.yaml:2:14
  with: [base, base]
               ^^^^
  \`base\` is named twice.
  It stands in line 2 already: keep one of the two.

3 problems in 3 files.`,
    ],
    [
      "a name that three folders have",
      {
        "content/patterns/seed-list.md": PATTERN,
        "shared/patterns/seed-list.md": PATTERN,
        "shared/notebooks/a5.md": NOTEBOOK,
      },
      ["shared"],
      `./shared/patterns/seed-list.md
  There is a pattern \`seed-list\` already: \`base/patterns/seed-list.md\`.
  Rename one of the two files, or remove it: folders that make one book cannot share a name.

notebooks/a5.md
  There is a notebook \`a5\` already: \`./shared/notebooks/a5.md\`.
  Rename one of the two files, or remove it: folders that make one book cannot share a name.

patterns/seed-list.md
  There is a pattern \`seed-list\` already: \`base/patterns/seed-list.md\`.
  Rename one of the two files, or remove it: folders that make one book cannot share a name.

3 problems in 3 files.`,
    ],
  ])("tells of %s", async (_, files, names, report) => {
    expect(await reportOn(scratchWith({ ...GOOD, ...files }), names)).toBe(report);
  });

  it("names every file where it lies", async () => {
    const folder = scratchWith({
      ...GOOD,
      "content/base/patterns/seed-list.md": PATTERN.replace("rows", "row"),
      "content/base/book.yaml": "title: [a, b]\n",
      "content/base/pattern/bed-plan.md": PATTERN,
      "content/base/bed-week.md": PATTERN,
      "shared/patterns/Bed Plan.md": PATTERN,
      "shared/strips/everyday.md": STRIP.replace("seed-list", "sead-list"),
    });
    expect((await reportOn(folder, ["shared"])).match(/^\S.*$/gm)).toEqual([
      "./shared/patterns/Bed Plan.md",
      "./shared/strips/everyday.md:3:10",
      "base/bed-week.md",
      "base/book.yaml:1:8",
      "base/pattern",
      "base/patterns/seed-list.md:4:8",
      "6 problems in 6 files.",
    ]);
  });

  it("refuses more than a hundred folders", async () => {
    const names = Array.from({ length: 101 }, (_, index) => `base-${index}`);
    const folder = scratchWith({ ...GOOD, "content/book.yaml": book(`with: [${names}]\n`) });
    expect(await reportOn(folder)).toContain("`with` takes a list of at most 100 names of folders");
  });

  it("reaches nothing by links that lead out of the content folder, or round in it", async () => {
    const links = {
      "content/out": "../far",
      "content/loop": "loop",
      "content/round": ".",
      "content/base/strips": "../notebooks",
      "content/base/patterns/far.md": "../../../far/patterns/a.md",
    };
    const files = { ...GOOD, "content/book.yaml": book("with: [base, out, loop, round]\n") };
    const folder = scratchWith({ ...files, "far/patterns/a.md": "not read" }, links);
    const told = (await reportOn(folder)).split("\n\n").map((block) => block.split("\n"));
    expect(told.map((lines) => [lines[0], lines.at(-2)?.trim()])).toEqual([
      ["base/patterns/far.md", "The link leads out of the content folder."],
      ["base/strips", "The link leads out of the content folder."],
      ["book.yaml:2:14", "`out` is a link that leads out of the content folder."],
      ["book.yaml:2:19", "The folder `loop` cannot be read."],
      ["book.yaml:2:25", "`round` is the same folder as the content folder itself."],
      ["5 problems in 3 files.", undefined],
    ]);
  });
});

describe("what the book.yaml of a folder to build on says", () => {
  const notesOn = async (text: string, files: Files = {}, names: readonly string[] = []) => {
    const folder = scratchWith({ ...GOOD, ...files, "content/base/book.yaml": text });
    const reading = await loadContent(join(folder, "content"), { packs: named(folder, names) });
    expect(reading.ok).toBe(true);
    return reportNotes(reading.notes, reading.texts);
  };

  it.each<[string, string, string]>([
    ["a title", "title: The base\n", ""],
    ["nothing", "", ""],
    [
      "what is another publisher's own, or leaves nothing out",
      "title: The base\nurl: https://example.org/\nprinter: {x: 1.01}\nnotebooks: all\n",
      "",
    ],
    [
      "lists and a calendar",
      "title: The base\ncalendar: {region: US}\npatterns: [seed-list]\n",
      `base/book.yaml:2:1
  calendar: {region: US}
  ^^^^^^^^
  \`calendar\` is not read here: of a folder that a book builds on, only the title is read.
  Where it is wanted, write it into the \`book.yaml\` of the book itself.

base/book.yaml:3:1
  patterns: [seed-list]
  ^^^^^^^^
  \`patterns\` is not read here: of a folder that a book builds on, only the title is read.
  Where it is wanted, write it into the \`book.yaml\` of the book itself.`,
    ],
    [
      "folders of its own to build on",
      "with: [inner, other]\n",
      `base/book.yaml:1:8
  with: [inner, other]
         ^^^^^
  \`with\` is not read here: of a folder that a book builds on, only the title is read, and no folders that it builds on.
  Where the book needs \`base/inner\`, \`base/other\`, name them for it, in its own \`with\` or by \`--with=FOLDER\`.`,
    ],
  ])("is told where it is in vain: %s", async (_, text, notes) => {
    expect(await notesOn(text)).toBe(notes);
  });

  it("is not told where the book names the same folders itself", async () => {
    const files = { "content/base/inner/patterns/bed-plan.md": PATTERN };
    expect(await notesOn("with: [inner]\n", files, ["content/base/inner"])).toBe("");
  });

  it("is told with a report, too", async () => {
    const folder = scratchWith({
      ...GOOD,
      "content/base/book.yaml": "with: [inner]\n",
      "content/strips/everyday.md": STRIP.replace("seed-list", "bed-plan"),
    });
    const read = await readContent(join(folder, "content"));
    const report = "report" in read ? read.report : "";
    expect(report.match(/^\S+:\d+:\d+$/gm)).toEqual([
      "base/book.yaml:1:8",
      "strips/everyday.md:3:10",
    ]);
  });
});
