/** In which order the parts of a line stand on paper: from left to right, but Hebrew and Arabic from right to left. */
import createBidi from "bidi-js";

/** A part of a line whose characters all run one way. */
export interface DirectedText {
  readonly text: string;
  readonly isRightToLeft: boolean;
}

/** The bidirectional algorithm (Unicode Standard Annex 9), which browsers set the drawings' text by. */
const BIDI = createBidi();

/** No letter before Hebrew's runs from right to left. */
const MAY_TURN = /[\u0590-\u{10ffff}]/u;

/** Pictures and the like, which the package would take for letters: it reads a line by halves of pairs. */
const FAR_SIGN = /(?!\p{L})[\u{10000}-\u{10ffff}]/gu;
/** Two of a sign without direction. */
const NEUTRAL_PAIR = "\u2600\u2600";

/** The parts from left to right. The line as a whole runs to the right, as in an SVG that does not say otherwise. */
export function directedParts(line: string): readonly DirectedText[] {
  if (!MAY_TURN.test(line)) return line === "" ? [] : [{ text: line, isRightToLeft: false }];
  const embedding = BIDI.getEmbeddingLevels(line.replace(FAR_SIGN, NEUTRAL_PAIR), "ltr");
  const parts: { start: number; end: number; level: number }[] = [];
  for (const index of BIDI.getReorderedIndices(line, embedding)) {
    const level = embedding.levels[index] ?? 0;
    const last = parts.at(-1);
    if (last?.level === level && index === last.end) last.end += 1;
    else if (last?.level === level && index === last.start - 1) last.start = index;
    else parts.push({ start: index, end: index + 1, level });
  }
  return parts.map(({ start, end, level }) => directed(line.slice(start, end), level % 2 === 1));
}

/** A bracket shows its other side to those who read from the right. */
function directed(text: string, isRightToLeft: boolean): DirectedText {
  if (!isRightToLeft) return { text, isRightToLeft };
  const mirrored = [...text].map((character) => BIDI.getMirroredCharacter(character) ?? character);
  return { text: mirrored.join(""), isRightToLeft };
}
