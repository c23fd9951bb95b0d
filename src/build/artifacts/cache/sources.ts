/** What each artifact is made from: two with the same sources are the same, and one whose sources change is made again. */
import { patternsOf } from "../../../recipe/strip-recipe.ts";
import { slugsOf } from "../../../setup/check-setup.ts";
import { frontMatterOf } from "../../../source/front-matter/read-front-matter.ts";
import type { Pair } from "../../../view/entries.ts";
import type { SetupPair } from "../../../view/setup/setup-view.ts";
import { notebookPath, patternPath, setupPath, stripPath } from "../../content/content-paths.ts";
import type { Content } from "../../content/load-content.ts";
import { keyOf } from "./cache.ts";

/** Of a notebook's page. A file counts by its front matter: what stands below it is on pages, and in no drawing, plan or sheet. */
export function notebookSources(slug: string, content: Content): readonly string[] {
  return [slug, digestsOf(notebookPath(slug), content).frontMatter];
}

/** Of so many patterns, wherever they are drawn: of the calendar, too. */
export function patternSources(slugs: readonly string[], content: Content): readonly string[] {
  const calendar = JSON.stringify(content.book.calendar ?? {});
  const digests = slugs.flatMap((slug) => [
    slug,
    digestsOf(patternPath(slug), content).frontMatter,
  ]);
  return [calendar, ...digests];
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
  const slugs = strip ? patternsOf(strip) : [];
  const own = [slug, digestsOf(stripPath(slug), content).frontMatter];
  return [...own, ...printedSources(notebook, content), ...patternSources(slugs, content)];
}

/** Of a set-up on a notebook. */
export function setupSources(
  { setup: slug, notebook }: SetupPair,
  content: Content,
): readonly string[] {
  const setup = content.setups.find((one) => one.slug === slug);
  const own = [slug, digestsOf(setupPath(slug), content).frontMatter];
  const patterns = patternSources(setup ? slugsOf(setup) : [], content);
  const calendars = content.calendars.map(({ path }) => digestsOf(path, content).text);
  return [...own, ...calendars, ...printedSources(notebook, content), ...patterns];
}

/** What stands for the text of a file, and for its front matter alone. */
interface Digests {
  readonly text: string;
  readonly frontMatter: string;
}

const NO_FILE: Digests = { text: "", frontMatter: "" };

/** Of the files of each content that is in use, each digested once however many pages are made from it. */
const DIGESTS = new WeakMap<Content["texts"], ReadonlyMap<string, Digests>>();

/** Both are "" where the file is not there, as where content did not come from files. */
export function digestsOf(path: string, { texts }: Content): Digests {
  const known = DIGESTS.get(texts);
  const digests = known ?? new Map([...texts].map(([each, text]) => [each, digest(text)]));
  if (!known) DIGESTS.set(texts, digests);
  return digests.get(path) ?? NO_FILE;
}

function digest(text: string): Digests {
  return { text: keyOf([text]), frontMatter: keyOf([frontMatterOf(text)]) };
}
