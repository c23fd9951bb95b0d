/** A book that tells its address, made by strangers: feed, site map, pictures and pages, read back. */
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { PNG } from "pngjs";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openTinyBooks, type TinyBooks } from "../browser/tiny-books.ts";
import { allElements, parseXml, type XmlElement } from "../draw/parse-xml.ts";
import { TINY } from "../setup/tiny-content.ts";
import { bytesIn, pagesIn } from "./files-in.ts";

const SITE = "https://example.org/marrow/lane/";
/** Markup, scripts, what ends an XML section, other alphabets, marks that turn the direction, an emoji and a lone mark. */
const TITLE = `Beet & <b>leek</b> "]]>" </title><script>alert(1)</script> Грядка בצל \u200f 🥕`;
const BODY = `First <img src=x onerror=alert(2)> \u202eturned\u202c.\n\nSecond [link](javascript:alert(3)) & more \u0007.\n\n[On](../../wide/plain/index.html?a=1&b=2#top) and [out](https://example.com/).\n\n    beds:\n      - leek  beet\n`;

let books: TinyBooks;
let book: string;

beforeAll(async () => {
  books = openTinyBooks();
  const files = {
    ...TINY,
    "book.yaml": `title: ${JSON.stringify(TITLE)}\nnotebooks: [plain, small]\nurl: ${SITE.slice(0, -1)}\n`,
    "patterns/halves.md": `---\ntitle: ${JSON.stringify(TITLE)}\npurpose: page\npage: {columns: 2}\n---\n${BODY}\n`,
  };
  book = await books.build("site", files);
});

afterAll(() => books.close());

const text = (path: string) => readFileSync(join(book, path), "utf8");
const xml = (path: string) => parseXml(text(path).replace(/^<\?xml[^>]*\?>\n/, ""));
const childText = (element: XmlElement | undefined, name: string) =>
  element?.children.find((child) => child.name === name)?.text ?? "";

/** RSS 2.0 (RSS Advisory Board): required elements of a channel and of an item; dates are optional. */
describe("the feed", () => {
  const items = () => allElements(xml("feed.xml")).filter(({ name }) => name === "item");

  it("is RSS 2.0 with a title, a link and a description, and no made-up date", () => {
    const root = xml("feed.xml");
    expect([root.name, root.attributes.get("version")]).toEqual(["rss", "2.0"]);
    const [channel] = root.children;
    expect(childText(channel, "title")).toBe(TITLE);
    expect(childText(channel, "link")).toBe(`${SITE}index.html`);
    expect(childText(channel, "description")).toContain(TITLE);
    expect(text("feed.xml")).not.toMatch(/<(pubDate|lastBuildDate)/);
  });

  it("has an item for each pattern, with a name that stays and an address that is there", () => {
    expect(items().map((item) => childText(item, "guid"))).toEqual([
      `${SITE}patterns/halves/`,
      `${SITE}patterns/wide/`,
    ]);
    for (const item of items()) {
      const link = childText(item, "link");
      expect(link.startsWith(SITE)).toBe(true);
      expect(existsSync(join(book, link.slice(SITE.length)))).toBe(true);
    }
  });

  it("shows markup of strangers as text, and keeps no script", () => {
    const [halves] = items();
    expect(childText(halves, "title")).toBe(TITLE);
    const description = childText(halves, "description");
    expect(description).toContain("&lt;img src=x onerror=alert(2)&gt;");
    expect(description).not.toMatch(
      /<(?!\/?(?:p|pre|code)>|img src="https:\/\/example\.org\/|a href="https:\/\/example|\/a>)/,
    );
    expect(description).not.toContain('href="javascript:');
  });
});

