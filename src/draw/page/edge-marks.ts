/** The boxes of a page as lines: one path for the fine ones, one for the strong ones. */
import { otherAxis } from "../../measure/axis.ts";
import { isPaperEdge } from "../../measure/grid-axis.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import { lineAlong } from "../geometry/on-axis.ts";
import type { PagePlace } from "../geometry/page-place.ts";
import { intervalAlong } from "../geometry/rect.ts";
import type { PathMark } from "../scene.ts";
import { ROLE_STYLES } from "../style/role-style.ts";
import type { EdgeWeight, WeightedEdge } from "./box-edges.ts";

const ROLES = { fine: "edge-fine", strong: "edge" } as const;

/**
 * Fine lines first, so that strong ones cover their ends. The paper's own edge is not drawn over.
 * `penScale` is the scene's.
 */
export function edgeMarks(
  place: PagePlace,
  { axes }: Notebook,
  edges: readonly WeightedEdge[],
  penScale = 1,
): readonly PathMark[] {
  const drawn = edges.filter(({ axis, at }) => !isPaperEdge(axes[otherAxis(axis)], at));
  return (["fine", "strong"] as const).flatMap((weight) => {
    const d = drawn
      .filter((edge) => edge.weight === weight)
      .map((edge) => edgeData(place, edge, penScale))
      .join("");
    return d === "" ? [] : [{ kind: "path", role: ROLES[weight], d } as const];
  });
}

/** A strong line has square ends, half a pen longer than the line: at the paper's edge it stops that much short. */
function edgeData(place: PagePlace, edge: WeightedEdge, penScale: number): string {
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
