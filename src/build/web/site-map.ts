/** The list of a book's pages for search engines, when the book tells its address. */
import type { SideFile } from "../artifacts/side-files.ts";
import { xmlElement, xmlFile } from "./markup-text.ts";

const NAMESPACE = "http://www.sitemaps.org/schemas/sitemap/0.9";

/** Pages that one file may list (sitemaps.org, protocol 0.9); with more there is a list of lists. */
const MOST_PAGES = 50_000;

/** `sitemap.xml`, and numbered ones that it names where the pages are too many. No dates: recipes have none. */
export function siteMapFiles(
  url: string,
  pages: readonly string[],
  mostPages = MOST_PAGES,
): readonly SideFile[] {
  const chunks = Array.from({ length: Math.ceil(pages.length / mostPages) }, (_, index) =>
    pages.slice(index * mostPages, (index + 1) * mostPages),
  );
  if (chunks.length === 1) return [listFile("sitemap.xml", url, pages)];
  const parts = chunks.map((chunk, index) => listFile(`sitemap-${index + 1}.xml`, url, chunk));
  const names = parts.map(({ path }) => `<sitemap>${xmlElement("loc", url + path)}</sitemap>`);
  const index = xmlFile([`<sitemapindex xmlns="${NAMESPACE}">`, ...names, "</sitemapindex>"]);
  return [{ path: "sitemap.xml", text: index }, ...parts];
}

function listFile(path: string, url: string, pages: readonly string[]): SideFile {
  const entries = pages.map((page) => `<url>${xmlElement("loc", url + page)}</url>`);
  return { path, text: xmlFile([`<urlset xmlns="${NAMESPACE}">`, ...entries, "</urlset>"]) };
}
