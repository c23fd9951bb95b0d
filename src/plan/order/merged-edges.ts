/** The edges of a page's boxes as single lines: what lies on one line and touches is one line. */
import { type Axis, otherAxis } from "../../measure/axis.ts";
import { type Box, type StepInterval, stepIntervalAlong } from "../../measure/box.ts";

/** A line that runs along an axis, at a position of the other axis; all in steps. */
export interface EdgeLine {
  readonly axis: Axis;
  readonly at: number;
  readonly from: number;
  readonly to: number;
}

/** The lines that run along one axis, by position and then by start. */
export function mergedEdges(boxes: readonly Box[], axis: Axis): readonly EdgeLine[] {
  const edges = new Map<number, StepInterval[]>();
  for (const box of boxes) {
    const along = stepIntervalAlong(box, axis);
    const aside = stepIntervalAlong(box, otherAxis(axis));
    for (const at of [aside.from, aside.from + aside.length]) {
      const others = edges.get(at);
      if (others) others.push(along);
      else edges.set(at, [along]);
    }
  }
  return [...edges.entries()]
    .sort(([a], [b]) => a - b)
    .flatMap(([at, spans]) => merged(spans).map((span) => ({ axis, at, ...span })));
}

function merged(
  spans: readonly StepInterval[],
): readonly { readonly from: number; readonly to: number }[] {
  const lines: { from: number; to: number }[] = [];
  for (const { from, length } of spans.toSorted((a, b) => a.from - b.from)) {
    const last = lines.at(-1);
    if (last && from <= last.to) last.to = Math.max(last.to, from + length);
    else lines.push({ from, to: from + length });
  }
  return lines;
}
