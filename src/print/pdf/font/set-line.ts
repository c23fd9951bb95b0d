/** A line of text as it is set: what is shown of each font, and where; kept for the next file that has the same line. */
import { type FontRun, fontRuns } from "./font-runs.ts";
import { missingGlyphOf } from "./missing-shape.ts";
import type { FontLists, SetGlyph, Weight } from "./print-font.ts";
import { hexOf } from "./unicode-map.ts";

/** From left to right. Lengths are in parts of the font size. */
export interface SetLine {
  readonly width: number;
  readonly runs: readonly SetRun[];
}

export type SetRun = FoundRun | MissingRun;

/** A part of a line in one font. */
export interface FoundRun {
  readonly kind: "found";
  /** The font's place in the list of its weight. */
  readonly font: number;
  readonly weight: Weight;
  readonly width: number;
  readonly glyphs: readonly SetGlyph[];
  readonly pieces: readonly SetPiece[];
}

/** Glyphs that are shown with one operator, from a place of their own on. */
interface SetPiece {
  readonly x: number;
  readonly y: number;
  readonly show: string;
}

/** A part that no font has: its characters from left to right. */
export interface MissingRun {
  readonly kind: "missing";
  readonly width: number;
  readonly characters: string;
}

/** How many lines of a weight are kept; then it begins anew. */
const LIMIT = 4096;

/** Sets lines in the fonts. What it gives depends on the line alone. */
export function rememberLines(fonts: FontLists): (text: string, weight: Weight) => SetLine {
  const known = { normal: new Map<string, SetLine>(), bold: new Map<string, SetLine>() };
  return (text, weight) => {
    const lines = known[weight];
    const before = lines.get(text);
    if (before) return before;
    const line = setLine(text, weight, fonts);
    if (lines.size >= LIMIT) lines.clear();
    lines.set(text, line);
    return line;
  };
}

function setLine(text: string, weight: Weight, fonts: FontLists): SetLine {
  const runs = fontRuns(text, weight, fonts).map((run) => setRun(run, weight, fonts));
  return { width: runs.reduce((sum, { width }) => sum + width, 0), runs };
}

function setRun(
  { text, font: place, isRightToLeft }: FontRun,
  weight: Weight,
  fonts: FontLists,
): SetRun {
  const font = place === undefined ? undefined : fonts[weight][place];
  if (place === undefined || font === undefined) {
    const characters = [...text];
    const width =
      characters.reduce((sum, character) => sum + missingGlyphOf(character).width, 0) / 1000;
    return {
      kind: "missing",
      width,
      characters: (isRightToLeft ? characters.reverse() : characters).join(""),
    };
  }
  // Word by word, each with the space after it: words come again more often than lines.
  const glyphs = (text.match(WORD) ?? []).flatMap((word) => font.set(word));
  const width = glyphs.reduce((sum, { advance }) => sum + advance, 0) / 1000;
  return { kind: "found", font: place, weight, width, glyphs, pieces: piecesOf(glyphs) };
}

const WORD = /[^ ]* |[^ ]+/g;

/** A glyph that is moved, such as an accent, is a piece by itself. */
function piecesOf(glyphs: readonly SetGlyph[]): readonly SetPiece[] {
  const pieces: { x: number; y: number; isMoved: boolean; glyphs: SetGlyph[] }[] = [];
  let end = 0;
  for (const glyph of glyphs) {
    const { x, y } = glyph;
    const isMoved = x !== 0 || y !== 0;
    const last = pieces.at(-1);
    if (last && !last.isMoved && !isMoved) last.glyphs.push(glyph);
    else pieces.push({ x: (end + x) / 1000, y: y / 1000, isMoved, glyphs: [glyph] });
    end += glyph.advance;
  }
  return pieces.map((piece) => ({ x: piece.x, y: piece.y, show: showOperator(piece.glyphs) }));
}

/** Codes of two bytes; where a glyph is nearer or farther than its width says, the difference between them (ISO 32000-1, 9.4.3). */
function showOperator(glyphs: readonly SetGlyph[]): string {
  let isClosed = true;
  let shown = "";
  for (const [index, { code, width, advance }] of glyphs.entries()) {
    shown += `${isClosed ? "<" : ""}${hexOf(code, 4)}`;
    const isLast = index === glyphs.length - 1;
    isClosed = isLast || advance !== width;
    if (isClosed) shown += isLast ? ">" : `>${Math.round((width - advance) * 1e3) / 1e3}`;
  }
  return shown.lastIndexOf("<") === 0 ? `${shown}Tj` : `[${shown}]TJ`;
}
