/** Every small change of a source file that a test ought to notice: one operator, constant or condition at a time. */

/** What is written, and what is written instead. Formatted code has spaces around its operators; types have none. */
const SWAPS = [
  [/(?<= )\+(?= )/g, "-"],
  [/(?<= )-(?= )/g, "+"],
  [/(?<= )\*(?= )/g, "+"],
  [/(?<= )\/(?= )/g, "*"],
  [/(?<= )%(?= )/g, "*"],
  [/(?<= )<(?= )/g, "<="],
  [/(?<= )<=(?= )/g, "<"],
  [/(?<= )>(?= )/g, ">="],
  [/(?<= )>=(?= )/g, ">"],
  [/(?<= )===(?= )/g, "!=="],
  [/(?<= )!==(?= )/g, "==="],
  [/(?<= )&&(?= )/g, "||"],
  [/(?<= )\|\|(?= )/g, "&&"],
  [/(?<= )\+=(?= )/g, "-="],
  [/(?<= )-=(?= )/g, "+="],
  [/\+\+/g, "--"],
  [/\bMath\.min\b/g, "Math.max"],
  [/\bMath\.max\b/g, "Math.min"],
  [/\bMath\.floor\b/g, "Math.ceil"],
  [/\bMath\.ceil\b/g, "Math.floor"],
  [/\bcontinue\b/g, "break"],
  [/\bbreak\b(?=;)/g, "continue"],
  [/\btrue\b/g, "false"],
  [/\bfalse\b/g, "true"],
  [/(?<=[( ])!(?=[a-z(])/g, ""],
  [/\bsome\b(?=\()/g, "every"],
  [/\bevery\b(?=\()/g, "some"],
];

/** A whole number is raised by one. A number behind `??` stands where the types cannot see that it never does. */
const NUMBER = /(?<![\w.$"])(?<!\?\? )\d[\d_]*(?![\w.$"])/g;

/** A condition on one line is turned round. */
const CONDITION = /(?<=\b(?:if|while) \().+(?=\)(?: |$))/gm;

/** All mutants of a text: where, on which line, what was there and what is put there. */
export function mutantsOf(text) {
  const code = masked(text);
  const hits = (pattern) =>
    [...code.matchAll(pattern)].map(({ index, 0: hit }) => ({
      at: index,
      from: text.slice(index, index + hit.length),
    }));
  const found = SWAPS.flatMap(([pattern, to]) => hits(pattern).map((hit) => ({ ...hit, to })));
  const turned = hits(CONDITION)
    .filter(isWhole)
    .map((hit) => ({ ...hit, to: `!(${hit.from})` }));
  const raised = hits(NUMBER).map((hit) => ({
    ...hit,
    to: String(Number(hit.from.replaceAll("_", "")) + 1),
  }));
  return [...found, ...turned, ...raised]
    .sort((a, b) => a.at - b.at)
    .map(({ at, from, to }) => ({
      at,
      from,
      to,
      line: text.slice(0, at).split("\n").length,
      code: text.slice(text.lastIndexOf("\n", at) + 1, ends(text, at)).trim(),
    }));
}

/** The text with one mutant in place. */
export function mutated(text, { at, from, to }) {
  return text.slice(0, at) + to + text.slice(at + from.length);
}

/** Does every bracket that opens close again, and none before it opened? */
function isWhole({ from }) {
  let depth = 0;
  for (const sign of from) {
    if (sign === "(") depth += 1;
    if (sign === ")") depth -= 1;
    if (depth < 0) return false;
  }
  return depth === 0;
}

function ends(text, at) {
  const end = text.indexOf("\n", at);
  return end < 0 ? text.length : end;
}

/** Comments, strings, imports, declarations of shapes and thrown errors as blanks, so that nothing is found in them. */
function masked(text) {
  const blank = (part) => part.replace(/[^\n]/g, " ");
  return text
    .replace(/\/\*[\s\S]*?\*\/|\/\/[^\n]*/g, blank)
    .replace(/"(?:[^"\\\n]|\\.)*"|`(?:[^`\\]|\\.)*`/g, blank)
    .replace(/^import [\s\S]*?;$/gm, blank)
    .replace(/^(?:export )?interface [\s\S]*?^}/gm, blank)
    .replace(/^(?:export )?type [\s\S]*?;$/gm, blank)
    .replace(/^.*\bthrow new .*$/gm, blank)
    .replace(/(?<=\): |const \w+: |let \w+: )[^=;{]*(?=[={])/g, blank);
}
