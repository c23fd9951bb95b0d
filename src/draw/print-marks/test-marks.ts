/** What is printed on the test sheet for printers: dots, bars of 100 mm, and marks around the place for a bank card. */
import { sayBarNames, TEST_SHEET } from "../../issue/words/sheet-words.ts";
import { BANK_CARD } from "../../measure/bank-card.ts";
import {
  CARD_PLACE,
  fromCardPlace,
  hasDot,
  SHEET_BARS,
  SHEET_DOTS,
  type SheetPoint,
} from "../../photo/test-sheet.ts";
import { dottedRow } from "../geometry/dotted-row.ts";
import { lineData } from "../geometry/path-data.ts";
import type { Mark } from "../scene.ts";
import { plainBars } from "./scale-bars.ts";

/** The side of the square from its first dot to its last, in millimetres. */
export const TEST_SIDE = (SHEET_DOTS.count - 1) * SHEET_DOTS.pitch;

/** The corner marks keep so far away from the card, and are so long. */
const CORNER = { away: 2.5, long: 6 };
const WORDS = 4;

/** The marks, with the first dot at 0, 0. */
export function testMarks(): readonly Mark[] {
  const middle = fromCardPlace({ x: 0, y: 0 });
  return [
    dots(),
    ...plainBars({ corner: SHEET_BARS.corner, names: sayBarNames(false) }),
    { kind: "path", role: "dimension", d: cornerData() },
    {
      ...{ kind: "text", role: "note", ...middle, size: WORDS, anchor: "middle" },
      ...{ text: TEST_SHEET.place, turn: CARD_PLACE.turn },
    },
  ];
}

function dots(): Mark {
  const { count, pitch } = SHEET_DOTS;
  const places = Array.from({ length: count }, (_, index) => index * pitch);
  const isShown = (x: number, y: number) => hasDot(x / pitch, y / pitch);
  const rows = places.map((y) =>
    dottedRow({ columns: places, y, end: TEST_SIDE + pitch }, isShown),
  );
  return { kind: "path", role: "sheet-dot", d: rows.join(""), dash: [0, pitch] };
}

/** Two lines at each corner of the place. */
function cornerData(): string {
  const [far, high] = [BANK_CARD.long / 2 + CORNER.away, BANK_CARD.short / 2 + CORNER.away];
  const line = (from: SheetPoint, to: SheetPoint) => {
    const [a, b] = [fromCardPlace(from), fromCardPlace(to)];
    return lineData(a.x, a.y, b.x, b.y);
  };
  return [-1, 1]
    .flatMap((right) =>
      [-1, 1].map((down) => {
        const corner = { x: right * far, y: down * high };
        const along = { ...corner, x: corner.x - right * CORNER.long };
        const across = { ...corner, y: corner.y - down * CORNER.long };
        return line(corner, along) + line(corner, across);
      }),
    )
    .join("");
}
