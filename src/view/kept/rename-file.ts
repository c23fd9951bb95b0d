/** Gives files that are brought other names where theirs are taken. */
import { LIMITS } from "../../recipe/limits.ts";
import { retyped, withPattern } from "../../recipe/retype.ts";
import { slugOf } from "../../source/slug.ts";
import { slugFor } from "../fields/slug-for.ts";
import { type KeptFile, type KeptKind, keptPath, kindOf } from "./kept-file.ts";

/** The file under the first free name: `week` becomes `week-2`. */
export function renamedFile(file: KeptFile, taken: readonly string[]): KeptFile {
  const slug = slugFor(slugOf(file.path), { fallback: "file", taken });
  return { path: keptPath(kindOf(file.path), slug), text: file.text };
}

const WORD = " (copy)";

/** A copy of the file under a title and a name of its own; nothing else of it is changed. */
export function copiedFile(file: KeptFile, title: string, taken: readonly string[]): KeptFile {
  const copy = `${title.slice(0, LIMITS.text - WORD.length)}${WORD}`;
  const kind = kindOf(file.path);
  const slug = slugFor(copy, { fallback: slugOf(file.path), taken });
  return { path: keptPath(kind, slug), text: retyped(file.text, { title: copy }) };
}

/** The files, some of them under free names; strips and set-ups among them name the patterns as they are called now. */
export function renamedTogether(
  files: readonly KeptFile[],
  renamed: readonly KeptFile[],
  taken: Readonly<Partial<Record<KeptKind, readonly string[]>>>,
): readonly KeptFile[] {
  const names = new Map(
    renamed.map((file) => [file.path, renamedFile(file, taken[kindOf(file.path)] ?? []).path]),
  );
  const patterns = [...names].filter(([path]) => kindOf(path) === "patterns");
  return files.map(({ path, text }) => ({
    path: names.get(path) ?? path,
    text:
      kindOf(path) === "strips" || kindOf(path) === "setups"
        ? patterns.reduce((whole, [from, to]) => withPattern(whole, slugOf(from), slugOf(to)), text)
        : text,
  }));
}
