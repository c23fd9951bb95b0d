/** Where the first dot lies: a dimension line from the paper's edge along each axis, with its millimetres. */
import { AXES, type Axis, otherAxis } from "../../measure/axis.ts";
import { lineAlong, pointAlong } from "../geometry/on-axis.ts";
import type { PagePlace } from "../geometry/page-place.ts";
import { formatNumber } from "../geometry/path-data.ts";
import { intervalAlong } from "../geometry/rect.ts";
import type { Mark, PathMark, TextMark } from "../scene.ts";
import { BASELINE, CAPITAL } from "../text-width.ts";

const END = 0.9;
const SIZE = 2.5;
const AIR = 0.9;

/** Both dimensions: the lines in one path, then their texts. They cross the paper between its dots. */
export function dimensionMarks(place: PagePlace): readonly Mark[] {
  const lines: PathMark = {
    kind: "path",
    role: "dimension",
    d: AXES.map((axis) => dimensionData(place, axis)).join(""),
  };
  return [lines, ...AXES.map((axis) => dimensionText(place, axis))];
}

/** Between the second and the third dot of the other axis, or between its two where there are no more. */
function asideOf({ dots, pitch }: PagePlace, axis: Axis): number {
  const aside = otherAxis(axis);
  const before = dots[aside].length > 2 ? dots[aside][1] : dots[aside][0];
  return (before ?? 0) + pitch[aside] / 2;
}

/** The line and its two ends, as draughtsmen's strokes. */
function dimensionData(place: PagePlace, axis: Axis): string {
  const aside = asideOf(place, axis);
  const { from } = intervalAlong(place.paper, axis);
  const to = place.dots[axis][0] ?? from;
  const end = (along: number) =>
    lineAlong(otherAxis(axis), { from: aside - END, to: aside + END }, along);
  return lineAlong(axis, { from, to }, aside) + end(from) + end(to);
}

/** Behind the first dot, so that it never has to fit into a narrow edge. */
function dimensionText(place: PagePlace, axis: Axis): TextMark {
  const { from } = intervalAlong(place.paper, axis);
  const first = place.dots[axis][0] ?? from;
  const text = `${formatNumber(first - from)} mm`;
  const { x, y } = pointAlong(axis, first, asideOf(place, axis));
  const mark = { kind: "text", role: "dimension", size: SIZE, text } as const;
  if (axis === "across") return { ...mark, anchor: "start", x: x + AIR, y: y + SIZE * BASELINE };
  return { ...mark, anchor: "middle", x, y: y + AIR + SIZE * CAPITAL };
}
