/** Takes a Markdown file apart: the YAML between its two lines of dashes, and the text below. */
import type { Issue } from "../../issue/facts/issue.ts";
import type { Place } from "../../issue/facts/place.ts";
import type { Reading, TextFile } from "../../issue/facts/reading.ts";
import { isNothing, type SourceMapping } from "../tree.ts";
import { readYaml } from "../yaml/read-yaml.ts";

export interface ReadKeys {
  readonly tree: SourceMapping;
  /** What is wrong with the YAML, where the keys can be read all the same. */
  readonly faults: readonly Issue[];
}

export interface FrontMatter extends ReadKeys {
  /** With plain newlines and no blank lines around it. */
  readonly body: string;
}

/** Front matter and body; a byte order mark and Windows line ends are no matter. */
export function readFrontMatter(file: TextFile): Reading<FrontMatter> {
  const lines = plainText(file.text).split("\n");
  const failed = (kind: "no-front-matter" | "open-front-matter"): Reading<FrontMatter> => ({
    ok: false,
    issues: [{ about: "file", kind, at: startOf(file.path) }],
  });
  if (!isDashes(lines[0])) return failed("no-front-matter");
  const end = lines.findIndex((line, index) => index > 0 && isDashes(line));
  if (end < 0) return failed("open-front-matter");
  const text = lines.slice(1, end).join("\n");
  const yaml = readYamlMap({ path: file.path, text: `${text}\n`, firstLine: 2 });
  if (!yaml.ok) return yaml;
  const body = lines
    .slice(end + 1)
    .join("\n")
    .trim();
  return { ok: true, value: { ...yaml.value, body } };
}

/** A file that is YAML as a whole. */
export function readYamlFile(file: TextFile): Reading<ReadKeys> {
  return readYamlMap({ path: file.path, text: plainText(file.text), firstLine: 1 });
}

function readYamlMap(source: {
  readonly path: string;
  readonly text: string;
  readonly firstLine: number;
}): Reading<ReadKeys> {
  const yaml = readYaml(source);
  const tree = yaml.ok ? yaml.value : yaml.meant;
  if (!yaml.ok && !tree) return yaml;
  const faults = yaml.ok ? [] : yaml.issues;
  // What the whole lacks is told at the file's first line.
  const at = startOf(source.path);
  if (tree?.kind === "map") return { ok: true, value: { tree: { ...tree, at }, faults } };
  // Nothing at all is a map without keys: the problems are the keys that are missing.
  if (!tree || isNothing(tree)) {
    return { ok: true, value: { tree: { kind: "map", entries: [], at }, faults } };
  }
  return { ok: false, issues: [...faults, { about: "yaml", kind: "not-keys", at: tree.at }] };
}

/** The text without a byte order mark, every line end a plain newline. */
function plainText(text: string): string {
  return text.replace(/^\uFEFF/, "").replace(/\r\n?/g, "\n");
}

function isDashes(line: string | undefined): boolean {
  return line !== undefined && /^---[ \t]*$/.test(line);
}

function startOf(file: string): Place {
  return { file, line: 1, column: 1, width: 3 };
}

/** "" where there is none. */
export function frontMatterOf(text: string): string {
  return (
    /^---[ \t]*\r?\n[\s\S]*?\n---[ \t]*(?=\r?\n|$)/.exec(text.replace(/^\uFEFF/, ""))?.[0] ?? ""
  );
}
