/** The feed of a book that tells its address: an item for each pattern. */
import { PURPOSE_WORDS } from "../../view/pattern/purpose-words.ts";
import { type ListFile, listFile } from "../artifacts/side-files.ts";
import type { Content } from "../content/load-content.ts";
import { previewPath } from "./link-previews.ts";
import { htmlText, xmlElement, xmlFile, xmlHtmlElement } from "./markup-text.ts";

/** Where it lies, from the book's root. */
export const FEED_PATH = "feed.xml";

/**
 * RSS 2.0 (RSS Advisory Board): a channel needs a title, a link and a description, an item a title or a description,
 * and no date is asked for. Recipes have none, and the clock would make two builds differ, so none is given: a reader
 * tells a new pattern by its guid. Atom would need a date in every entry (RFC 4287, 4.1.2).
 */
export function feedFiles(
  content: Content,
  bodyHtml: (text: string) => string,
): readonly ListFile[] {
  const { url } = content.book;
  const [notebook] = content.notebooks;
  if (url === undefined || !notebook) return [];
  return [listFile(FEED_PATH, () => feedText(content, { url, notebook: notebook.slug, bodyHtml }))];
}

interface FeedSources {
  readonly url: string;
  /** The one on which links show a pattern. */
  readonly notebook: string;
  readonly bodyHtml: (text: string) => string;
}

function feedText(
  { book: { title }, recipes }: Content,
  { url, notebook, bodyHtml }: FeedSources,
): string {
  const items = recipes.flatMap((recipe) => {
    const link = `${url}patterns/${recipe.slug}/${notebook}/index.html`;
    const picture = `<p><img src="${htmlText(url + previewPath(recipe.slug))}" alt=""></p>`;
    return [
      "<item>",
      xmlElement("title", recipe.title),
      xmlElement("link", link),
      xmlElement("guid", `${url}patterns/${recipe.slug}/`, ' isPermaLink="false"'),
      xmlElement("category", PURPOSE_WORDS[recipe.purpose].title),
      xmlHtmlElement("description", picture + withFullAddresses(bodyHtml(recipe.body), link)),
      "</item>",
    ];
  });
  const lines = [
    '<rss version="2.0" xmlns:atom="http://www.w3.org/2005/Atom">',
    "<channel>",
    xmlElement("title", title),
    xmlElement("link", `${url}index.html`),
    xmlElement("description", `The patterns of ${title}: layouts for planners drawn by hand.`),
    xmlElement("language", "en"),
    `<atom:link rel="self" type="application/rss+xml" href="${htmlText(url + FEED_PATH)}"/>`,
    ...items,
    "</channel>",
    "</rss>",
  ];
  return xmlFile(lines);
}

/** A feed is read elsewhere: a link that leads on from the pattern's page would lead nowhere. */
function withFullAddresses(html: string, page: string): string {
  return html.replace(/(<a href=")([^"]*)"/g, (tag, start: string, written: string) => {
    const address = written.replaceAll("&amp;", "&");
    return URL.canParse(address, page) ? `${start}${htmlText(new URL(address, page).href)}"` : tag;
  });
}
