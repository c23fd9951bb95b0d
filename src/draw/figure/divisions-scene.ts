/** The drawing of a division table: equal parts of one length with one gap, a bar for each count. */
import { type EqualParts, equalParts, TABLE_COUNTS } from "../../divide/division-table.ts";
import { sayEvenDivisions } from "../../issue/words/say-figure.ts";
import { lineData, rectData } from "../geometry/path-data.ts";
import { sheetMark } from "../page/paper-marks.ts";
import type { Mark, PathMark, Scene, TextMark } from "../scene.ts";
import { ROLE_STYLES } from "../style/role-style.ts";
import { BASELINE } from "../text-width.ts";

export interface Divisions {
  readonly id: string;
  readonly title: string;
  /** The length that is divided, in steps. */
  readonly steps: number;
  readonly gap: number;
}

/** In millimetres; the length is drawn as wide as the bars, however many steps it has. */
const ROW = { apart: 5.4, height: 3.4 };
const BARS = { left: 7, width: 45 };
const COUNT = { right: 5, size: 3.7 };
const PART = { left: 53.6 };
const WIDTH = 61;
const HEIGHT = TABLE_COUNTS.length * ROW.apart + 1;
const END = 0.9;
/** Half a pen inside of the frame, which would cut its lines at the head and the foot in two. */
const SHEET = {
  x: BARS.left,
  y: ROLE_STYLES.paper.width / 2,
  width: BARS.width,
  height: HEIGHT - ROLE_STYLES.paper.width,
};

/** Counts stand at the left, the steps of a part at the right; bars that leave nothing over are drawn boldly. */
export function divisionsScene({ id, title, steps, gap }: Divisions): Scene {
  const rows = TABLE_COUNTS.flatMap((count) => {
    const parts = equalParts(steps, count, gap);
    return parts ? [{ ...parts, top: 1 + (count - 1) * ROW.apart }] : [];
  });
  const even = rows.filter(({ leftover }) => leftover === 0);
  const uneven = rows.filter(({ leftover }) => leftover > 0);
  const scale = BARS.width / steps;
  return {
    id,
    title,
    description: sayEvenDivisions(even),
    frame: { x: 0, y: 0, width: WIDTH, height: HEIGHT },
    marks: [
      sheetMark("paper", SHEET),
      ...pathOf("dimension", uneven, (row) => restData(row, scale)),
      ...pathOf("edge-fine", uneven, (row) => partsData(row, scale)),
      ...pathOf("edge", even, (row) => partsData(row, scale)),
      ...TABLE_COUNTS.map((count) => countText(count)),
      ...uneven.map((row) => partText("count", row)),
      ...even.map((row) => partText("total", row)),
    ],
  };
}

interface Row extends EqualParts {
  readonly top: number;
}

function pathOf(
  role: PathMark["role"],
  rows: readonly Row[],
  dataOf: (row: Row) => string,
): readonly Mark[] {
  return rows.length > 0 ? [{ kind: "path", role, d: rows.map(dataOf).join("") }] : [];
}

function partsData({ count, part, gap, top }: Row, scale: number): string {
  return Array.from({ length: count }, (_, index) =>
    rectData(BARS.left + index * (part + gap) * scale, top, part * scale, ROW.height),
  ).join("");
}

/** What is left over: a line to the end of the length, closed there. */
function restData({ leftover, top }: Row, scale: number): string {
  const end = BARS.left + BARS.width;
  const y = top + ROW.height / 2;
  return lineData(end - leftover * scale, y, end, y) + lineData(end, y - END, end, y + END);
}

function countText(count: number): TextMark {
  const y = baseline(1 + (count - 1) * ROW.apart);
  const text = String(count);
  return { kind: "text", role: "count", x: COUNT.right, y, size: COUNT.size, anchor: "end", text };
}

function partText(role: "count" | "total", { part, top }: Row): TextMark {
  const y = baseline(top);
  const text = String(part);
  return { kind: "text", role, x: PART.left, y, size: COUNT.size, anchor: "start", text };
}

function baseline(top: number): number {
  return top + ROW.height / 2 + COUNT.size * BASELINE;
}
