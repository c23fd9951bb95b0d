/** Changes the words of a written file and nothing else of it: labels, title. Comments, order and layout stay as they are. */
import { isMap, isScalar, isSeq, type Pair, parseDocument, type Scalar, visit } from "yaml";
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
  const splices = words.flatMap(({ of, node }) => {
    const written = textOf(node);
    // A keyword such as `end` is no label, whatever labels there are.
    const isLabel = of === "label" || (of === "leftover" && named.includes(written));
    const next = of === "title" ? title : isLabel ? labels.get(written) : undefined;
    const [from, to] = node.range ?? [];
    if (next === undefined || next === written || from === undefined || to === undefined) return [];
    return [{ from: from + offset, to: to + offset, next }];
  });
  return splices
    .sort((a, b) => b.from - a.from)
    .reduce((whole, { from, to, next }) => {
      // A block of text ends with its line.
      const end = whole.slice(from, to).endsWith("\n") ? "\n" : "";
      return whole.slice(0, from) + quoted(next) + end + whole.slice(to);
    }, text);
}

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

function wordsOf(text: string): Words {
  const front = /^\uFEFF?---[ \t]*(?:\r\n|\r|\n)/.exec(text)?.[0] ?? "";
  const matter = frontMatterOf(text);
  const bom = text.startsWith("\uFEFF") ? 1 : 0;
  const yaml = text.slice(front.length, bom + matter.replace(/---[ \t]*$/, "").length);
  const document = parseDocument(yaml, { uniqueKeys: false, merge: false, version: "1.2" });
  const words: Word[] = [];
  visit(document, {
    Pair: (_, pair, path) => {
      words.push(...wordsIn(pair, path.length === 2));
    },
  });
  const { contents } = document;
  return { words, isDated: isMap(contents) && contents.has("dates"), offset: front.length };
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
