/** What is kept goes out as a content folder and comes in again; what is wrong is told as the build tells it. */
import { strToU8 } from "fflate";
import { describe, expect, it } from "vitest";
import { reportIssues } from "../../../src/issue/report/report.ts";
import type { Notebook } from "../../../src/notebook/notebook.ts";
import { readNotebook } from "../../../src/notebook/read-notebook.ts";
import { UNDATED } from "../../../src/plan/when.ts";
import { readRecipe } from "../../../src/recipe/read/read-recipe.ts";
import { contentFolder, writeZip } from "../../../src/view/kept/content-folder.ts";
import type { KeptFile, KeptPath } from "../../../src/view/kept/kept-file.ts";
import { meetKept } from "../../../src/view/kept/meet-kept.ts";
import { readContentFiles } from "../../../src/view/kept/read-content-files.ts";
import { renamedFile, renamedTogether } from "../../../src/view/kept/rename-file.ts";
import { sortFiles } from "../../../src/view/kept/sort-files.ts";
import { TINY } from "../../setup/tiny-content.ts";

const PLAIN = TINY["notebooks/plain.md"] ?? "";
const HALVES = TINY["patterns/halves.md"] ?? "";
const texts = { halves: HALVES, wide: TINY["patterns/wide.md"] ?? "" };
const SLEEP = HALVES.replace("Halves", "Sleep");
const STRIP = "---\ntitle: Mine\nacross: [halves, sleep]\ndown: []\n---\n";

const kept = (path: KeptPath, text: string): KeptFile => ({ path, text });

function plainNotebook(): Notebook {
  const reading = readNotebook({ path: "notebooks/plain.md", text: PLAIN });
  if (!reading.ok) throw new Error("the notebook is wrong");
  return reading.value;
}

const recipes = Object.entries(texts).flatMap(([slug, text]) => {
  const reading = readRecipe({ path: `patterns/${slug}.md`, text });
  return reading.ok ? [reading.value] : [];
});
const book = { recipes, notebooks: [plainNotebook()] };
const folder = (files: readonly KeptFile[], more = {}) =>
  contentFolder({ files, notebook: plainNotebook(), pattern: "halves", texts, ...more });
const paths = (files: readonly { readonly path: string }[]) => files.map(({ path }) => path);

describe("the folder of what is kept", () => {
  it.each<[string, readonly KeptFile[], readonly string[]]>([
    ["nothing", [], ["book.yaml", "notebooks/plain.md", "patterns/halves.md"]],
    [
      "a pattern",
      [kept("patterns/sleep.md", SLEEP)],
      ["book.yaml", "notebooks/plain.md", "patterns/sleep.md"],
    ],
    [
      "a notebook and a strip with a pattern of the book",
      [
        kept("notebooks/mine.md", PLAIN),
        kept("patterns/sleep.md", SLEEP),
        kept("strips/m.md", STRIP),
      ],
      ["book.yaml", "notebooks/mine.md", "patterns/sleep.md", "strips/m.md", "patterns/halves.md"],
    ],
  ])("of %s has all that it needs", (_, files, expected) => {
    const made = folder(files);
    expect(paths(made.files)).toEqual(expected);
    expect(made.leftOut).toEqual([]);
  });

  it("leaves out a strip whose pattern is gone, and says so", () => {
    const made = folder([kept("strips/m.md", STRIP)]);
    expect(paths(made.leftOut)).toEqual(["strips/m.md"]);
    expect(paths(made.files)).toEqual(["book.yaml", "notebooks/plain.md", "patterns/halves.md"]);
  });

  it.each([
    ["cannot be read", SLEEP.replace("count: 2", "count: none")],
    [
      "asks for the moon where no clock is stated",
      "---\ntitle: Sleep\npurpose: month\ndates: month\npage: {rows: {count: days, each: {label: '{moon}'}}}\n---\nM.\n",
    ],
  ])("leaves out, with a pattern that %s, whatever names it", (_, pattern) => {
    const setup = "---\ntitle: S\ndates: 2027-03\npages: [sleep]\n---\n";
    const made = folder([
      kept("patterns/sleep.md", pattern),
      kept("strips/m.md", STRIP),
      kept("setups/s.md", setup),
    ]);
    expect(paths(made.leftOut)).toEqual(["patterns/sleep.md", "strips/m.md", "setups/s.md"]);
  });

  it("counts weeks and days as the book does", () => {
    const [head] = folder([], {
      when: { rule: { firstWeekday: 7, weekOne: 1 }, names: { ...UNDATED.names, language: "pt" } },
      utcOffset: -90,
    }).files;
    expect(head?.text).toBe(
      'title: My layouts\ncalendar: {week: sunday, weekOne: 1, language: pt, utcOffset: "-01:30"}\n',
    );
  });
});

describe("a file of thousands of values", () => {
  /** How often a kept file's text was asked for: by a reader once, and once by whoever hands it on. */
  const asked = (path: KeptPath, text: string, act: (file: KeptFile) => unknown): number => {
    let count = 0;
    act({
      path,
      get text() {
        count += 1;
        return text;
      },
    });
    return count;
  };

  it.each<[KeptPath, string, (file: KeptFile) => unknown]>([
    ["patterns/sleep.md", SLEEP, readRecipe],
    ["patterns/sleep.md", SLEEP.replace("purpose", "porpoise"), readRecipe],
    ["notebooks/mine.md", PLAIN, readNotebook],
  ])("is read once, as %s", (path, text, read) => {
    const once = asked(path, text, read);
    const brought = (file: KeptFile) => readContentFiles([file], { book, kept: [] });
    expect(asked(path, text, brought)).toBe(once + 1);
  });
});

