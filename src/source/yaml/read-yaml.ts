/** Turns YAML into a tree with places, and refuses what a recipe never needs: anchors, tags, several documents. */
import { Composer, type Document } from "yaml";
import type { Issue } from "../../issue/facts/issue.ts";
import { type Reading, readingOf } from "../../issue/facts/reading.ts";
import type { SourceNode } from "../tree.ts";
import { type PlaceFinder, placeFinder } from "./place-finder.ts";
import { propertiesIn } from "./yaml-anchors.ts";
import { deepToken } from "./yaml-depth.ts";
import type { Looked } from "./yaml-error.ts";
import { faultsOf } from "./yaml-errors.ts";
import { tokensOf } from "./yaml-tokens.ts";
import { treeOf } from "./yaml-tree.ts";
import { openedAt } from "./yaml-unclosed.ts";

/** A stretch of a file that is YAML: `firstLine` is the number of its first line in the file. */
export interface YamlText {
  readonly path: string;
  readonly text: string;
  readonly firstLine: number;
}

/** With the tree, if it says all the same what was meant: its own problems can be told as well. */
export type YamlReading = Reading<SourceNode> & { readonly meant?: SourceNode };

/** The tree, or what is wrong with it as YAML 1.2. Nothing is ever expanded, however often it is named. */
export function readYaml(source: YamlText): YamlReading {
  const placeOf = placeFinder(source);
  const cut = tokensOf(source.text);
  if (!cut.ok) return failed({ kind: "too-many-words", limit: cut.limit, at: placeOf(cut.offset) });
  const { tokens } = cut;
  const directive = tokens.find((token) => token.type === "directive");
  if (directive) return failed({ kind: "directive", at: placeOf(directive.offset) });
  const deep = deepToken(tokens);
  if (deep) return failed({ kind: "too-deep", limit: deep.limit, at: placeOf(deep.offset) });

  const options = { uniqueKeys: false, merge: false, prettyErrors: false, version: "1.2" } as const;
  const documents = [...new Composer(options).compose(tokens, true, source.text.length)];
  const [first, second] = documents;
  const faults = first?.errors.length
    ? syntaxIssues(first, { text: source.text, opened: openedAt(tokens) }, placeOf)
    : [];
  if (faults.length > 0) return { ok: false, issues: faults };
  if (second) {
    const [start] = second.range ?? [source.text.length];
    return failed({ kind: "several-documents", at: placeOf(start) });
  }
  const issues: Issue[] = propertiesIn(tokens).map(({ kind, from, to }) => ({
    about: "yaml",
    kind,
    at: placeOf(from, to),
  }));
  const tree = treeOf(first?.contents ?? null, placeOf, (issue) => issues.push(issue));
  const reading = readingOf(tree, issues);
  return issues.every(({ kind }) => CLEAR.includes(kind)) ? { ...reading, meant: tree } : reading;
}

/** What stands in the tree as it was meant, although it is refused. */
const CLEAR: readonly Issue["kind"][] = ["duplicate-key", "anchor", "tag"];

type Fault = Extract<Issue, { about: "yaml" }>;
type WithoutAbout<T> = T extends unknown ? Omit<T, "about"> : never;

function failed(fault: WithoutAbout<Fault>): Reading<SourceNode> {
  return { ok: false, issues: [{ about: "yaml", ...fault }] };
}

function syntaxIssues(
  document: Document.Parsed,
  looked: Looked,
  placeOf: PlaceFinder,
): readonly Issue[] {
  const found = faultsOf(document.errors, looked).map(
    ({ kind, from, to }): Issue => ({
      about: "yaml",
      kind,
      at: placeOf(from, Math.max(to, from + 1)),
    }),
  );
  // A second fault in a line mostly follows from the first.
  return found.filter(
    (fault, index) => found.findIndex((other) => other.at.line === fault.at.line) === index,
  );
}
