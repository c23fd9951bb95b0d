/** Which files are too small to stand alone, as a check over files given as text. */
import { posix } from "node:path";
import { importsOf } from "./import-rules.ts";

/** A file with fewer lines lives in the one file that imports it. */
export const FEWEST_LINES = 25;

export interface House {
  /** The files of the project by their paths, and those of its tests. */
  readonly files: ReadonlyMap<string, string>;
  readonly tests: Iterable<string>;
  /** Small files that stand alone on purpose, each with the reason. */
  readonly onPurpose: Readonly<Record<string, string>>;
}

/** Each small file with one importer that is neither a rule with a test of its own nor alone on purpose, and each needless exception. */
export function crumbs({ files, tests, onPurpose }: House): readonly string[] {
  const importers = importersOf(files);
  const tested = new Set([...tests].map((path) => posix.basename(path, ".test.ts")));
  const small = [...files].flatMap(([path, text]) => {
    const [importer, ...others] = importers.get(path) ?? [];
    const isCrumb = importer !== undefined && others.length === 0 && linesOf(text) < FEWEST_LINES;
    return isCrumb && !tested.has(posix.basename(path, ".ts")) ? [{ path, importer }] : [];
  });
  const needless = Object.keys(onPurpose).filter((path) => !small.some((one) => one.path === path));
  return [
    ...small
      .filter(({ path }) => !(path in onPurpose))
      .map(({ path, importer }) => `${path}: belongs into ${importer}`),
    ...needless.map((path) => `${path}: is no crumb, and needs no exception`),
  ].sort();
}

function importersOf(files: ReadonlyMap<string, string>): ReadonlyMap<string, readonly string[]> {
  const found = new Map<string, string[]>();
  for (const [path, text] of files) {
    const targets = importsOf(text).filter((target) => target.startsWith("."));
    for (const target of new Set(targets)) {
      const imported = posix.join(posix.dirname(path), target);
      found.set(imported, [...(found.get(imported) ?? []), path]);
    }
  }
  return found;
}

function linesOf(text: string): number {
  return text.trimEnd().split("\n").length;
}
