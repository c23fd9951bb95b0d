/** In which order the parts of a line stand on paper: from left to right, but Hebrew and Arabic from right to left. */

/** A part of a line whose characters all run one way. */
export interface DirectedText {
  readonly text: string;
  readonly isRightToLeft: boolean;
}

const SCRIPTS = ["Hebrew", "Arabic", "Syriac", "Thaana", "Nko", "Adlam"]
  .map((script) => `\\p{Script=${script}}`)
  .join("");

/** From one letter that runs to the left up to another, with no letter that runs to the right between. */
const BACKWARD = new RegExp(`[${SCRIPTS}](?:[^\\p{L}]*[${SCRIPTS}]+\\p{M}*)*`, "gu");
const ANY_BACKWARD = new RegExp(`[${SCRIPTS}]`, "u");
/** Numbers keep their direction inside of it (Unicode Standard Annex 9, rule L2). */
const NUMBER = /\p{Nd}+(?:[.,:/]\p{Nd}+)*/gu;

/** The parts from left to right. The line as a whole runs to the right, as in an SVG that does not say otherwise. */
export function directedParts(line: string): readonly DirectedText[] {
  if (!ANY_BACKWARD.test(line)) return line === "" ? [] : [{ text: line, isRightToLeft: false }];
  return splitBy(line, BACKWARD).flatMap(({ text, matches }) =>
    matches ? backwardParts(text) : [{ text, isRightToLeft: false }],
  );
}

function backwardParts(text: string): readonly DirectedText[] {
  return splitBy(text, NUMBER)
    .map((part) => ({ text: part.text, isRightToLeft: !part.matches }))
    .reverse();
}

/** The pieces of a text that match, and those between them. */
function splitBy(
  text: string,
  pattern: RegExp,
): readonly { readonly text: string; readonly matches: boolean }[] {
  const parts: { text: string; matches: boolean }[] = [];
  let start = 0;
  for (const match of text.matchAll(pattern)) {
    parts.push({ text: text.slice(start, match.index), matches: false });
    parts.push({ text: match[0], matches: true });
    start = match.index + match[0].length;
  }
  parts.push({ text: text.slice(start), matches: false });
  return parts.filter((part) => part.text !== "");
}
