/** Straight lines inside a box, every so many steps, that leave the label free. */
import { type Axis, otherAxis } from "../../measure/axis.ts";
import { lineAlong } from "../geometry/on-axis.ts";
import { type Leaf, leafStretch } from "../geometry/paper-box.ts";
import { overlaps, type Stretch, stretchAlong } from "../geometry/rect.ts";

/** Positions inside the box, every `every` steps along an axis, without its edges: steps from its first edge. */
export function innerSteps({ box, lines }: Leaf, axis: Axis): readonly number[] {
  const last = lines[axis].length - 1;
  const count = Math.max(0, Math.ceil(last / box.every) - 1);
  return Array.from({ length: count }, (_, index) => (index + 1) * box.every);
}

/** Path data of the lines that run along an axis through the inner positions of the other one. */
export function ruleLines(leaf: Leaf, axis: Axis): string {
  return innerSteps(leaf, otherAxis(axis))
    .map((step) => leaf.lines[otherAxis(axis)][step] ?? 0)
    .flatMap((aside) =>
      freeStretches(leaf, axis, aside).map((free) => lineAlong(axis, free, aside)),
    )
    .join("");
}

/** Of a step: what is no longer than this beside a label reads as a speck and not as a line. */
const STUB = 0.5;

/** What the label leaves of a line through the whole box, without stubs. */
function freeStretches(leaf: Leaf, axis: Axis, aside: number): readonly Stretch[] {
  const whole = leafStretch(leaf, axis);
  if (!leaf.taken) return [whole];
  const across = stretchAlong(leaf.taken, otherAxis(axis));
  const along = stretchAlong(leaf.taken, axis);
  if (aside <= across.from || aside >= across.to || !overlaps(whole, along)) return [whole];
  return [
    { from: whole.from, to: along.from },
    { from: along.to, to: whole.to },
  ].filter(({ from, to }) => to - from > STUB * leaf.pitch[axis]);
}
