/** Files for others on the web: the site map, the feed, the manifest. Formats are those of the sources named here. */
import { describe, expect, it } from "vitest";
import { pageAddress } from "../../src/build/pages/template-filters.ts";
import { xmlElement, xmlFile } from "../../src/build/web/markup-text.ts";
import { siteMapFiles } from "../../src/build/web/site-map.ts";
import { manifestFile } from "../../src/build/web/web-manifest.ts";
import { allElements, parseXml, type XmlElement } from "../draw/parse-xml.ts";

const URL = "https://example.org/a&b/";

/** The root of an XML file, behind its declaration. */
function rootOf(text: string): XmlElement {
  const declaration = '<?xml version="1.0" encoding="UTF-8"?>\n';
  expect(text.startsWith(declaration)).toBe(true);
  return parseXml(text.slice(declaration.length));
}

const locations = (text: string) =>
  allElements(rootOf(text))
    .filter(({ name }) => name === "loc")
    .map((element) => element.text);

describe("an XML file", () => {
  it("is well-formed, whatever its texts hold", () => {
    const hostile = `]]><a b="c">&amp;\u0000\u0008\ud800\u202e`;
    const root = rootOf(xmlFile(["<a>", xmlElement("b", hostile, ' c="d"'), "</a>"]));
    expect(root.children[0]?.text).toBe(`]]><a b="c">&amp;\ufffd`);
  });
});

/** Site maps protocol 0.9 (sitemaps.org): `urlset`, a `url` with a `loc` each; at most 50,000 in a file, or a list of lists. */
describe("a site map", () => {
  it("lists every page by its full address, escaped", () => {
    const [file, ...others] = siteMapFiles(URL, ["index.html", "guide/index.html"]);
    expect(others).toEqual([]);
    expect(file?.path).toBe("sitemap.xml");
    const root = rootOf(file?.text ?? "");
    expect(root.name).toBe("urlset");
    expect(root.attributes.get("xmlns")).toBe("http://www.sitemaps.org/schemas/sitemap/0.9");
    expect(locations(file?.text ?? "")).toEqual([`${URL}index.html`, `${URL}guide/index.html`]);
  });

  it("is several files and a list of them where one is too small", () => {
    const pages = Array.from({ length: 7 }, (_, index) => `p${index}.html`);
    const files = siteMapFiles(URL, pages, 3);
    expect(files.map(({ path }) => path)).toEqual([
      "sitemap.xml",
      "sitemap-1.xml",
      "sitemap-2.xml",
      "sitemap-3.xml",
    ]);
    const [index = "", ...parts] = files.map(({ text }) => text);
    expect(rootOf(index).name).toBe("sitemapindex");
    expect(locations(index)).toEqual([1, 2, 3].map((part) => `${URL}sitemap-${part}.xml`));
    expect(parts.flatMap(locations)).toEqual(pages.map((page) => URL + page));
  });

  it("holds 50,000 pages in one file, and no more", () => {
    const pages = Array.from({ length: 50_001 }, (_, index) => `${index}`);
    expect(siteMapFiles(URL, pages.slice(1))).toHaveLength(1);
    expect(siteMapFiles(URL, pages)).toHaveLength(3);
  });
});

/** W3C, Web Application Manifest: addresses are resolved against the manifest's own. */
describe("the manifest", () => {
  it("has the book's name and only relative addresses", () => {
    const title = `"Quotes" & </script>`;
    const { path, text } = manifestFile(title);
    const manifest = JSON.parse(text);
    expect(path).toBe("manifest.webmanifest");
    expect(manifest.name).toBe(title);
    const icons = manifest.icons.map(({ src }: { readonly src: string }) => src);
    expect([manifest.start_url, manifest.scope, ...icons]).toEqual([
      "index.html",
      "./",
      "assets/icon.svg",
      "assets/icon-192.png",
      "assets/icon-512.png",
      "assets/icon-512-maskable.png",
    ]);
  });
});

describe("a link on a page", () => {
  it.each([
    ["/guide/", "/patterns/a/b/", URL, "../../../guide/index.html"],
    ["/guide/", "/404.html", URL, `${URL}guide/index.html`],
    ["/guide/", "/404.html", "", "guide/index.html"],
  ])("to %s from %s, in a book at `%s`, is %s", (to, from, url, address) => {
    expect(pageAddress(to, from, url)).toBe(address);
  });
});