describe("what a pattern's text says, in the feed", () => {
  const description = () => {
    const [item] = allElements(xml("feed.xml")).filter(({ name }) => name === "item");
    return childText(item, "description");
  };

  it("leads with full addresses to where its links lead on the pattern's page", () => {
    expect([...description().matchAll(/<a href="([^"]*)"/g)].map(([, address]) => address)).toEqual(
      [`${SITE}patterns/wide/plain/index.html?a=1&amp;b=2#top`, "https://example.com/"],
    );
  });

  it("keeps the lines of what is set apart", () => {
    expect(description()).toContain("<pre><code>beds:\n  - leek  beet\n</code></pre>");
  });
});

describe("the site map", () => {
  it("names every page that is there but the one for what is not", () => {
    const locations = allElements(xml("sitemap.xml"))
      .filter(({ name }) => name === "loc")
      .map((element) => element.text);
    const pages = [...pagesIn(book).keys()].filter((path) => path !== "404.html");
    expect(locations).toEqual(pages.map((path) => SITE + path));
    expect(pages.length).toBeGreaterThan(15);
  });
});

describe("the pictures", () => {
  it.each(["preview.png", "patterns/halves/preview.png", "patterns/wide/preview.png"])(
    "%s is a picture of 1200 by 630 with something in it",
    (path) => {
      const { width, height, data } = PNG.sync.read(readFileSync(join(book, path)));
      expect([width, height]).toEqual([1200, 630]);
      const colours = new Set<number>();
      const pixels = Buffer.from(data);
      for (let at = 0; at < pixels.length; at += 4) colours.add(pixels.readUInt32BE(at));
      expect(colours.size).toBeGreaterThan(20);
    },
  );
});

describe("a page", () => {
  const page = "patterns/halves/plain/index.html";
  const meta = (name: string) =>
    new RegExp(`<meta (?:property|name)="${name}" content="([^"]*)">`).exec(text(page))?.[1];

  it("tells its address, and the picture that stands for it", () => {
    expect(text(page)).toContain(`<link rel="canonical" href="${SITE}${page}">`);
    expect(meta("og:url")).toBe(SITE + page);
    expect(meta("og:image")).toBe(`${SITE}patterns/halves/preview.png`);
    expect(text("guide/index.html")).toContain(
      `<meta property="og:image" content="${SITE}preview.png">`,
    );
  });

  it("says what it is as text", () => {
    expect(meta("og:title")).toContain("Beet &amp; &lt;b&gt;leek&lt;/b&gt; &quot;]]&gt;&quot;");
    expect(text(page)).not.toContain("<script>alert");
    expect(text(page)).toContain('type="application/rss+xml"');
  });

  it("says what its picture shows: the pattern on the book's first notebook, whichever the page is on", () => {
    const alt = (path: string) =>
      /<meta property="og:image:alt" content="([^"]*)">/.exec(text(path))?.[1];
    expect(alt("patterns/wide/small/index.html")).toBe(alt("patterns/wide/plain/index.html"));
    expect(alt("patterns/wide/small/index.html")).toMatch(/^Wide on /);
    expect(alt("guide/index.html")).toContain("Beet");
  });

  it("for what is not there has no address of its own, for it is shown at any", () => {
    expect(text("404.html")).not.toMatch(/canonical|og:/);
  });

  it("for what is not there leads home from wherever it is shown", () => {
    const addresses = [...text("404.html").matchAll(/ (?:href|src)="([^"]*)"/g)].map(
      ([, to]) => to,
    );
    expect(addresses.length).toBeGreaterThan(8);
    for (const address of addresses)
      expect(address).toMatch(/^(#content$|https:\/\/example\.org\/marrow\/lane\/)/);
  });
});

describe("a book without an address", () => {
  it("makes up none: no feed, no site map, no pictures, no canonical address", () => {
    const paths = [...bytesIn(books.first).keys()];
    expect(paths.filter((path) => /feed\.xml|sitemap|preview\.png/.test(path))).toEqual([]);
    const naming = [...pagesIn(books.first)].filter(([, html]) => /canonical|og:|rss/.test(html));
    expect(naming.map(([path]) => path)).toEqual([]);
  });
});
