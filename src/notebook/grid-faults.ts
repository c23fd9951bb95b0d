/** Whether a grid lies on its paper and every step of it has a size. */
import type { GridFault } from "../issue/facts/grid-fault.ts";
import type { Axis } from "../measure/axis.ts";
import { dotLength, endsAtEdge, type GridAxis, startsAtEdge } from "../measure/grid-axis.ts";
import { length, toMm } from "../measure/length.ts";

/** What is wrong with one axis of a grid; none where it is all right. */
export function gridFaults(grid: GridAxis, axis: Axis): readonly GridFault[] {
  if (grid.firstDot >= grid.paper) {
    const mm = { firstMm: toMm(grid.firstDot), paperMm: toMm(grid.paper) };
    return [{ kind: "first-dot-beyond-paper", axis, ...mm }];
  }
  const beyond = dotsBeyond(grid, axis);
  if (beyond) return [beyond];
  const fault = { kind: "empty-edge-step", axis } as const;
  const faults: GridFault[] = [];
  if (startsAtEdge(grid) && grid.firstDot === 0) faults.push({ ...fault, end: "first" });
  if (endsAtEdge(grid) && dotLength(grid, grid.dots) === grid.paper)
    faults.push({ ...fault, end: "last" });
  return faults;
}

/** A first dot of less than nothing comes of a grid that is centred: its dots need more than the whole paper. */
function dotsBeyond(grid: GridAxis, axis: Axis): GridFault | undefined {
  const isCentred = grid.firstDot < 0;
  const has = length(isCentred ? grid.paper : grid.paper - grid.firstDot);
  const needs = length((grid.dots - 1) * grid.pitch);
  if (needs <= has) return undefined;
  // Centred dots that fill the paper would touch both edges; others may touch one that is not counted to.
  const staysOff = isCentred || endsAtEdge(grid);
  const fitting = staysOff ? Math.ceil(has / grid.pitch) : Math.floor(has / grid.pitch) + 1;
  const mm = { needsMm: toMm(needs), hasMm: toMm(has), pitchMm: toMm(grid.pitch) };
  return {
    kind: "dots-beyond-paper",
    axis,
    dots: grid.dots,
    ...mm,
    isCentred,
    fitting,
  };
}
