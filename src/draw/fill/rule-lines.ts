/** Straight lines inside a box, every so many steps, that leave the label free. */
import { type Axis, otherAxis } from "../../measure/axis.ts";
import { lineAlong } from "../geometry/on-axis.ts";
import { type PaperBox, paperBoxInterval } from "../geometry/paper-box.ts";
import { type Interval, intervalAlong, overlaps } from "../geometry/rect.ts";

/** Positions inside the box, every `every` steps along an axis, without its edges: steps from its first edge. */
export function innerSteps({ box, lines }: PaperBox, axis: Axis): readonly number[] {
  const last = lines[axis].length - 1;
  const count = Math.max(0, Math.ceil(last / box.every) - 1);
  return Array.from({ length: count }, (_, index) => (index + 1) * box.every);
}

/** Path data of the lines that run along an axis through the inner positions of the other one. */
export function ruleLines(paperBox: PaperBox, axis: Axis): string {
  return innerSteps(paperBox, otherAxis(axis))
    .map((step) => paperBox.lines[otherAxis(axis)][step] ?? 0)
    .flatMap((aside) =>
      freeStretches(paperBox, axis, aside).map((free) => lineAlong(axis, free, aside)),
    )
    .join("");
}

/** Of a step: what is no longer than this beside a label reads as a speck and not as a line. */
const STUB = 0.5;

/** What the label leaves of a line through the whole box, without stubs. */
function freeStretches(paperBox: PaperBox, axis: Axis, aside: number): readonly Interval[] {
  const whole = paperBoxInterval(paperBox, axis);
  if (!paperBox.taken) return [whole];
  const across = intervalAlong(paperBox.taken, otherAxis(axis));
  const along = intervalAlong(paperBox.taken, axis);
  if (aside <= across.from || aside >= across.to || !overlaps(whole, along)) return [whole];
  return [
    { from: whole.from, to: along.from },
    { from: along.to, to: whole.to },
  ].filter(({ from, to }) => to - from > STUB * paperBox.pitch[axis]);
}
