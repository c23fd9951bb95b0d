/** The drawing of the fencepost: a row of dots, and below it the steps that each way of counting finds between them. */
import { sayCounted, sayCountedTitle, sayWay } from "../../issue/words/say-figure.ts";
import type { GridAxis } from "../../measure/grid-axis.ts";
import { type Count, positionLength, usableSteps } from "../../measure/grid-axis.ts";
import { toMm } from "../../measure/length.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import { dottedRow } from "../geometry/dotted-row.ts";
import { lineData } from "../geometry/path-data.ts";
import { sheetMark } from "../page/paper-marks.ts";
import type { Mark, Scene, TextMark } from "../scene.ts";
import { slicePlace } from "./slice-place.ts";

export interface CountingDrawing {
  readonly id: string;
  readonly notebook: Notebook;
  /** The ways of counting, one row of steps each, with the words that stand over it. */
  readonly ways: readonly { readonly count: Count; readonly words: string }[];
}

/** In millimetres, from the top: the dots' numbers, the paper, and a row for each way. */
const DOT_NUMBER = { size: 2.9, y: 2.6 };
const PAPER = { y: 4, height: 5 };
const ROWS = { top: 13.6, apart: 14.4 };
/** From a row's own top: its words, its line with ticks at the positions, its numbers. */
const ROW = { words: 3, line: 5.6, tick: 1, numbers: 9.4 };
const SIZE = { words: 3.5, numbers: 2.9 };
const ASIDE = 3.2;

/** Along the columns; 0, 0 is the paper's edge above the dots. */
export function countingScene({ id, notebook, ways }: CountingDrawing): Scene {
  const { dots, pitch, paper } = slicePlace(notebook, "across");
  const y = PAPER.y + PAPER.height / 2;
  const row = dottedRow({ columns: dots.across, y, end: paper.width }, () => true);
  const height = ROWS.top + ways.length * ROWS.apart - (ROWS.apart - ROW.numbers) + 1.6;
  const found = ways.map(({ count, words }) => sayWay(words, stepsOf(notebook, count)));
  return {
    id,
    title: sayCountedTitle(dots.across.length),
    description: sayCounted(dots.across.length, notebook.title, found),
    frame: { x: -ASIDE, y: 0, width: paper.width + 2 * ASIDE, height },
    marks: [
      sheetMark("paper", { x: 0, y: PAPER.y, width: paper.width, height: PAPER.height }),
      { kind: "path", role: "fill-dots", d: row, dash: [0, pitch.across] },
      ...dots.across.map((x, index) => number("count", x, DOT_NUMBER.y, index + 1)),
      ...ways.flatMap(({ count, words }, index) =>
        wayMarks({ ...notebook.axes.across, count }, ROWS.top + index * ROWS.apart, words),
      ),
    ],
  };
}

function stepsOf({ axes }: Notebook, count: Count): number {
  return usableSteps({ ...axes.across, count });
}

/** The steps of one way: a line from the first position to the last, a tick at each, a number between two. */
function wayMarks(axis: GridAxis, top: number, words: string): readonly Mark[] {
  const steps = usableSteps(axis);
  const positions = Array.from({ length: steps + 1 }, (_, k) => toMm(positionLength(axis, k)));
  const [first = 0, last = 0] = [positions[0], positions.at(-1)];
  const line = top + ROW.line;
  const ticks = positions.map((x) => lineData(x, line - ROW.tick, x, line + ROW.tick));
  const numbers = positions
    .slice(1)
    .map((x, index) =>
      number(
        index + 1 === steps ? "total" : "count",
        (x + (positions[index] ?? 0)) / 2,
        top + ROW.numbers,
        index + 1,
      ),
    );
  return [
    {
      kind: "text",
      role: "label",
      x: first,
      y: top + ROW.words,
      size: SIZE.words,
      anchor: "start",
      text: sayWay(words, steps),
    },
    { kind: "path", role: "tick", d: [lineData(first, line, last, line), ...ticks].join("") },
    ...numbers,
  ];
}

function number(role: "count" | "total", x: number, y: number, value: number): TextMark {
  return { kind: "text", role, x, y, size: SIZE.numbers, anchor: "middle", text: String(value) };
}
