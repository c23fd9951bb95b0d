/** The lines of a lined page, from the lattice that has grown along them. */
import { medianOf, numberAt, type PhotoPoint } from "./grey.ts";
import type { Node } from "./grow-lattice.ts";
import type { LinedPage } from "./photo-count.ts";
import { leastSquares } from "./solve-linear.ts";

/** Each line is seen at places a step apart; a row with so many of what others have is a line. */
const LEAST_SHARE = 0.6;

/** A row of places for each line, by their numbers. */
export type Rows = ReadonlyMap<number, ReadonlyMap<number, Node>>;

/** A line lies so near to a parabola, in steps and in pixels. */
export const OFF = 0.05;
export const OFF_PX = 1;

export interface CountedRows {
  readonly rows: Rows;
  readonly first: number;
  readonly last: number;
  /** How many places three of four rows have: the grain of a table may lengthen many, nothing shortens them. */
  readonly usual: number;
}

/** Each row without what lies beside its line. */
export function rowsOf(nodes: readonly Node[]): CountedRows {
  const places = new Map<number, Node[]>();
  for (const node of nodes) {
    const row = places.get(node.down) ?? [];
    row.push(node);
    places.set(node.down, row);
  }
  const rows: Rows = new Map(
    [...places].map(([down, row]) => [
      down,
      new Map(ofOneLine(row).map((node) => [node.across, node])),
    ]),
  );
  const sizes = [...rows.values()].map(({ size }) => size).sort((a, b) => a - b);
  const usual = numberAt(sizes, sizes.length >> 2);
  const sure = [...rows.keys()].filter((down) => sizeOf(rows, down) >= LEAST_SHARE * usual);
  return { rows, usual, first: Math.min(...sure, 0), last: Math.max(...sure, 0) };
}

/** What lies on one curve, a parabola, with the middle of a row: beside the paper the grain of a table may lead astray. */
function ofOneLine(row: readonly Node[]): readonly Node[] {
  const sorted = row.toSorted((a, b) => a.across - b.across);
  const step = medianOf(sorted.map(({ below }) => Math.hypot(below.x, below.y)));
  const within = Math.max(OFF_PX, OFF * step);
  let near: readonly Node[] = sorted.slice(
    sorted.length >> 2,
    sorted.length - (sorted.length >> 2),
  );
  for (let round = 0; round < 3; round++) {
    const curve = parabolaThrough(near);
    if (!curve) return [];
    near = sorted.filter(({ across, spot }) => {
      const { x, y } = curve(across);
      return Math.hypot(spot.x - x, spot.y - y) <= within;
    });
  }
  return near;
}

function parabolaThrough(nodes: readonly Node[]): ((across: number) => PhotoPoint) | undefined {
  const [alongX, alongY] = [leastSquares(3), leastSquares(3)];
  for (const { across, spot } of nodes) {
    alongX.add([1, across, across * across], spot.x);
    alongY.add([1, across, across * across], spot.y);
  }
  const [x, y] = [alongX.solve(), alongY.solve()];
  const at = ([a = 0, b = 0, c = 0]: readonly number[], across: number) =>
    a + b * across + c * across * across;
  return x && y && ((across) => ({ x: at(x, across), y: at(y, across) }));
}

export function sizeOf(rows: Rows, down: number): number {
  return rows.get(down)?.size ?? 0;
}

export function pageOf({ rows, first, last }: CountedRows): LinedPage {
  const lines = Array.from({ length: last - first + 1 }, (_, index) =>
    [...(rows.get(first + index)?.values() ?? [])]
      .sort((a, b) => a.across - b.across)
      .map(({ spot: { x, y } }) => ({ x, y })),
  );
  const steps = stepsFrom(rows, Math.floor((first + last) / 2), 1);
  return { lines, step: medianOf(steps.map(({ x, y }) => Math.hypot(x, y))) };
}

/** From the places of a row to those of the row `way` below it. */
function stepsFrom(rows: Rows, down: number, way: number): readonly PhotoPoint[] {
  return [...(rows.get(down)?.values() ?? [])].flatMap(({ across, spot }) => {
    const next = rows.get(down + way)?.get(across)?.spot;
    return next ? [{ x: next.x - spot.x, y: next.y - spot.y }] : [];
  });
}
