/** Linear equations: Gaussian elimination with the largest pivot of each column, from a textbook. */
import { numberAt } from "./grey.ts";

/** Rows of coefficients, each with its right side as the last number; nothing where they do not say one answer. */
export function solveLinear(rows: readonly (readonly number[])[]): readonly number[] | undefined {
  const left = rows.map((row) => [...row]);
  const size = left.length;
  for (let column = 0; column < size; column++) {
    const pivot = largestFrom(left, column);
    const top = left[pivot];
    if (!top || Math.abs(numberAt(top, column)) < 1e-12) return undefined;
    [left[pivot], left[column]] = [left[column] ?? [], top];
    for (const row of left) {
      if (row === top) continue;
      const factor = numberAt(row, column) / numberAt(top, column);
      for (let at = column; at <= size; at++)
        row[at] = numberAt(row, at) - factor * numberAt(top, at);
    }
  }
  return left.map((row, index) => numberAt(row, size) / numberAt(row, index));
}

function largestFrom(rows: readonly (readonly number[])[], column: number): number {
  let best = column;
  for (let row = column + 1; row < rows.length; row++)
    if (Math.abs(numberAt(rows[row] ?? [], column)) > Math.abs(numberAt(rows[best] ?? [], column)))
      best = row;
  return best;
}

/** The normal equations of a least-squares problem, filled one observation at a time. */
export function leastSquares(unknowns: number): {
  /** Each unknown's part in what is observed, and what is observed. */
  add(parts: ArrayLike<number>, observed: number): void;
  /** `damping` keeps an unknown small that nothing depends on. */
  solve(damping?: number): readonly number[] | undefined;
} {
  const width = unknowns + 1;
  // The part right of the diagonal is enough: the equations are symmetric.
  const sums = new Float64Array(unknowns * width);
  const sumAt = (row: number, column: number) =>
    sums[Math.min(row, column) * width + Math.max(row, column)] ?? 0;
  return {
    add: (parts, observed) => {
      for (let row = 0; row < unknowns; row++) {
        const part = parts[row] ?? 0;
        if (part === 0) continue;
        const start = row * width;
        for (let at = row; at < unknowns; at++)
          sums[start + at] = (sums[start + at] ?? 0) + part * (parts[at] ?? 0);
        sums[start + unknowns] = (sums[start + unknowns] ?? 0) + part * observed;
      }
    },
    solve: (damping = 0) =>
      solveLinear(
        Array.from({ length: unknowns }, (_, row) =>
          Array.from(
            { length: width },
            (__, column) => sumAt(row, column) * (row === column ? 1 + damping : 1),
          ),
        ),
      ),
  };
}
