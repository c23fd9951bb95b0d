/** The chart for choosing a notebook: which lengths give whole halves, thirds and quarters, without gaps and with gaps of one. */
import { type EqualParts, equalParts } from "../../divide/division-table.ts";
import { EVEN_CHART_WORDS, sayEvenLengths } from "../../issue/words/say-figure.ts";
import { lineData, rectData } from "../geometry/path-data.ts";
import { sheetMark } from "../page/paper-marks.ts";
import type { Mark, Scene, TextMark } from "../scene.ts";
import { BASELINE } from "../text-width.ts";

const FEWEST = 20;
const MOST = 40;
const LENGTHS = Array.from({ length: MOST - FEWEST + 1 }, (_, index) => FEWEST + index);

/** The columns: how many parts, and the gap between them. */
const DIVISIONS = [2, 3, 4].flatMap((count) => [0, 1].map((gap) => ({ count, gap })));

/** In millimetres. */
const ROW = 5;
const HEAD = 12;
const NUMBERS = 12;
const COLUMN = 16;
const CELL = { width: 9, height: 3.8 };
const SIZE = { number: 3.2, words: 2.9 };
const WIDTH = NUMBERS + DIVISIONS.length * COLUMN;
const HEIGHT = HEAD + LENGTHS.length * ROW + 1;

/** A row for each length; a framed number is what each part gets where nothing is left over. */
export function evenChartScene(id: string): Scene {
  const cells = LENGTHS.flatMap((length, row) =>
    DIVISIONS.flatMap(({ count, gap }, column): readonly Cell[] => {
      const parts = equalParts(length, count, gap);
      return parts?.leftover === 0 ? [{ ...parts, length, row, column }] : [];
    }),
  );
  return {
    id,
    title: EVEN_CHART_WORDS.title(FEWEST, MOST),
    description: DIVISIONS.map(({ count, gap }) => {
      const even = cells.filter((cell) => cell.count === count && cell.gap === gap);
      return sayEvenLengths(
        { count, gap },
        even.map(({ length }) => length),
      );
    }).join(" "),
    frame: { x: 0, y: 0, width: WIDTH, height: HEIGHT },
    marks: [
      sheetMark("paper", { x: 0, y: 0, width: WIDTH, height: HEIGHT }),
      { kind: "path", role: "fill", d: LENGTHS.map((_, row) => rule(row)).join("") },
      ...DIVISIONS.flatMap(headMarks),
      ...LENGTHS.map((length, row) => numberText("count", NUMBERS / 2, row, length)),
      { kind: "path", role: "edge-fine", d: cells.map(cellData).join("") },
      ...cells.map(({ part, row, column }) => numberText("total", centre(column), row, part)),
    ],
  };
}

interface Cell extends EqualParts {
  readonly length: number;
  readonly row: number;
  readonly column: number;
}

const centre = (column: number) => NUMBERS + (column + 0.5) * COLUMN;

function rule(row: number): string {
  const y = HEAD + row * ROW;
  return lineData(2, y, WIDTH - 2, y);
}

/** The parts over both of their columns, and the gap over each. */
function headMarks(
  { count, gap }: { count: number; gap: number },
  column: number,
): readonly Mark[] {
  const words = (text: string, x: number, y: number, role: "heading" | "label"): TextMark => ({
    kind: "text",
    role,
    x,
    y,
    size: SIZE.words,
    anchor: "middle",
    text,
  });
  const over = words(EVEN_CHART_WORDS.parts(count), centre(column + 0.5), 5, "heading");
  const below = words(EVEN_CHART_WORDS.gap(gap), centre(column), 10, "label");
  return gap === 0 ? [over, below] : [below];
}

function cellData({ row, column }: Cell): string {
  const { width, height } = CELL;
  return rectData(centre(column) - width / 2, middleOf(row) - height / 2, width, height);
}

const middleOf = (row: number) => HEAD + (row + 0.5) * ROW;

function numberText(role: "count" | "total", x: number, row: number, value: number): TextMark {
  const y = middleOf(row) + SIZE.number * BASELINE;
  return { kind: "text", role, x, y, size: SIZE.number, anchor: "middle", text: String(value) };
}
