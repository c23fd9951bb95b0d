/** The card's place on the test sheet by its sides, and where it is seen in a photo. */
import { BANK_CARD } from "../measure/bank-card.ts";
import type { PhotoPoint } from "./grey.ts";
import { type PlaneView, seenAt } from "./plane-view.ts";
import { fromCardPlace, SHEET_DOTS, type SheetPoint } from "./test-sheet.ts";

/** In the order of the card's place: along its long side, then across. */
export const CARD_SIDES = ["top", "right", "bottom", "left"] as const;
export type CardSide = (typeof CARD_SIDES)[number];

/** Corners are left out on both sides: they are round, and the card may lie a little off. */
const CORNER = 10;

export function halfLength(side: CardSide): number {
  return (side === "top" || side === "bottom" ? BANK_CARD.long : BANK_CARD.short) / 2;
}

/** So far both ways from the middle of a side its line is looked at, in millimetres. */
export function edgeReach(side: CardSide): number {
  return halfLength(side) - CORNER;
}

/** The point of the sheet so far along a side of the place, from left to right or from top to bottom, and so far outside. */
export function besideCard(side: CardSide, along: number, out: number): SheetPoint {
  const [x, y] = [BANK_CARD.long / 2 + out, BANK_CARD.short / 2 + out];
  switch (side) {
    case "top":
      return fromCardPlace({ x: along, y: -y });
    case "bottom":
      return fromCardPlace({ x: along, y });
    case "right":
      return fromCardPlace({ x, y: along });
    case "left":
      return fromCardPlace({ x: -x, y: along });
  }
}

/** Where a point of the sheet is seen. */
export function seenOnSheet(view: PlaneView, { x, y }: SheetPoint): PhotoPoint {
  return seenAt(view, { across: x / SHEET_DOTS.pitch, down: y / SHEET_DOTS.pitch });
}

/** How many pixels a millimetre has around the card's place. */
export function pixelsPerMm(view: PlaneView): number {
  const [a, b] = [-5, 5].map((x) => seenOnSheet(view, fromCardPlace({ x, y: 0 })));
  const [c, d] = [-5, 5].map((y) => seenOnSheet(view, fromCardPlace({ x: 0, y })));
  const far = (one?: PhotoPoint, other?: PhotoPoint) =>
    Math.hypot((one?.x ?? 0) - (other?.x ?? 0), (one?.y ?? 0) - (other?.y ?? 0));
  return Math.min(far(a, b), far(c, d)) / 10;
}