describe("files that are brought", () => {
  const read = (files: Readonly<Record<string, string>>) => {
    const picked = Object.entries(files).map(([name, text]) => ({ name, bytes: strToU8(text) }));
    const sorted = sortFiles(picked);
    const content = readContentFiles(sorted.files, { book, kept: [] });
    return { sorted, content, issues: [...sorted.issues, ...content.issues] };
  };

  it("go by what they say", () => {
    const { content, issues } = read({
      "Mine.md": PLAIN,
      "sleep.txt": SLEEP,
      "strip.md": STRIP,
      "set up.md": "---\ntitle: S\ndates: 2027-03\npages: [halves]\n---\n",
    });
    expect(issues).toEqual([]);
    expect(content.files.map(({ path, title }) => [path, title])).toEqual([
      ["notebooks/mine.md", "Plain"],
      ["patterns/sleep.md", "Sleep"],
      ["strips/strip.md", "Mine"],
      ["setups/set-up.md", "S"],
    ]);
  });

  it("come out of a zip as they went in", () => {
    const files = [kept("patterns/sleep.md", SLEEP), kept("strips/m.md", STRIP)];
    const zip = writeZip(folder(files).files);
    const { files: out, ignored } = sortFiles([{ name: "a.zip", bytes: zip }]);
    expect(ignored).toEqual([]);
    const { fresh, known, clashes } = meetKept(readContentFiles(out, { book, kept: [] }).files, {
      kept: [],
      texts,
    });
    expect([paths(fresh), paths(known), clashes]).toEqual([
      ["notebooks/plain.md", "patterns/sleep.md", "strips/m.md"],
      ["patterns/halves.md"],
      [],
    ]);
  });

  it("are told wrong with their place, beside good ones", () => {
    const { content, sorted, issues } = read({
      "sleep.md": SLEEP,
      "week.md": HALVES.replace("count: 2", "count: two"),
      "strip.md": "---\ntitle: S\nacross: [halves, sleap]\ndown: []\n---\n",
    });
    expect(paths(content.files)).toEqual(["patterns/sleep.md"]);
    const report = reportIssues(
      issues,
      new Map(sorted.files.map(({ path, text }) => [path, text])),
    );
    expect(report).toContain("patterns/week.md:4:");
    expect(report).toContain("strips/strip.md:3:18");
    expect(report).toMatch(/2 problems in 2 files\.$/);
  });

  it.each([
    ["patterns/My Week.md", "`My Week.md` is not a name that a page can have."],
    ["patterns/con.md", "`con.md` is not a name that a page can have."],
    ["patterns/week.txt", "`week.txt` is not a name that a page can have."],
  ])("in a zip may not be called %s", (path, sentence) => {
    const bytes = writeZip([{ path, text: HALVES }]);
    const { issues, files } = sortFiles([{ name: "a.zip", bytes }]);
    expect(files).toEqual([]);
    expect(reportIssues(issues, new Map())).toContain(sentence);
  });

  it("are ignored, by name, where they are none of a content folder", () => {
    const bytes = writeZip(
      [
        "mine/book.yaml",
        "mine/photo.jpg",
        "mine/patterns/old/a.md",
        "__MACOSX/x",
        "patterns/.DS_Store",
      ].map((path) => ({ path, text: "x" })),
    );
    expect(sortFiles([{ name: "a.zip", bytes }]).ignored).toEqual([
      "mine/photo.jpg",
      "mine/patterns/old/a.md",
    ]);
  });

  it("that are no text or too large are told so", () => {
    const picked = [
      { name: "a.md", bytes: new Uint8Array([0xff, 0xfe]) },
      { name: "b.md", bytes: new Uint8Array(257 * 1024) },
    ];
    expect(sortFiles(picked).issues).toMatchObject([{ kind: "not-utf8" }, { kind: "too-large" }]);
  });
});

describe("a name that two have", () => {
  const file = { ...kept("patterns/sleep.md", SLEEP), title: "Sleep" };

  it.each([
    ["nobody", [], ["fresh"]],
    ["the same", [kept("patterns/sleep.md", SLEEP)], ["known"]],
    ["another", [kept("patterns/sleep.md", HALVES)], ["clashes"]],
    ["another kind", [kept("strips/sleep.md", STRIP)], ["fresh"]],
  ] as const)("is %s’s before", (_, before, expected) => {
    const meeting = meetKept([file], { kept: before, texts });
    const found = (["fresh", "known", "clashes"] as const).filter((key) => meeting[key].length > 0);
    expect(found).toEqual(expected);
  });

  it("of the book is not replaced", () => {
    const own = { ...kept("patterns/halves.md", SLEEP), title: "Sleep" };
    expect(meetKept([own], { kept: [], texts }).clashes).toEqual([{ file: own, isOfBook: true }]);
  });

  it("goes on being named by what came with it", () => {
    const strip = { ...kept("strips/m.md", STRIP), title: "Mine" };
    const files = renamedTogether([file, strip], [file], { patterns: ["sleep"] });
    expect(files.map(({ path, text }) => [path, text])).toEqual([
      ["patterns/sleep-2.md", SLEEP],
      ["strips/m.md", STRIP.replace("sleep]", "sleep-2]")],
    ]);
  });

  it("gets a number", () => {
    expect(renamedFile(file, ["sleep", "sleep-2"]).path).toBe("patterns/sleep-3.md");
  });
});
