/** What each artifact is made from: two with the same sources are the same, and one whose sources change is made again. */
import type { Pair } from "../../../view/entries.ts";
import { notebookPath, patternPath, stripPath } from "../../content/content-paths.ts";
import type { Content } from "../../content/load-content.ts";

/** Of a notebook's page. */
export function notebookSources(slug: string, { texts }: Content): readonly string[] {
  return [slug, texts.get(notebookPath(slug)) ?? ""];
}

/** Of so many patterns, wherever they are drawn: of the calendar, too. */
export function patternSources(
  slugs: readonly string[],
  { book, texts }: Content,
): readonly string[] {
  const calendar = JSON.stringify(book.calendar ?? {});
  return [calendar, ...slugs.flatMap((slug) => [slug, texts.get(patternPath(slug)) ?? ""])];
}

/** Of a pattern's page on a notebook. */
export function pairSources({ pattern, notebook }: Pair, content: Content): readonly string[] {
  return [...patternSources([pattern], content), ...notebookSources(notebook, content)];
}

/** Of what is printed for a notebook: the printer's error, too. */
export function printedSources(notebook: string, content: Content): readonly string[] {
  return [JSON.stringify(content.book.printer ?? {}), ...notebookSources(notebook, content)];
}

/** Of a strip on a notebook. */
export function stripSources(
  { strip: slug, notebook }: { readonly strip: string; readonly notebook: string },
  content: Content,
): readonly string[] {
  const strip = content.strips.find((one) => one.slug === slug);
  const slugs = strip ? [...new Set([...strip.across, ...strip.down])] : [];
  const own = [slug, content.texts.get(stripPath(slug)) ?? ""];
  return [...own, ...printedSources(notebook, content), ...patternSources(slugs, content)];
}
