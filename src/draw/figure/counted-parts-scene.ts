/** The drawing of one way of counting: the paper's width with its dots, and what a half, a third and a quarter of it are. */
import { equalParts } from "../../divide/division-table.ts";
import { sayDivisions } from "../../issue/words/say-figure.ts";
import {
  dotLength,
  type GridAxis,
  type Middle,
  middlesOf,
  positionLength,
  usableSteps,
} from "../../measure/grid-axis.ts";
import { dottedRow } from "../geometry/dotted-row.ts";
import { lineData, polygonData, rectData } from "../geometry/path-data.ts";
import type { Rect } from "../geometry/rect.ts";
import { sheetMark } from "../page/paper-marks.ts";
import type { Mark, PathMark, Scene, TextMark } from "../scene.ts";
import { BASELINE } from "../text-width.ts";

export interface CountedParts {
  readonly id: string;
  readonly title: string;
  readonly axis: GridAxis;
  readonly middle: Middle;
}

/** The divisions that are drawn, one bar each. */
const PART_COUNTS = [2, 3, 4];

/** The paper is drawn this wide, whatever it is: such drawings stand side by side. In millimetres, as all below. */
const WIDTH = 100;
const PAPER = { top: 4, dots: 3 };
const BARS = { top: 10, height: 8, apart: 10 };
const ASIDE = 1.5;
/** Half of the broadest line, which must not be cut off. */
const LINE = 0.25;
const HEIGHT = BARS.top + PART_COUNTS.length * BARS.apart + LINE;
const NUMBER = 4.6;
const WEDGE = { half: 1.4, top: 0.4, tip: 3.2 };

/** Along the axis from left to right, across or down alike; 0, 0 is above the paper's first edge. */
export function countedPartsScene({ id, title, axis, middle }: CountedParts): Scene {
  const scale = WIDTH / axis.paper;
  const at = (position: number) => positionLength(axis, position) * scale;
  const steps = usableSteps(axis);
  const dots = Array.from({ length: axis.dots }, (_, index) => dotLength(axis, index + 1) * scale);
  const bars = PART_COUNTS.flatMap((count, row) => {
    const parts = equalParts(steps, count, 0);
    return parts ? [{ ...parts, top: BARS.top + row * BARS.apart }] : [];
  });
  return {
    id,
    title,
    description: sayDivisions(steps, bars),
    frame: { x: -ASIDE, y: 0, width: WIDTH + 2 * ASIDE, height: HEIGHT },
    marks: [
      sheetMark("paper", { x: 0, y: PAPER.top, width: WIDTH, height: HEIGHT - PAPER.top - LINE }),
      dotMark(dots, axis.pitch * scale),
      { kind: "path", role: "tick", d: [0, steps].map((end) => endData(at(end))).join("") },
      ...pathsOf(bars, at, steps),
      ...bars.flatMap((bar) => numbersOf(bar, at)),
      { kind: "path", role: "middle", d: middlesOf(steps, middle).map(at).map(wedgeData).join("") },
    ],
  };
}

interface Bar {
  readonly count: number;
  readonly part: number;
  readonly leftover: number;
  readonly top: number;
}

/** Millimetres in the drawing of a position. */
type MmOf = (position: number) => number;

function dotMark(dots: readonly number[], pitch: number): PathMark {
  const y = PAPER.top + PAPER.dots;
  const d = dottedRow({ columns: dots, y, end: WIDTH }, () => true);
  return { kind: "path", role: "fill-dots", d, dash: [0, pitch] };
}

/** Where counting begins or ends, from the paper down through the bars. */
function endData(x: number): string {
  return lineData(x, PAPER.top, x, HEIGHT - LINE);
}

/** The parts in one path, what is left over in another. */
function pathsOf(bars: readonly Bar[], at: MmOf, steps: number): readonly Mark[] {
  const parts = bars.flatMap(({ count, part, top }) =>
    Array.from({ length: count }, (_, index) => {
      const [from, to] = [at(index * part), at((index + 1) * part)];
      return rectData(from, top, to - from, BARS.height);
    }),
  );
  const rest = bars
    .filter(({ leftover }) => leftover > 0)
    .map(({ count, part, top }) => {
      const from = at(count * part);
      return hatchData({ x: from, y: top, width: at(steps) - from, height: BARS.height });
    });
  return [
    ...(rest.length > 0 ? [{ kind: "path", role: "fill", d: rest.join("") } as const] : []),
    { kind: "path", role: "edge", d: parts.join("") },
  ];
}

/** Each part's steps. */
function numbersOf({ count, part, top }: Bar, at: MmOf): readonly TextMark[] {
  return Array.from({ length: count }, (_, index) => ({
    kind: "text",
    role: "label",
    x: (at(index * part) + at((index + 1) * part)) / 2,
    y: top + BARS.height / 2 + NUMBER * BASELINE,
    size: NUMBER,
    anchor: "middle",
    text: String(part),
  }));
}

function wedgeData(x: number): string {
  const { half, top, tip } = WEDGE;
  return polygonData([
    [x, tip],
    [x - half, top],
    [x + half, top],
  ]);
}

/** From one line to the next, in millimetres. */
const APART = 1.25;

/** Lines from the top right down to the left, each cut off at the sides. */
export function hatchData({ x, y, width, height }: Rect): string {
  const count = Math.ceil((width + height) / APART);
  return Array.from({ length: count }, (_, index) => (index + 0.5) * APART)
    .filter((reach) => reach < width + height)
    .map((reach) => {
      const [left, right] = [Math.max(0, reach - height), Math.min(width, reach)];
      return lineData(x + left, y + reach - left, x + right, y + reach - right);
    })
    .join("");
}
