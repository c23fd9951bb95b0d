/** The feed of a book that tells its address: news where patterns say their days, else an item for each pattern. */
import { type Day, isoText } from "../../calendar/day.ts";
import type { Recipe } from "../../recipe/recipe.ts";
import { PURPOSE_WORDS } from "../../view/pattern/purpose-words.ts";
import { type ListFile, listFile } from "../artifacts/side-files.ts";
import type { Content } from "../content/load-content.ts";
import { previewPath } from "./link-previews.ts";
import { htmlText, xmlElement, xmlFile, xmlHtmlElement } from "./markup-text.ts";

/** Where it lies, from the book's root, whichever form it has. */
const FEED_PATH = "feed.xml";

const ATOM = "application/atom+xml";
const RSS = "application/rss+xml";

/** None where nobody knows where the book lies: a feed is read elsewhere. */
export function feedFiles(
  content: Content,
  bodyHtml: (text: string) => string,
): readonly ListFile[] {
  const { url } = content.book;
  const [notebook] = content.notebooks;
  if (url === undefined || !notebook) return [];
  const sources = { url, notebook: notebook.slug, bodyHtml };
  const write = feedType(content) === ATOM ? atomText : rssText;
  return [listFile(FEED_PATH, () => write(content, sources))];
}

/** The media type of a book's feed. */
export function feedType({ recipes }: Pick<Content, "recipes">): string {
  return recipes.some(({ date }) => date !== undefined) ? ATOM : RSS;
}

interface FeedSources {
  readonly url: string;
  /** The one on which links show a pattern. */
  readonly notebook: string;
  readonly bodyHtml: (text: string) => string;
}

/**
 * Atom (RFC 4287): feed and entries need an id, a title and when they were updated (4.1.1, 4.1.2), the feed an author
 * as well, since no entry names one. A day is told as its first moment, of no place in particular; the feed is as new
 * as its newest entry, so that two builds are alike.
 */
function atomText({ book: { title }, recipes }: Content, sources: FeedSources): string {
  const { url } = sources;
  const dated = recipes
    .flatMap((recipe) => (recipe.date === undefined ? [] : [{ recipe, date: recipe.date }]))
    .toSorted((one, other) => other.date - one.date);
  const entries = dated.flatMap(({ recipe, date }) => [
    "<entry>",
    xmlElement("title", recipe.title),
    xmlElement("id", idOf(recipe, sources)),
    `<link rel="alternate" type="text/html" href="${htmlText(pageOf(recipe, sources))}"/>`,
    xmlElement("updated", firstMoment(date)),
    `<category term="${recipe.purpose}" label="${PURPOSE_WORDS[recipe.purpose].title}"/>`,
    xmlHtmlElement("content", contentOf(recipe, sources), ' type="html"'),
    "</entry>",
  ]);
  return xmlFile([
    '<feed xmlns="http://www.w3.org/2005/Atom" xml:lang="en">',
    xmlElement("title", title),
    xmlElement("id", url),
    `<link rel="alternate" type="text/html" href="${htmlText(url)}index.html"/>`,
    `<link rel="self" type="${ATOM}" href="${htmlText(url + FEED_PATH)}"/>`,
    ...dated.slice(0, 1).map(({ date }) => xmlElement("updated", firstMoment(date))),
    `<author>${xmlElement("name", title)}</author>`,
    ...entries,
    "</feed>",
  ]);
}

function firstMoment(date: Day): string {
  return `${isoText(date)}T00:00:00Z`;
}

/**
 * RSS 2.0 (RSS Advisory Board): a channel needs a title, a link and a description, an item a title or a description,
 * and no date is asked for. The clock would make two builds differ, so none is given: a reader tells a new pattern by
 * its guid.
 */
function rssText({ book: { title }, recipes }: Content, sources: FeedSources): string {
  const { url } = sources;
  const items = recipes.flatMap((recipe) => [
    "<item>",
    xmlElement("title", recipe.title),
    xmlElement("link", pageOf(recipe, sources)),
    xmlElement("guid", idOf(recipe, sources), ' isPermaLink="false"'),
    xmlElement("category", PURPOSE_WORDS[recipe.purpose].title),
    xmlHtmlElement("description", contentOf(recipe, sources)),
    "</item>",
  ]);
  return xmlFile([
    '<rss version="2.0" xmlns:atom="http://www.w3.org/2005/Atom">',
    "<channel>",
    xmlElement("title", title),
    xmlElement("link", `${url}index.html`),
    xmlElement("description", `The patterns of ${title}: layouts for planners drawn by hand.`),
    xmlElement("language", "en"),
    `<atom:link rel="self" type="${RSS}" href="${htmlText(url + FEED_PATH)}"/>`,
    ...items,
    "</channel>",
    "</rss>",
  ]);
}

/** Stays as it is whichever notebooks the book has. */
function idOf({ slug }: Recipe, { url }: FeedSources): string {
  return `${url}patterns/${slug}/`;
}

function pageOf({ slug }: Recipe, { url, notebook }: FeedSources): string {
  return `${url}patterns/${slug}/${notebook}/index.html`;
}

/** Its picture, and its text. */
function contentOf(recipe: Recipe, sources: FeedSources): string {
  const picture = `<p><img src="${htmlText(sources.url + previewPath(recipe.slug))}" alt=""></p>`;
  return picture + withFullAddresses(sources.bodyHtml(recipe.body), pageOf(recipe, sources));
}

/** A feed is read elsewhere: a link that leads on from the pattern's page would lead nowhere. */
function withFullAddresses(html: string, page: string): string {
  return html.replace(/(<a href=")([^"]*)"/g, (tag, start: string, written: string) => {
    const address = written.replaceAll("&amp;", "&");
    return URL.canParse(address, page) ? `${start}${htmlText(new URL(address, page).href)}"` : tag;
  });
}
