/** The edges of a page's boxes as single lines: what lies on one line, touches and weighs the same is one line. */
import { type Axis, otherAxis } from "../../measure/axis.ts";
import { type Box, stepIntervalAlong } from "../../measure/box.ts";

/** A line that runs along an axis, at a position of the other axis; all in steps. */
export interface EdgeLine<Weight = unknown> {
  readonly axis: Axis;
  readonly at: number;
  readonly from: number;
  readonly to: number;
  readonly weight: Weight;
}

/** Reads a line's weight off the boxes on either side of it, of which at least one is there. */
export type Weigh<B extends Box, Weight> = (before: B | undefined, after: B | undefined) => Weight;

/** The lines that run along one axis, by position and then by start. Boxes never overlap. */
export function mergedEdges<B extends Box, Weight>(
  boxes: readonly B[],
  axis: Axis,
  weigh: Weigh<B, Weight>,
): readonly EdgeLine<Weight>[] {
  const sides = new Map<number, Sides<B>>();
  const sidesAt = (at: number): Sides<B> => {
    const known = sides.get(at) ?? { before: [], after: [] };
    sides.set(at, known);
    return known;
  };
  for (const box of boxes) {
    const { from, length } = stepIntervalAlong(box, otherAxis(axis));
    sidesAt(from).after.push(box);
    sidesAt(from + length).before.push(box);
  }
  return [...sides]
    .sort(([a], [b]) => a - b)
    .flatMap(([at, both]) => merged(both, axis, weigh).map((line) => ({ axis, at, ...line })));
}

/** The boxes that end at a position and those that begin there. */
interface Sides<B extends Box> {
  readonly before: B[];
  readonly after: B[];
}

/** Step by step, a line is as the two boxes beside it make it. */
function merged<B extends Box, Weight>(
  { before, after }: Sides<B>,
  axis: Axis,
  weigh: Weigh<B, Weight>,
): readonly Omit<EdgeLine<Weight>, "axis" | "at">[] {
  const boxBefore = boxByStep(before, axis);
  const boxAfter = boxByStep(after, axis);
  const steps = new Set([...boxBefore.keys(), ...boxAfter.keys()]);
  const lines: { from: number; to: number; weight: Weight }[] = [];
  for (const step of [...steps].sort((a, b) => a - b)) {
    const weight = weigh(boxBefore.get(step), boxAfter.get(step));
    const last = lines.at(-1);
    if (last?.to === step && last.weight === weight) last.to = step + 1;
    else lines.push({ from: step, to: step + 1, weight });
  }
  return lines;
}

function boxByStep<B extends Box>(boxes: readonly B[], axis: Axis): ReadonlyMap<number, B> {
  const found = new Map<number, B>();
  for (const box of boxes) {
    const { from, length } = stepIntervalAlong(box, axis);
    for (let step = from; step < from + length; step++) found.set(step, box);
  }
  return found;
}
