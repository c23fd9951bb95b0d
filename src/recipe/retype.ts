/** Changes the words of a written file and nothing else of it: labels, title. Comments, order and layout stay as they are. */
import { isMap, isPair, isScalar, isSeq, type Pair, parseDocument, type Scalar, visit } from "yaml";
import { writeFlowText } from "../source/front-matter/quote-text.ts";
import { frontMatterOf } from "../source/front-matter/read-front-matter.ts";
import { readLabelTemplate } from "./label-template.ts";

/** What to write instead; what is not named stays. */
export interface Retyping {
  readonly title?: string;
  /** The new label by the written one. */
  readonly labels?: ReadonlyMap<string, string>;
}

/**
 * Each different label of a recipe once, as written, in the order of the file. In a dated pattern those that only
 * stand for dates are left out. The file must be one that reads without problems.
 */
export function writtenLabels(text: string): readonly string[] {
  const { words, isDated } = wordsOf(text);
  const labels = words.filter(({ of }) => of === "label").map(({ node }) => textOf(node));
  const isWorded = (label: string) =>
    isDated
      ? readLabelTemplate(label).parts.some((part) => part.kind === "text" && /\S/.test(part.text))
      : label.trim() !== "";
  return [...new Set(labels)].filter(isWorded);
}

/** The file with other words. `leftover` that named a label goes on naming it. */
export function retyped(text: string, { title, labels = new Map() }: Retyping): string {
  const { words, offset } = wordsOf(text);
  const named = words.filter(({ of }) => of === "label").map(({ node }) => textOf(node));
  const changes = words.flatMap(({ of, node }) => {
    const written = textOf(node);
    // A keyword such as `end` is no label, whatever labels there are.
    const isLabel = of === "label" || (of === "leftover" && named.includes(written));
    const next = of === "title" ? title : isLabel ? labels.get(written) : undefined;
    return next === undefined || next === written ? [] : [{ node, next }];
  });
  return spliced(text, changes, offset);
}

interface Change {
  readonly node: Scalar;
  readonly next: string;
}

function spliced(text: string, changes: readonly Change[], offset: number): string {
  const places = changes.flatMap(({ node: { range }, next }) =>
    range ? [{ from: range[0] + offset, to: range[1] + offset, next }] : [],
  );
  return places
    .sort((a, b) => b.from - a.from)
    .reduce((whole, { from, to, next }) => {
      // A block of text ends with its line.
      const end = whole.slice(from, to).endsWith("\n") ? "\n" : "";
      return whole.slice(0, from) + quoted(next) + end + whole.slice(to);
    }, text);
}

/** A strip or a set-up that names a pattern by another file name. */
export function withPattern(text: string, from: string, to: string): string {
  const { yaml, offset } = yamlOf(text);
  const found: Scalar[] = [];
  visit(parseDocument(yaml, OPTIONS), {
    Scalar: (key, node, path) => {
      const names = path.flatMap((one) =>
        isPair(one) && isScalar(one.key) ? [one.key.value] : [],
      );
      if (key !== "key" && node.value === from && NAMING.includes(`${names.at(-1)}`))
        found.push(node);
    },
  });
  return spliced(
    text,
    found.map((node) => ({ node, next: to })),
    offset,
  );
}

/** The keys behind which a pattern is named. */
const NAMING = ["across", "down", "pages", "pattern", "fill"];

interface Word {
  readonly of: "title" | "label" | "leftover";
  readonly node: Scalar;
}

interface Words {
  readonly words: readonly Word[];
  readonly isDated: boolean;
  /** Where the YAML begins in the file. */
  readonly offset: number;
}

const OPTIONS = { uniqueKeys: false, merge: false, version: "1.2" } as const;

/** The front matter's YAML, and where it begins in the file. */
function yamlOf(text: string): { readonly yaml: string; readonly offset: number } {
  const offset = /^\uFEFF?---[ \t]*(?:\r\n|\r|\n)/.exec(text)?.[0].length ?? 0;
  const start = text.startsWith("\uFEFF") ? 1 : 0;
  const end = start + frontMatterOf(text).replace(/---[ \t]*$/, "").length;
  return { yaml: text.slice(offset, end), offset };
}

function wordsOf(text: string): Words {
  const { yaml, offset } = yamlOf(text);
  const document = parseDocument(yaml, OPTIONS);
  const words: Word[] = [];
  visit(document, {
    Pair: (_, pair, path) => {
      words.push(...wordsIn(pair, path.length === 2));
    },
  });
  const { contents } = document;
  return { words, isDated: isMap(contents) && contents.has("dates"), offset };
}

/** `isOfHead` tells a key of the file itself from one of an area. */
function wordsIn({ key, value }: Pair, isOfHead: boolean): readonly Word[] {
  const name = isScalar(key) ? key.value : undefined;
  if (name === "labels" && isSeq(value))
    return value.items.flatMap((node) => (isScalar(node) ? [{ of: "label", node } as const] : []));
  if (!isScalar(value)) return [];
  if (name === "title") return isOfHead ? [{ of: "title", node: value }] : [];
  return name === "label" || name === "leftover" ? [{ of: name, node: value }] : [];
}

function textOf({ source, value }: Scalar): string {
  return source ?? `${value}`;
}

/** What YAML would read as a number or a truth is put in quotes, too. */
function quoted(text: string): string {
  const isOther = /^(?:true|false)$/i.test(text) || Number.isFinite(Number(text));
  return isOther ? JSON.stringify(text) : writeFlowText(text);
}
