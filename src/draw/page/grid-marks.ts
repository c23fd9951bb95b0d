/** The notebook's own ruling: dots, squares or lines, as few paths as they need. */
import { AXES, otherAxis } from "../../measure/axis.ts";
import type { Ruling } from "../../notebook/notebook.ts";
import { dottedRow } from "../geometry/dotted-row.ts";
import { lineAlong } from "../geometry/on-axis.ts";
import type { PagePlace } from "../geometry/page-place.ts";
import { intervalAlong, isInside, type Rect } from "../geometry/rect.ts";
import type { PathMark } from "../scene.ts";

/** The ruling of one page. Dots keep clear of labels; printed lines run through below them. */
export function gridMarks(
  place: PagePlace,
  ruling: Ruling,
  labels: readonly Rect[] = [],
): readonly PathMark[] {
  if (ruling === "dots") return [dotGrid(place, labels)];
  if (ruling === "squares") return [{ kind: "path", role: "grid-line", d: squareGrid(place) }];
  return [{ kind: "path", role: "grid-line", d: writingLines(place) + lineTicks(place) }];
}

/** One dotted line a row, broken where a label stands. */
function dotGrid({ dots, pitch, paper }: PagePlace, labels: readonly Rect[]): PathMark {
  const end = intervalAlong(paper, "across").to;
  const rows = dots.down.map((y) => {
    const inTheWay = labels.filter((label) => y >= label.y && y <= label.y + label.height);
    const isShown = (x: number) => !inTheWay.some((label) => isInside(label, x, y));
    return dottedRow({ columns: dots.across, y, end }, isShown);
  });
  return { kind: "path", role: "grid", d: rows.join(""), dash: [0, pitch.across] };
}

/** Lines from the first to the last dot, both ways. */
function squareGrid({ dots }: PagePlace): string {
  return AXES.map((axis) => {
    const interval = { from: dots[axis][0] ?? 0, to: dots[axis].at(-1) ?? 0 };
    return dots[otherAxis(axis)].map((aside) => lineAlong(axis, interval, aside)).join("");
  }).join("");
}

/** Lines from edge to edge of the paper. */
function writingLines({ dots, paper }: PagePlace): string {
  return dots.down.map((y) => lineAlong("across", intervalAlong(paper, "across"), y)).join("");
}

/** Columns of a lined page are counted on ticks along its first and last line. */
function lineTicks({ dots, paper }: PagePlace): string {
  const half = 0.8;
  const { from, to } = intervalAlong(paper, "down");
  return [dots.down[0] ?? from, dots.down.at(-1) ?? to]
    .map((y) => ({ from: Math.max(from, y - half), to: Math.min(to, y + half) }))
    .flatMap((tick) => dots.across.map((x) => lineAlong("down", tick, x)))
    .join("");
}
