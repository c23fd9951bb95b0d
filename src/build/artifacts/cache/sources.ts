/** What each artifact is made from: two with the same sources are the same, and one whose sources change is made again. */
import type { Pair } from "../../../view/entries.ts";
import { notebookPath, patternPath, stripPath } from "../../content/content-paths.ts";
import type { Content } from "../../content/load-content.ts";
import { keyOf } from "./cache.ts";

/** Of a notebook's page. Files stand for themselves by their digests. */
export function notebookSources(slug: string, content: Content): readonly string[] {
  return [slug, digestOf(notebookPath(slug), content)];
}

/** Of so many patterns, wherever they are drawn. */
export function patternSources(slugs: readonly string[], content: Content): readonly string[] {
  return slugs.flatMap((slug) => [slug, digestOf(patternPath(slug), content)]);
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
  const own = [slug, digestOf(stripPath(slug), content)];
  return [...own, ...printedSources(notebook, content), ...patternSources(slugs, content)];
}

/** Of the files of each content that is in use, each digested once however many pages are made from it. */
const DIGESTS = new WeakMap<Content["texts"], ReadonlyMap<string, string>>();

/** Stands for the text of a file; "" where it is not there, as where content did not come from files. */
function digestOf(path: string, { texts }: Content): string {
  const known = DIGESTS.get(texts);
  const digests = known ?? new Map([...texts].map(([each, text]) => [each, keyOf([text])]));
  if (!known) DIGESTS.set(texts, digests);
  return digests.get(path) ?? "";
}
