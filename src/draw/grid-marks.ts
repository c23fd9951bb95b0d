/** The notebook's own ruling: dots, squares or lines, as few paths as they need. */
import { AXES, otherAxis } from "../measure/axis.ts";
import type { Ruling } from "../notebook/notebook.ts";
import { lineAlong } from "./along.ts";
import type { PagePlace } from "./page-place.ts";
import { stretchAlong } from "./rect.ts";
import type { PathMark } from "./scene.ts";

/** The ruling of one page. */
export function gridMarks(place: PagePlace, ruling: Ruling): readonly PathMark[] {
  if (ruling === "dots") return [dotGrid(place)];
  if (ruling === "squares") return [{ kind: "path", role: "grid-line", d: squareGrid(place) }];
  return [{ kind: "path", role: "grid-line", d: writingLines(place) + lineTicks(place) }];
}

/**
 * One dotted line a row: a dash of no length with a round cap is a dot. Each line runs on for a third
 * of a pitch, for a dash counts from the line's start and the last dot could be lost to rounding.
 */
function dotGrid({ dots, pitch, paper }: PagePlace): PathMark {
  const tail = (dots.across.at(-1) ?? 0) + pitch.across / 3;
  const edge = stretchAlong(paper, "across").to;
  const stretch = { from: dots.across[0] ?? 0, to: Math.min(tail, edge) };
  const d = dots.down.map((y) => lineAlong("across", stretch, y)).join("");
  return { kind: "path", role: "grid", d, dash: [0, pitch.across] };
}

/** Lines from the first to the last dot, both ways. */
function squareGrid({ dots }: PagePlace): string {
  return AXES.map((axis) => {
    const stretch = { from: dots[axis][0] ?? 0, to: dots[axis].at(-1) ?? 0 };
    return dots[otherAxis(axis)].map((aside) => lineAlong(axis, stretch, aside)).join("");
  }).join("");
}

/** Lines from edge to edge of the paper. */
function writingLines({ dots, paper }: PagePlace): string {
  return dots.down.map((y) => lineAlong("across", stretchAlong(paper, "across"), y)).join("");
}

/** Columns of a lined page are counted on ticks along its first and last line. */
function lineTicks({ dots, paper }: PagePlace): string {
  const half = 0.8;
  const { from, to } = stretchAlong(paper, "down");
  return [dots.down[0] ?? from, dots.down.at(-1) ?? to]
    .map((y) => ({ from: Math.max(from, y - half), to: Math.min(to, y + half) }))
    .flatMap((tick) => dots.across.map((x) => lineAlong("down", tick, x)))
    .join("");
}
