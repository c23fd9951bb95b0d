/** The drawing of uses by month: a row for each layout, a bar for each month, hatched as far as it is drawn. */
import { sayUsesChart } from "../../issue/words/uses-words.ts";
import { lineData, rectData } from "../geometry/path-data.ts";
import type { Mark, Scene, TextMark } from "../scene.ts";
import { BASELINE } from "../text-width.ts";
import { hatchData } from "./counted-parts-scene.ts";

interface Count {
  readonly planned: number;
  readonly drawn: number;
}

export interface UsesChart {
  readonly id: string;
  readonly title: string;
  /** As they stand below the bars; a year stands below its first month. */
  readonly months: readonly {
    readonly name: string;
    readonly letter: string;
    readonly year: number;
  }[];
  readonly layouts: readonly (Count & {
    readonly title: string;
    /** One for each month. */
    readonly byMonth: readonly Count[];
  })[];
}

/** In millimetres. All charts are as wide, so that their letters are as large. */
const WIDTH = 100;
const MOST_MONTH = 12;
const ROW = { height: 20, bars: 9, foot: 2.5 };
const TITLE = 4;
const NUMBER = 3;
const MONTH = 3.4;
const FOOT = { month: 4.6, year: 9 };
/** A month that is narrower has a letter alone. */
const NAME_ROOM = 8;
const EDGE = 0.5;

/** 0, 0 is the top left corner. */
export function usesScene({ id, title, months, layouts }: UsesChart): Scene {
  const step = Math.min(MOST_MONTH, (WIDTH - 2 * EDGE) / Math.max(1, months.length));
  const most = Math.max(1, ...layouts.flatMap(({ byMonth }) => byMonth.map((one) => one.planned)));
  const chart = { step, most, end: EDGE + step * months.length };
  const foot = layouts.length * ROW.height;
  return {
    id,
    title,
    description: sayUsesChart(layouts),
    frame: { x: 0, y: 0, width: WIDTH, height: foot + FOOT.year + 1 },
    marks: [
      ...layouts.flatMap((layout, index) => rowMarks(layout, index * ROW.height, chart)),
      ...monthTexts(months, foot, step),
    ],
  };
}

interface Chart {
  /** The width of a month. */
  readonly step: number;
  /** The uses of the highest bar. */
  readonly most: number;
  readonly end: number;
}

function rowMarks(
  { title, byMonth }: UsesChart["layouts"][number],
  top: number,
  { step, most, end }: Chart,
): readonly Mark[] {
  const foot = top + ROW.height - ROW.foot;
  const wide = step * 0.7;
  const bars = byMonth.map(({ planned, drawn }, index) => {
    const x = EDGE + step * index + (step - wide) / 2;
    const highOf = (count: number) => (count / most) * ROW.bars;
    return { x, planned, high: highOf(planned), drawn: highOf(drawn) };
  });
  const boxes = bars.filter(({ planned }) => planned > 0);
  const inked = bars.filter(({ drawn }) => drawn > 0);
  return [
    text("label", title, { x: EDGE, y: top + TITLE * 0.9, size: TITLE, anchor: "start" }),
    { kind: "path", role: "tick", d: lineData(EDGE, foot, end, foot) },
    ...path(
      "fill",
      inked.map(({ x, drawn }) => hatchData({ x, y: foot - drawn, width: wide, height: drawn })),
    ),
    ...path(
      "edge-fine",
      boxes.map(({ x, high }) => rectData(x, foot - high, wide, high)),
    ),
    ...boxes.map(({ x, planned, high }) =>
      text("count", `${planned}`, {
        x: x + wide / 2,
        y: foot - high - 0.7,
        size: Math.min(NUMBER, step * 0.6),
        anchor: "middle",
      }),
    ),
  ];
}

function monthTexts(months: UsesChart["months"], top: number, step: number): readonly TextMark[] {
  return months.flatMap(({ name, letter, year }, index) => {
    const x = EDGE + step * (index + 0.5);
    const size = Math.min(MONTH, step * 0.8);
    const short = step < NAME_ROOM ? letter : name;
    const month = text("count", short, { x, y: top + FOOT.month - 1, size, anchor: "middle" });
    if (months[index - 1]?.year === year) return [month];
    const at = { x: EDGE + step * index, y: top + FOOT.year - MONTH * BASELINE, size: MONTH };
    return [month, text("count", `${year}`, { ...at, anchor: "start" })];
  });
}

function text(
  role: TextMark["role"],
  words: string,
  place: Pick<TextMark, "x" | "y" | "size" | "anchor">,
): TextMark {
  return { kind: "text", role, text: words, ...place };
}

function path(role: "fill" | "edge-fine", data: readonly string[]): readonly Mark[] {
  return data.length > 0 ? [{ kind: "path", role, d: data.join("") }] : [];
}
