/** Whether the paper can be right: dots that begin near one edge and end far from the other belong to smaller paper. */
import type { PaperDoubt } from "../issue/facts/paper-doubt.ts";
import { AXES, type Axis } from "../measure/axis.ts";
import { dotLength, type GridAxis } from "../measure/grid-axis.ts";
import { fromMm, type Length, length, toMm } from "../measure/length.ts";
import type { Notebook } from "./notebook.ts";
import { PAPER_NAMES, PAPERS } from "./paper.ts";

/** In pitches: as much more at the far edge than at the near one is no printer's whim (common practice, no source). */
const MUCH_MORE = 2;

/** The doubt, with the named papers on which the dots lie evenly, the evenest first; nothing where there is none. */
export function doubtPaper({ axes }: Notebook): PaperDoubt | undefined {
  const [axis] = AXES.filter((each) => unevenness(axes[each]) > MUCH_MORE * axes[each].pitch);
  if (!axis) return undefined;
  const { firstDot } = axes[axis];
  return {
    axis,
    nearMm: toMm(firstDot),
    farMm: toMm(lastMargin(axes[axis])),
    papers: papersFor(axes),
  };
}

type Axes = Readonly<Record<Axis, GridAxis>>;

function papersFor(axes: Axes): PaperDoubt["papers"] {
  return PAPER_NAMES.map((name) => {
    const [width, height] = PAPERS[name];
    const across = { ...axes.across, paper: fromMm(width) };
    const down = { ...axes.down, paper: fromMm(height) };
    return { name, width, height, off: offPage(across) + offPage(down) };
  })
    .filter(({ off }) => off < Number.POSITIVE_INFINITY)
    .sort((one, other) => one.off - other.off)
    .map(({ name, width, height }) => ({ name, width, height }));
}

/** How unevenly the dots would lie; without bound where they would not fit, or the doubt would stay. */
function offPage(grid: GridAxis): number {
  const off = Math.abs(unevenness(grid));
  return lastMargin(grid) < 0 || off > MUCH_MORE * grid.pitch ? Number.POSITIVE_INFINITY : off;
}

function unevenness(grid: GridAxis): number {
  return lastMargin(grid) - grid.firstDot;
}

function lastMargin(grid: GridAxis): Length {
  return length(grid.paper - dotLength(grid, grid.dots));
}
