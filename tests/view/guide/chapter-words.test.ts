/** The small things that turn a chapter into a page: ids, sections, new lines, code in a sentence. */
import GithubSlugger from "github-slugger";
import { describe, expect, it } from "vitest";
import { headingId, newLines } from "../../../src/build/pages/guide/guide-chapter.ts";
import { chapterSections } from "../../../src/build/pages/template-filters.ts";
import { codesHtml, htmlText } from "../../../src/build/web/markup-text.ts";

describe("a heading's id", () => {
  it.each([
    ["Four ways to count", "four-ways-to-count"],
    ["1. An empty page", "an-empty-page"],
    ["Say 100 %", "say-100"],
    ["What’s `left over`?", "whats-left-over"],
    ["…", "part"],
  ])("of `%s` is %s", (words, id) => {
    expect(headingId(words, new GithubSlugger())).toBe(id);
  });

  it("is numbered where the page has it already", () => {
    const slugger = new GithubSlugger();
    expect(["Cut", "Cut", "Cut"].map((words) => headingId(words, slugger))).toEqual([
      "cut",
      "cut-1",
      "cut-2",
    ]);
  });
});

describe("the sections of a chapter", () => {
  it("are its second-level headings, code and all", () => {
    const html = '<h2 id="a">One <code>x</code></h2><p>…</p><h3 id="b">No</h3><h2 id="c">Two</h2>';
    expect(chapterSections(html)).toEqual([
      { id: "a", html: "One <code>x</code>" },
      { id: "c", html: "Two" },
    ]);
  });
});

describe("the new lines of an example", () => {
  it.each<[string, string, string, readonly number[]]>([
    ["nothing new", "a\nb\n", "a\nb\n", []],
    ["a line between", "a\nc\n", "a\nb\nc\n", [1]],
    ["a line that only moved in", "page:\nrows: 2\n", "page:\n  rows: 2\n", []],
    ["a line that is there twice now", "a\nb\n", "a\nb\nb\n", [2]],
    ["everything", "", "a\nb\n", [0, 1]],
  ])("%s", (_, before, after, indexes) => {
    expect(newLines(before, after)).toEqual(indexes);
  });
});

describe("text in HTML", () => {
  it("has no character that could end it", () => {
    expect(htmlText(`<a href="x">&'</a>`)).toBe("&lt;a href=&quot;x&quot;&gt;&amp;&#39;&lt;/a&gt;");
  });

  it("shows what is between backticks as code, and only that", () => {
    expect(codesHtml("Put `<b>` into `each`. A ` alone stays.")).toBe(
      "Put <code>&lt;b&gt;</code> into <code>each</code>. A ` alone stays.",
    );
  });
});
