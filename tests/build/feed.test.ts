/** The feed of patterns that say their days, against what RFC 4287 asks of a feed and of its entries. */
import { describe, expect, it } from "vitest";
import { loadContent } from "../../src/build/content/load-content.ts";
import { feedFiles, feedType } from "../../src/build/web/feed.ts";
import { reportIssues } from "../../src/issue/report/report.ts";
import { readRecipe } from "../../src/recipe/read/read-recipe.ts";
import { allElements, parseXml, type XmlElement } from "../draw/parse-xml.ts";
import { TINY } from "../setup/tiny-content.ts";
import { writeContent } from "./write-content.ts";

const SITE = "https://example.org/book/";
const pattern = (title: string, date = "") =>
  `---\ntitle: ${title}\npurpose: page\n${date === "" ? "" : `date: ${date}\n`}page: {columns: 2}\n---\nSee [that](../../b/plain/).\n`;

async function feedOf(files: Readonly<Record<string, string>>) {
  const book = { "book.yaml": `title: News\nurl: ${SITE}\n`, ...files };
  const reading = await loadContent(writeContent({ ...TINY, ...book }));
  if (!reading.ok) throw new Error("the content has a problem");
  const [file] = feedFiles(reading.value, (text) => `<p>${text.trim()}</p>`);
  const root = parseXml((file?.text() ?? "").replace(/^<\?xml[^>]*\?>\n/, ""));
  return { root, type: feedType(reading.value) };
}

const texts = (element: XmlElement, name: string) =>
  element.children.flatMap((child) => (child.name === name ? [child.text] : []));

describe("a feed of dated patterns", () => {
  const files = {
    "patterns/a.md": pattern("Old", "2026-11-30"),
    "patterns/b.md": pattern("New", "2027-03-01"),
    "patterns/c.md": pattern("Undated"),
  };

  it("is Atom with all that a feed needs (RFC 4287, 4.1.1), as new as its newest entry", async () => {
    const { root, type } = await feedOf(files);
    expect([root.name, root.attributes.get("xmlns"), type]).toEqual([
      "feed",
      "http://www.w3.org/2005/Atom",
      "application/atom+xml",
    ]);
    for (const [name, text] of [
      ["id", SITE],
      ["title", "News"],
      ["updated", "2027-03-01T00:00:00Z"],
    ] as const)
      expect(texts(root, name)).toEqual([text]);
    const [author] = root.children.filter(({ name }) => name === "author");
    expect(author && texts(author, "name")).toEqual(["News"]);
    const self = root.children.filter(({ attributes }) => attributes.get("rel") === "self");
    expect(self.map(({ attributes }) => attributes.get("href"))).toEqual([`${SITE}feed.xml`]);
  });

  it("has an entry with an id, a title and its day for each of them, the newest first (4.1.2)", async () => {
    const { root } = await feedOf(files);
    const entries = allElements(root).filter(({ name }) => name === "entry");
    expect(
      entries.map((entry) => ["id", "title", "updated"].map((name) => texts(entry, name)[0])),
    ).toEqual([
      [`${SITE}patterns/b/`, "New", "2027-03-01T00:00:00Z"],
      [`${SITE}patterns/a/`, "Old", "2026-11-30T00:00:00Z"],
    ]);
    // Content of type html is escaped markup (4.1.3.3).
    const [content] = (entries[0]?.children ?? []).filter(({ name }) => name === "content");
    expect(content?.attributes.get("type")).toBe("html");
    expect(content?.text).toContain("<p>See [that]");
  });

  it("is RSS where none has a day", async () => {
    const { root, type } = await feedOf({ "patterns/c.md": pattern("Undated") });
    expect([root.name, type]).toEqual(["rss", "application/rss+xml"]);
  });
});

describe("the day of a pattern", () => {
  it.each(["2027-02-30", "2027-03", "soon", "[1, 2]", "2027-03-01/2027-03-02"])(
    "%s is told with its place and what is valid",
    (date) => {
      const text = pattern("One", date);
      const reading = readRecipe({ path: "patterns/one.md", text });
      expect(reading.ok).toBe(false);
      const report = reading.ok
        ? ""
        : reportIssues(reading.issues, new Map([["patterns/one.md", text]]));
      expect(report).toContain("patterns/one.md:4:");
      expect(report).toContain("a day, such as 2027-03-01");
    },
  );
});
