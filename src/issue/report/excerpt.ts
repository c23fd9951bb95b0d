/** The line that a problem is about, with a row of carets below what is meant. */
import { eastAsianWidth } from "get-east-asian-width";
import type { Place } from "../facts/place.ts";
import { type Cell, cellsOf, MARK } from "../words/harmless-text.ts";

/** Columns of print that an excerpt takes at most. */
const WIDEST = 96;

/** Columns kept in front of the carets where a long line is clipped. */
const LEAD = 32;

/** Characters looked at on each side of the first caret: a column takes six at most, a pair of halves with two such marks. */
const REACH = 6 * (WIDEST + 4);

/** Two rows, without the line's indentation; a long line is clipped around the carets. */
export function excerpt(line: string, place: Pick<Place, "column" | "width">): readonly string[] {
  const start = place.column - 1;
  const indent = Math.min(line.length - line.trimStart().length, start);
  const cut = Math.max(indent, Math.min(start, line.length) - REACH);
  const near = line.slice(cut, start + REACH);
  const cells = cellsOf(near);
  const from = start - cut;
  const to = from + place.width;
  const window = windowOf(cells, from);
  const shown = cells.slice(window.first, window.end);
  const before = shown.filter((cell) => cell.from < from);
  const marked = shown.filter((cell) => cell.from >= from && cell.from < to);
  const head = cut > indent || window.first > 0 ? "…" : "";
  const tail = window.end < cells.length || cut + near.length < line.length ? "…" : "";
  const text = `${head}${shown.map((cell) => cell.shown).join("")}${tail}`;
  const carets = "^".repeat(Math.max(1, columnsOf(marked)));
  return [text.trimEnd(), `${" ".repeat(head.length + columnsOf(before))}${carets}`];
}

/** Which cells are shown: as many as there is room for, from a little before the first marked one. */
function windowOf(
  cells: readonly Cell[],
  from: number,
): { readonly first: number; readonly end: number } {
  if (columnsOf(cells) <= WIDEST) return { first: 0, end: cells.length };
  const marked = cells.findIndex((cell) => cell.from >= from);
  const caret = marked < 0 ? cells.length : marked;
  const first = caret - roomFor(cells.slice(0, caret).reverse(), LEAD);
  return { first, end: first + roomFor(cells.slice(first), WIDEST) };
}

/** How many of the first cells there is room for. */
function roomFor(cells: readonly Cell[], columns: number): number {
  let left = columns;
  const over = cells.findIndex((cell) => {
    left -= columnsOf([cell]);
    return left < 0;
  });
  return over < 0 ? cells.length : over;
}

/** How many columns cells take in print: none for a mark over a letter, two for a character of East Asia or a picture. */
function columnsOf(cells: readonly Cell[]): number {
  const characters = cells.flatMap(({ shown }) => [...shown]);
  return characters.reduce((sum, character) => sum + widthOf(character), 0);
}

function widthOf(character: string): number {
  return MARK.test(character) ? 0 : eastAsianWidth(character.codePointAt(0) ?? 0);
}
