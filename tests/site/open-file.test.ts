/** A file that is opened in the page is read as the build reads it, with the build's own report. */
import { describe, expect, it } from "vitest";
import { openedFile } from "../../site/script/lazy/reader/open-file.ts";
import { reportIssues } from "../../src/issue/report/report.ts";
import { sayIssue } from "../../src/issue/words/say-issue.ts";
import { readNotebook } from "../../src/notebook/read-notebook.ts";
import { readRecipe } from "../../src/recipe/read/read-recipe.ts";
import { readSetup } from "../../src/recipe/read/read-setup.ts";
import { readStripRecipe } from "../../src/recipe/read/read-strip-recipe.ts";
import { demoCatalogue } from "../setup/demo-catalogue.ts";
import { demoNames, demoText } from "../setup/demo-files.ts";

const { content, catalogue } = await demoCatalogue();
const reader = { readNotebook, readRecipe, readStripRecipe, readSetup, reportIssues, sayIssue };

const bytesOf = (text: string) => new TextEncoder().encode(text);
const open = (name: string, text: string) =>
  openedFile({ name, bytes: bytesOf(text) }, reader, catalogue.carried);

describe("a file that is opened", () => {
  it.each(demoNames("notebooks"))("is the notebook %s", (name) => {
    const text = demoText(`notebooks/${name}`);
    const expected = readNotebook({ path: `notebooks/${name}`, text });
    if (!expected.ok) throw new Error(`${name} is not all right`);
    expect(open(name, text)).toEqual({ kind: "notebook", notebook: expected.value });
  });

  it.each(content.strips.map(({ slug }) => `${slug}.md`))("is the strip %s", (name) => {
    const text = demoText(`strips/${name}`);
    const expected = readStripRecipe({ path: `strips/${name}`, text });
    if (!expected.ok) throw new Error(`${name} is not all right`);
    expect(open(name, text)).toEqual({ kind: "strip", strip: expected.value });
  });

  it.each(demoNames("setups"))("is the set-up %s", (name) => {
    const text = demoText(`setups/${name}`);
    const expected = readSetup({ path: `setups/${name}`, text });
    if (!expected.ok) throw new Error(`${name} is not all right`);
    expect(open(name, text)).toEqual({ kind: "setup", setup: expected.value });
  });

  it("is a set-up with a layout that nobody has: its page says so", () => {
    const text = "---\ntitle: Mine\ndates: 2027-03\npages: [no-such]\n---\n";
    expect(open("mine.md", text)).toMatchObject({ kind: "setup", setup: { first: 1 } });
  });

  it("has a name that the book takes, whatever a browser made of it", () => {
    const text = "---\ntitle: Mine\npaper: A5\npitch: 5\ndots: [26, 38]\n---\n";
    const opened = open("My book (2).md", text);
    expect(opened).toMatchObject({ kind: "notebook", notebook: { slug: "my-book-2" } });
  });
});

describe("a file that is not valid", () => {
  it.each<[string, string, string]>([
    [
      "a notebook with a wrong pitch",
      "---\ntitle: Mine\npaper: A5\npitch: wide\ndots: [26, 38]\n---\n",
      "notebooks/x.md:4:8\n  pitch: wide\n         ^^^^",
    ],
    [
      "a strip with a pattern that the book does not have",
      "---\ntitle: Mine\nacross: [seed-lst]\n---\n",
      "strips/x.md:3:10\n  across: [seed-lst]\n           ^^^^^^^^",
    ],
    [
      "a strip with such a pattern and something else that is wrong",
      "---\ntitle: Mine\nacross: [seed-lst]\nlanes: 99\n---\n",
      "strips/x.md:3:10\n  across: [seed-lst]\n           ^^^^^^^^",
    ],
    [
      "a set-up with a month that is none",
      "---\ntitle: Mine\ndates: 2027-13\npages: [seed-list]\n---\n",
      "setups/x.md:3:8\n  dates: 2027-13\n         ^^^^^^^",
    ],
    ["no front matter", "Hello.", "notebooks/x.md:1:1\n  Hello.\n  ^^^"],
  ])("%s gets its report", (_, text, beginning) => {
    const opened = open("x.md", text);
    expect(opened.kind === "report" ? opened.report.slice(0, beginning.length) : "").toBe(
      beginning,
    );
  });

  it("is told when it is too large", () => {
    const opened = open("x.md", "x".repeat(256 * 1024 + 1));
    expect(opened.kind === "report" && opened.report).toContain("larger than 256 KiB");
  });

  it("is told when it is no text", () => {
    const bytes = new Uint8Array([0x2d, 0xff, 0xfe, 0x2d]);
    const opened = openedFile({ name: "x.md", bytes }, reader, catalogue.carried);
    expect(opened.kind === "report" && opened.report).toContain(
      "x.md:1:2\n  The file is not UTF-8 text: in line 1",
    );
  });
});
