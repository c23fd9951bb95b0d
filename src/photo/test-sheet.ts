/** Where things lie on the test sheet for printers: the dots, the two bars and the place for a bank card. */
import { BANK_CARD } from "../measure/bank-card.ts";

/** A place of the sheet in millimetres of its drawing, from its first dot: right and down. */
export interface SheetPoint {
  readonly x: number;
  readonly y: number;
}

/** A square of dots, so many each way. */
export const SHEET_DOTS = { count: 29, pitch: 5, size: 1.2 } as const;

/** Two bars meet in a corner: one runs to the right from there, one upwards. */
export const SHEET_BARS = { corner: { x: 7.5, y: 132.5 }, length: 100 } as const;

/**
 * The card lies askew: each of its sides then measures the sheet both ways, so a side that is seen in a wrong place
 * does not pass for a stretched sheet. `clear` is bare around it, so that its edges lie on nothing but paper.
 */
export const CARD_PLACE = { middle: { x: 74, y: 66.5 }, turn: 45, clear: 7 } as const;

/** Dots from the first to the last of these rows and columns are left out: so a sheet in a mirror looks otherwise. */
const NOTCH = { first: 1, last: 4 } as const;

/** How deep the ticks and words of the bars are, with some room. */
const BAR_ROOM = 5.5;

/** A point of the sheet as it lies to the card's place: along the card's long side, and across it. */
export function toCardPlace({ x, y }: SheetPoint): SheetPoint {
  const [cos, sin] = turnOf();
  const [dx, dy] = [x - CARD_PLACE.middle.x, y - CARD_PLACE.middle.y];
  return { x: cos * dx + sin * dy, y: -sin * dx + cos * dy };
}

/** The same back. */
export function fromCardPlace({ x, y }: SheetPoint): SheetPoint {
  const [cos, sin] = turnOf();
  const { middle } = CARD_PLACE;
  return { x: middle.x + cos * x - sin * y, y: middle.y + sin * x + cos * y };
}

function turnOf(): readonly [number, number] {
  const angle = (CARD_PLACE.turn * Math.PI) / 180;
  return [Math.cos(angle), Math.sin(angle)];
}

/** Is there a dot at this place of the square, both counted from 0? */
export function hasDot(column: number, row: number): boolean {
  const { count, pitch } = SHEET_DOTS;
  if (column < 0 || row < 0 || column >= count || row >= count) return false;
  const at = { x: column * pitch, y: row * pitch };
  const isNotch = [column, row].every((one) => one >= NOTCH.first && one <= NOTCH.last);
  return !isNotch && !isCardPlace(at) && !isBarPlace(at);
}

function isCardPlace(at: SheetPoint): boolean {
  const { x, y } = toCardPlace(at);
  const { clear } = CARD_PLACE;
  return Math.abs(x) < BANK_CARD.long / 2 + clear && Math.abs(y) < BANK_CARD.short / 2 + clear;
}

function isBarPlace({ x, y }: SheetPoint): boolean {
  const { corner, length } = SHEET_BARS;
  const [right, up] = [x - corner.x, corner.y - y];
  const isBeside = (along: number, inward: number) =>
    along > 0 && along < length + SHEET_DOTS.pitch && inward > 0 && inward < BAR_ROOM;
  return isBeside(right, up) || isBeside(up, right);
}
