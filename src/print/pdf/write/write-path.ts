/** Lines and outlines on paper. */
import type { PathMark } from "../../../draw/scene.ts";
import type { Style } from "../../../draw/style/role-style.ts";
import { decimal, fillOperator, type Operators, strokeOperator } from "./operators.ts";
import { pathOperators } from "./path-operators.ts";

/** As PDF numbers them (ISO 32000-1, 8.4.3.3 and 8.4.3.4). */
const CAPS = { butt: 0, round: 1, square: 2 } as const;
const JOINS = { miter: 0, round: 1 } as const;

/** Draws a mark in its look: fill below, stroke on top. */
export function writePath(operators: Operators, { d }: PathMark, style: Style): void {
  const { stroke, fill, width, cap, join, dash = [] } = style;
  const hasStroke = stroke !== "none" && width > 0;
  const hasFill = fill !== "none";
  if (d === "" || !(hasStroke || hasFill)) return;
  if (hasStroke) {
    operators.hold("width", width, (now) => `${decimal(now)} w`);
    operators.hold("cap", cap, (now) => `${CAPS[now]} J`);
    operators.hold("join", join, (now) => `${JOINS[now]} j`);
    operators.hold("dash", dashNumbers(dash), (now) => `[${now}] 0 d`);
    operators.hold("stroke", stroke, strokeOperator);
  }
  if (hasFill) operators.hold("fill", fill, fillOperator);
  operators.draw(`${pathOperators(d)}${hasStroke ? (hasFill ? "B" : "S") : "f"}`);
}

/** A hundredth of a millimetre: nobody sees it, and every reader takes it for what it is. */
const DOT = 0.01;

/**
 * A dash of no length is a dot. PDFium takes it for one of 0.1 and so makes each gap that much farther from the
 * row's start, so it is written with a little length that the gap gives up.
 */
function dashNumbers(dash: readonly number[]): string {
  const [first, gap = 0, ...more] = dash;
  const numbers = first === 0 && gap > DOT ? [DOT, gap - DOT, ...more] : dash;
  return numbers.map(decimal).join(" ");
}
