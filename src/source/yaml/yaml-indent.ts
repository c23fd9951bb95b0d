/** Which fault a line has that stands further in or further out than YAML expects: its indentation, or a missing dash. */
import type { YamlFault } from "../../issue/facts/yaml-issue.ts";

/** The fault of the first line with something in it from an offset on, told at its first character. */
export function indentFault(
  text: string,
  from: number,
): { readonly kind: YamlFault; readonly from: number; readonly to: number } {
  const met = from + text.slice(from).search(/\S|$/);
  const start = lineBetweenDashes(text, met) ?? met;
  const line = text.lastIndexOf("\n", start - 1) + 1;
  if (start < met) return { kind: "indent", from: start, to: start + 1 };
  const kind = lacksDash(text.slice(0, line), text.slice(line)) ? "no-dash" : "indent";
  return { kind, from: start, to: start + 1 };
}

/** The reader meets the dash below: what stands between dashes in their very column belongs further in. */
function lineBetweenDashes(text: string, dash: number): number | undefined {
  if (!/^-\s/.test(text.slice(dash, dash + 2))) return undefined;
  const start = text.lastIndexOf("\n", dash) + 1;
  const column = dash - start;
  let end = start;
  let found: number | undefined;
  for (const line of text.slice(0, start).split("\n").slice(0, -1).reverse()) {
    end -= line.length + 1;
    if (isDeeper(line, column)) continue;
    if (indentOf(line) < column) return undefined;
    if (/^-\s/.test(line.slice(column))) return found;
    found = end + column;
  }
  return undefined;
}

/** Does a line without a dash stand in the very column in which the entries before it have theirs? */
function lacksDash(before: string, rest: string): boolean {
  const column = indentOf(rest);
  if (rest.charAt(column) === "-") return false;
  const around = before.split("\n").findLast((line) => !isDeeper(line, column));
  return around !== undefined && indentOf(around) === column && /^-\s/.test(around.trimStart());
}

/** Blank lines and remarks belong to any group. */
function isDeeper(line: string, column: number): boolean {
  return /^\s*(?:#|$)/.test(line) || indentOf(line) > column;
}

function indentOf(line: string): number {
  return line.search(/[^ ]|$/);
}
