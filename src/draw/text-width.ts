/** How wide a text will be, estimated from its characters: nothing is measured, so every machine agrees. */

/**
 * Widths in thousandths of the font size, in classes: each the wider of Fira Sans and of Liberation
 * Sans (which has the widths of Arial and Helvetica), read from the fonts' own advance widths.
 */
const CLASSES: readonly (readonly [characters: string, width: number])[] = [
  [" .,:;!'ijlI", 295],
  ["ft()[]{}`", 370],
  ['r-"|*°', 440],
  ["cksvxyzJ", 520],
  ["/\\abdeghnopqu0123456789?_L#$–", 600],
  ["+=<>~^FTZ", 620],
  ["ABEKPSVXY", 670],
  ["CDHNRUw&", 730],
  ["GOQ", 780],
  ["mM%", 890],
  ["W@—…", 1020],
];

const WIDTHS: ReadonlyMap<string, number> = new Map(
  CLASSES.flatMap(([characters, width]) => [...characters].map((one) => [one, width] as const)),
);

const NO_WIDTH = /^[\p{M}\p{Cf}\p{Cc}]$/u;
/** Scripts whose characters fill a square, and pictures. */
const FULL_WIDTH =
  /^[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}\p{Extended_Pictographic}]$/u;
const FULL = 1000;
const OTHER = 700;
const BOLD = 1.04;

/** The width of one digit, in parts of the font size. */
export const DIGIT_WIDTH = 0.556;

/** From the baseline up to the middle of a capital, in parts of the font size. */
export const BASELINE = 0.345;

/** The height of a capital, in parts of the font size. */
export const CAPITAL = 0.69;

export type TextWeight = "normal" | "bold";

/** An estimated width in the unit of the size, on the wide side. */
export function textWidth(text: string, size: number, weight: TextWeight = "normal"): number {
  let thousandths = 0;
  for (const character of text) thousandths += characterWidth(character);
  return (thousandths / 1000) * size * (weight === "bold" ? BOLD : 1);
}

function characterWidth(character: string): number {
  const known = WIDTHS.get(character);
  if (known !== undefined) return known;
  if (NO_WIDTH.test(character)) return 0;
  if (FULL_WIDTH.test(character)) return FULL;
  return WIDTHS.get(character.normalize("NFD").charAt(0)) ?? OTHER;
}
