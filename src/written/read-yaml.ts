/** Turns YAML into a tree with places, and refuses what a recipe never needs: anchors, tags, several documents. */
import { Composer, type Document, LineCounter, Parser } from "yaml";
import type { Place } from "../problem/place.ts";
import type { Problem } from "../problem/problem.ts";
import { type Reading, readingOf } from "../problem/reading.ts";
import { placeFinder } from "./place-finder.ts";
import { treeOf } from "./tree-of.ts";
import type { Written } from "./written.ts";
import { deepToken } from "./yaml-depth.ts";
import { faultOf } from "./yaml-fault.ts";
import { openedAt } from "./yaml-opened.ts";

/** A stretch of a file that is YAML: `firstLine` is the number of its first line in the file. */
export interface YamlText {
  readonly path: string;
  readonly text: string;
  readonly firstLine: number;
}

/** More would only bury the first ones. */
const MOST_FAULTS = 12;

/** The tree, or what is wrong with it as YAML 1.2. Nothing is ever expanded, however often it is named. */
export function readYaml(source: YamlText): Reading<Written> {
  const counter = new LineCounter();
  const tokens = [...new Parser(counter.addNewLine).parse(source.text)];
  const placeOf = placeFinder(source, counter);
  const directive = tokens.find((token) => token.type === "directive");
  if (directive) return failed({ kind: "directive", at: placeOf(directive.offset) });
  const deep = deepToken(tokens);
  if (deep) return failed({ kind: "too-deep", limit: deep.limit, at: placeOf(deep.offset) });

  const options = { uniqueKeys: false, merge: false, prettyErrors: false, version: "1.2" } as const;
  const documents = [...new Composer(options).compose(tokens, true, source.text.length)];
  const [first, second] = documents;
  const faults = first
    ? syntaxProblems(first, { text: source.text, opened: openedAt(tokens) }, placeOf)
    : [];
  if (faults.length > 0) return { ok: false, problems: faults };
  if (second) {
    const [start] = second.range ?? [source.text.length];
    return failed({ kind: "several-documents", at: placeOf(start) });
  }
  const problems: Problem[] = [];
  const tree = treeOf(first?.contents ?? null, placeOf, (problem) => problems.push(problem));
  return readingOf(tree, problems);
}

type Fault = Extract<Problem, { about: "yaml" }>;
type WithoutAbout<T> = T extends unknown ? Omit<T, "about"> : never;

function failed(fault: WithoutAbout<Fault>): Reading<Written> {
  return { ok: false, problems: [{ about: "yaml", ...fault }] };
}

function syntaxProblems(
  document: Document.Parsed,
  { text, opened }: { readonly text: string; readonly opened: number | undefined },
  placeOf: (from: number, to?: number) => Place,
): readonly Problem[] {
  const found = document.errors.slice(0, MOST_FAULTS).map((error): Problem => {
    const kind = faultOf(error);
    const isOpen = kind === "not-closed" || kind === "open-quote";
    const [from, to] = error.pos;
    if (isOpen && opened !== undefined) return { about: "yaml", kind, at: placeOf(opened) };
    // The reader points at the blank before a line that stands too far out.
    const start = kind === "indent" ? from + text.slice(from).search(/\S|$/) : from;
    return { about: "yaml", kind, at: placeOf(start, Math.max(to, start + 1)) };
  });
  // A second fault in a line mostly follows from the first.
  return found.filter(
    (fault, index) => found.findIndex((other) => other.at.line === fault.at.line) === index,
  );
}
