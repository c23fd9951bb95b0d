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
  add(parts: readonly number[], observed: number): void;
  /** `damping` keeps an unknown small that nothing depends on. */
  solve(damping?: number): readonly number[] | undefined;
} {
  const rows = Array.from({ length: unknowns }, () => Array<number>(unknowns + 1).fill(0));
  return {
    add: (parts, observed) => {
      rows.forEach((row, index) => {
        const part = numberAt(parts, index);
        if (part === 0) return;
        for (let at = 0; at < unknowns; at++)
          row[at] = numberAt(row, at) + part * numberAt(parts, at);
        row[unknowns] = numberAt(row, unknowns) + part * observed;
      });
    },
    solve: (damping = 0) =>
      solveLinear(
        rows.map((row, index) =>
          row.map((part, at) => (at === index ? part * (1 + damping) : part)),
        ),
      ),
  };
}
