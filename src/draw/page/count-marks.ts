/** The counts beside the paper: a tick for every step, and numbers where they tell something. */
import { type Middle, middlesOf } from "../../measure/grid-axis.ts";
import { lineData } from "../geometry/path-data.ts";
import type { Mark, TextMark } from "../scene.ts";
import { BASELINE } from "../text-width.ts";
import { BAND, type BandSide, bandPoint } from "./band.ts";
import { type CountedPosition, countedPositions } from "./counted-positions.ts";

export interface Counts {
  readonly middle: Middle;
  /** Positions that want a number and a longer tick, the most wanted first. */
  readonly positions: readonly number[];
}

const ASIDE = 0.7;

/** Ticks in one path, then the numbers, all of one kind after another. */
export function countMarks(side: BandSide, counts: Counts): readonly Mark[] {
  const lines = side.place.lines[side.axis];
  const size = numberSize(side);
  const numbers = countedPositions({
    axis: side.axis,
    lines,
    middles: middlesOf(lines.length - 1, counts.middle),
    others: counts.positions,
    size,
  });
  const ofRole = (role: CountedPosition["role"]) =>
    numbers.filter((one) => one.role === role).map((one) => numberMark(side, one, size));
  return [
    { kind: "path", role: "tick", d: tickData(side, new Set(counts.positions)) },
    ...ofRole("count"),
    ...ofRole("total"),
    ...ofRole("middle"),
  ];
}

/** Numbers shrink with a fine grid, so that neighbours can both be named. */
function numberSize({ place, axis }: BandSide): number {
  return Math.min(BAND.numberSize, Math.max(1.9, 0.5 * place.pitch[axis]));
}

function tickData(side: BandSide, edges: ReadonlySet<number>): string {
  return side.place.lines[side.axis]
    .map((along, position) => {
      const start = bandPoint(side, along, BAND.tickStart);
      const out = edges.has(position) ? BAND.edgeTickEnd : BAND.tickEnd;
      const end = bandPoint(side, along, out);
      return lineData(start.x, start.y, end.x, end.y);
    })
    .join("");
}

/** A number outside of its tick. */
function numberMark(side: BandSide, { position, role }: CountedPosition, size: number): TextMark {
  const along = side.place.lines[side.axis][position] ?? 0;
  const { x, y } = bandPoint(side, along, BAND.number);
  const text = { kind: "text", role, size, text: String(position) } as const;
  if (side.axis === "across") return { ...text, y, ...acrossPlace(side, x) };
  const anchor = side.end === "start" ? "end" : "start";
  return { ...text, x, y: y + size * BASELINE, anchor };
}

/** At the gutter of a spread, the last number of one page and the first of the next step aside. */
function acrossPlace({ place, gutter }: BandSide, x: number): Pick<TextMark, "x" | "anchor"> {
  if (x !== gutter) return { x, anchor: "middle" };
  return place.paper.x < gutter
    ? { x: x - ASIDE, anchor: "end" }
    : { x: x + ASIDE, anchor: "start" };
}
