/** The boxes of a page as lines: one path for the fine ones, one for the strong ones. */
import { otherAxis } from "../../measure/axis.ts";
import { lineAlong } from "../geometry/on-axis.ts";
import type { PagePlace } from "../geometry/page-place.ts";
import { intervalAlong } from "../geometry/rect.ts";
import type { PathMark } from "../scene.ts";
import { ROLE_STYLES } from "../style/role-style.ts";
import type { EdgeLine, EdgeWeight } from "./box-edges.ts";

const ROLES = { fine: "edge-fine", strong: "edge" } as const;

/**
 * Fine lines first, so that strong ones cover their ends. The paper's own edge is not drawn over.
 * `penScale` is the scene's.
 */
export function edgeMarks(
  place: PagePlace,
  edges: readonly EdgeLine[],
  penScale = 1,
): readonly PathMark[] {
  return (["fine", "strong"] as const).flatMap((weight) => {
    const d = edges
      .filter((edge) => edge.weight === weight && !isOnPaperEdge(place, edge))
      .map((edge) => edgeData(place, edge, penScale))
      .join("");
    return d === "" ? [] : [{ kind: "path", role: ROLES[weight], d } as const];
  });
}

/** Is the line an edge of the paper, where no pen can go? */
function isOnPaperEdge(place: PagePlace, { axis, at }: EdgeLine): boolean {
  const aside = otherAxis(axis);
  const { from, to } = intervalAlong(place.paper, aside);
  const mm = place.lines[aside][at];
  return mm === from || mm === to;
}

/** A strong line has square ends, half a pen longer than the line: at the paper's edge it stops that much short. */
function edgeData(place: PagePlace, edge: EdgeLine, penScale: number): string {
  const { paper, lines } = place;
  const { axis, at, from, to, weight } = edge;
  const sheet = intervalAlong(paper, axis);
  const end = capLength(weight) * penScale;
  const start = Math.max(lines[axis][from] ?? 0, sheet.from + end);
  const stop = Math.min(lines[axis][to] ?? 0, sheet.to - end);
  return lineAlong(axis, { from: start, to: stop }, lines[otherAxis(axis)][at] ?? 0);
}

function capLength(weight: EdgeWeight): number {
  const { cap, width } = ROLE_STYLES[ROLES[weight]];
  return cap === "butt" ? 0 : width / 2;
}
