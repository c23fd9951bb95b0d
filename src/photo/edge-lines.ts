/** Finds long straight lines among many small edges. */
import { numberAt } from "./grey.ts";

/** A place where brightness changes: so far along a side, and so far outside of it, in millimetres. */
export interface Edge {
  readonly along: number;
  readonly off: number;
}

/** So far outside in the middle of a side, and by how much farther a millimetre on. */
export interface EdgeLine {
  readonly off: number;
  readonly slope: number;
  /** The standard error of where it lies in the middle. */
  readonly error: number;
  /** The part of the side on which it is seen. */
  readonly part: number;
}

/** Slopes are tried up to about five degrees, and so finely that the ends of a side move by a step and a half. */
const STEEPEST = 0.09;
const SLOPES = 41;
const BIN = 0.1;
/** Lines lie no farther off, in millimetres. */
const FARTHEST = 10;
/** A line is seen on so much of its side. */
const LEAST_PART = 0.35;
/** What lies nearer to a line is of it. */
const INLIER = 0.25;
const LEAST_NEAR = 0.05;
const ROUNDS = 3;
const OUTLIER = 3;
const MOST_LINES = 6;

/** The lines on which edges lie, those of most edges first; `profiles` is how many places of the side were looked at. */
export function linesOf(all: readonly Edge[], profiles: number): readonly EdgeLine[] {
  const lines: EdgeLine[] = [];
  let left = all;
  while (lines.length < MOST_LINES) {
    const line = refined(left, longestLine(left), profiles);
    if (!line || line.part < LEAST_PART) break;
    lines.push(line);
    left = left.filter((edge) => Math.abs(awayFrom(edge, line)) > INLIER);
  }
  return lines;
}

type Line = Pick<EdgeLine, "off" | "slope">;

function awayFrom({ along, off }: Edge, line: Line): number {
  return off - line.off - line.slope * along;
}

/** By counting how many edges lie on each line that is tried (Hough 1962, from memory). */
function longestLine(edges: readonly Edge[]): Line {
  let [best, most]: [Line, number] = [{ off: 0, slope: 0 }, 0];
  const bins = Math.ceil((2 * FARTHEST) / BIN);
  for (let index = 0; index < SLOPES; index++) {
    const slope = STEEPEST * ((2 * index) / (SLOPES - 1) - 1);
    const counts = new Float64Array(bins);
    for (const { along, off } of edges) {
      const at = Math.round((off - slope * along) / BIN + bins / 2);
      counts[at] = numberAt(counts, at) + 1;
    }
    for (let at = 1; at < bins - 1; at++) {
      const near = numberAt(counts, at - 1) + 2 * numberAt(counts, at) + numberAt(counts, at + 1);
      if (near > most) [best, most] = [{ off: (at - bins / 2) * BIN, slope }, near];
    }
  }
  return best;
}

/** By least squares, without those farther off than three deviations. */
function refined(edges: readonly Edge[], start: Line, profiles: number): EdgeLine | undefined {
  let line: Line = start;
  let near = INLIER;
  let spread = 0;
  let kept: readonly Edge[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    kept = edges.filter((edge) => Math.abs(awayFrom(edge, line)) <= near);
    if (kept.length < 8) return undefined;
    line = fittedLine(kept);
    spread = Math.sqrt(
      kept.reduce((sum, edge) => sum + awayFrom(edge, line) ** 2, 0) / kept.length,
    );
    near = Math.min(INLIER, Math.max(LEAST_NEAR, OUTLIER * spread));
  }
  const error = spread / Math.sqrt(kept.length);
  return { ...line, error, part: new Set(kept.map(({ along }) => along)).size / profiles };
}

function fittedLine(edges: readonly Edge[]): Line {
  const count = edges.length;
  const mean = (of: (edge: Edge) => number) =>
    edges.reduce((sum, edge) => sum + of(edge), 0) / count;
  const [along, off] = [mean((edge) => edge.along), mean((edge) => edge.off)];
  const square = mean((edge) => (edge.along - along) ** 2);
  const slope = square > 0 ? mean((edge) => (edge.along - along) * (edge.off - off)) / square : 0;
  return { off: off - slope * along, slope };
}
