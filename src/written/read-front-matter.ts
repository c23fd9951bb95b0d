/** Takes a Markdown file apart: the YAML between its two lines of dashes, and the text below. */
import type { Place } from "../problem/place.ts";
import type { Reading, TextFile } from "../problem/reading.ts";
import { readYaml } from "./read-yaml.ts";
import type { WrittenMap } from "./written.ts";

export interface FrontMatter {
  readonly tree: WrittenMap;
  /** With plain newlines and no blank lines around it. */
  readonly body: string;
}

/** Front matter and body; a byte order mark and Windows line ends are no matter. */
export function readFrontMatter(file: TextFile): Reading<FrontMatter> {
  const lines = plainText(file.text).split("\n");
  const failed = (kind: "no-front-matter" | "open-front-matter"): Reading<FrontMatter> => ({
    ok: false,
    problems: [{ about: "file", kind, at: startOf(file.path) }],
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
  return { ok: true, value: { tree: yaml.value, body } };
}

/** A file that is YAML as a whole. */
export function readYamlFile(file: TextFile): Reading<WrittenMap> {
  return readYamlMap({ path: file.path, text: plainText(file.text), firstLine: 1 });
}

function readYamlMap(source: {
  readonly path: string;
  readonly text: string;
  readonly firstLine: number;
}): Reading<WrittenMap> {
  const yaml = readYaml(source);
  if (!yaml.ok) return yaml;
  const tree = yaml.value;
  // What the whole lacks is told at the file's first line.
  if (tree.kind === "map") return { ok: true, value: { ...tree, at: startOf(source.path) } };
  // Nothing at all is a map without keys: the problems are the keys that are missing.
  if (tree.kind === "scalar" && tree.value === null) {
    return { ok: true, value: { kind: "map", entries: [], at: startOf(source.path) } };
  }
  return { ok: false, problems: [{ about: "yaml", kind: "not-keys", at: tree.at }] };
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
